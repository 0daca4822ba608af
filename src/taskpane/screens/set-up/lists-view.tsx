import { capitalised, counted } from "../../format";
import { Note, TextList } from "../../parts/blocks";
import { columnLetters } from "../../../workbook/plain-book";
import type { HerdTableName } from "../../../herd/mapping/targets";
import type { Unit } from "../../../herd/mapping/mapping";
import { SelectField } from "./controls";
import type { FoundList, ListColumn } from "./found-lists";
import {
  type Certainty,
  certaintyOf,
  choicesFor,
  LANDMARK_ANSWERS,
  missingFrom,
  needsLandmark,
  openPoints,
  TABLE_CHOICES,
  TABLE_NAMES,
  UNIT_NAMES,
  unitQuestion,
} from "./lists";
import { isToBeKept } from "./summaries";
import type { SetUpViewProps } from "./view-props";
import { isBusy } from "./write-model";

/** The lists of the workbook and what their columns are read as. */
export function ListsSection(props: SetUpViewProps) {
  const { state, dispatch, newId } = props;
  if (state.reading.kind !== "read") return null;
  const { problems, notes, broken } = state.reading;
  const shown = state.lists.filter(({ readAs, looksLike, id }) => readAs !== "" || looksLike !== undefined || state.touched.includes(id)); // prettier-ignore
  const others = state.lists.filter((list) => !shown.includes(list));
  return (
    <>
      {problems.length > 0 && (
        <Note kind="caution" title="Please note">
          <TextList texts={problems} />
        </Note>
      )}
      {broken.length > 0 && (
        <Note kind="caution" title="Not found any more">
          <TextList texts={broken} />
        </Note>
      )}
      {notes.length > 0 && (
        <Note kind="remark" title="Moved, and found again">
          <TextList texts={notes} />
        </Note>
      )}
      {shown.map((list) => (
        <List key={list.id} list={list} {...props} />
      ))}
      {others.length > 0 && (
        <details>
          <summary>Other lists, not read ({others.length})</summary>
          {others.map((list) => (
            <List key={list.id} list={list} {...props} />
          ))}
        </details>
      )}
      {shown.some(isPlain) && (
        <p class="quiet">
          A list in plain cells can be made a table: new rows then belong to it by themselves. No cell is moved, and it
          can be taken back.
        </p>
      )}
      {isToBeKept(state) ? (
        <p class="set-up-buttons" data-place>
          <button
            type="button"
            class="main"
            disabled={isBusy(state)}
            onClick={() => dispatch({ type: "keep lists pressed", id: newId() })}
          >
            Keep this
          </button>
          <small>Writes the sheet Mapping, where you can see and change it.</small>
        </p>
      ) : (
        state.reading.hasMapping && <p class="quiet">All this is kept on the sheet Mapping.</p>
      )}
    </>
  );
}

type ListProps = SetUpViewProps & { readonly list: FoundList };

function List(props: ListProps) {
  const { list, state, dispatch } = props;
  const { sheet, readAs, own, columns, remarks, looksLike } = list;
  const missing = missingFrom(list);
  const hint = readAs === "" && looksLike !== undefined ? `It looks like ${TABLE_NAMES[looksLike]}.` : undefined;
  return (
    <article class="set-up-list" aria-label={`List on ${sheet}`} data-place>
      <h3>{sheet}</h3>
      <p class="quiet">{placeText(list)}</p>
      {own ? (
        <p>This is Evenfoot's own table {readAs}: nothing has to be said.</p>
      ) : (
        <SelectField
          label="This list holds"
          value={readAs}
          hint={hint}
          disabled={isBusy(state)}
          options={[
            ["", "something else: not read"],
            ...TABLE_CHOICES.map((name) => [name, TABLE_NAMES[name]] as const),
          ]}
          onChoice={(table) => dispatch({ type: "list read as", list: list.id, table: table as HerdTableName | "" })}
        />
      )}
      {remarks.length > 0 && (
        <div class="quiet">
          <TextList texts={remarks} />
        </div>
      )}
      {readAs !== "" && !own && (
        <>
          {needsLandmark(list) && <Landmark {...props} />}
          {missing.length > 0 && (
            <p class="quiet">No column is read as {missing.join(" or ")}. Rows are read without it.</p>
          )}
          <details open={openPoints(list).length > 0 || columns.some((column) => certaintyOf(column) === "please say")}>
            <summary>{columnsText(columns)}</summary>
            <ul class="set-up-columns">
              {columns.map((column) => (
                <Column key={column.column} column={column} table={readAs} {...props} />
              ))}
            </ul>
          </details>
        </>
      )}
      {isPlain(list) && <MakeTable {...props} />}
    </article>
  );
}

/** A list that is read and stands in plain cells. */
function isPlain({ source, readAs }: FoundList): boolean {
  return source === undefined && readAs !== "";
}

function placeText({ source, rowCount, headingRow }: FoundList): string {
  const rows = counted(rowCount, "row");
  return source === undefined ? `plain cells, headings in row ${headingRow + 1}, ${rows}` : `table ${source}, ${rows}`;
}

function columnsText(columns: readonly ListColumn[]): string {
  const read = columns.filter(({ key }) => key !== "");
  const count = (wanted: Certainty): number => read.filter((column) => certaintyOf(column) === wanted).length;
  const [open, likely] = [count("please say"), count("likely")];
  const unused = columns.length - read.length;
  const parts = [
    `${counted(read.length, "column")} read`,
    unused > 0 ? `${unused} not used` : "",
    likely > 0 ? `${likely} only likely` : "",
    open > 0 ? `please say for ${open}` : "",
    likely === 0 && open === 0 ? "all sure" : "",
  ];
  return parts.filter((part) => part !== "").join(", ");
}

type ColumnProps = ListProps & { readonly column: ListColumn; readonly table: HerdTableName };

function Column({ column, table, list, state, dispatch }: ColumnProps) {
  const { heading, key, examples, because, units, unit, unitBecause } = column;
  const letters = columnLetters(column.column);
  const certainty = certaintyOf(column);
  const name = heading === "" ? "no heading" : heading;
  const busy = isBusy(state);
  return (
    <li data-place>
      <p class="set-up-column">
        <span class="set-up-letters">{letters}</span>
        <strong>{name}</strong>
        {key !== "" && <span class={`set-up-certainty ${certainty.replace(" ", "-")}`}>{certainty}</span>}
      </p>
      {examples.length > 0 && <p class="quiet">{examples.join(" · ")}</p>}
      <SelectField
        label="Read as"
        about={`Column ${letters}, ${name}`}
        value={key}
        hint={certainty === "sure" || because === "" ? undefined : capitalised(because)}
        disabled={busy}
        options={[["", "not used"], ...choicesFor(table)]}
        onChoice={(choice) => dispatch({ type: "column read as", list: list.id, column: column.column, key: choice })}
      />
      {key !== "" && units.length > 0 && (
        <SelectField
          label={unitQuestion(key)}
          about={`Column ${letters}, ${name}`}
          value={unit ?? ""}
          hint={unitBecause === "" ? undefined : capitalised(unitBecause)}
          disabled={busy}
          isOpen={unit === undefined}
          options={[
            ...(unit === undefined ? [["", "please say"] as const] : []),
            ...units.map((known) => [known, UNIT_NAMES[known]] as const),
          ]}
          onChoice={(choice) =>
            dispatch({
              type: "unit chosen",
              list: list.id,
              column: column.column,
              unit: choice === "" ? undefined : (choice as Unit),
            })
          }
        />
      )}
    </li>
  );
}

function Landmark({ list, state, dispatch }: ListProps) {
  return (
    <SelectField
      label="All toes were measured from"
      value={list.landmark ?? ""}
      hint="Lengths from the hard horn and from the skin-horn line differ by more than a cut. Without it no toe advice is given."
      disabled={isBusy(state)}
      isOpen={list.landmark === undefined}
      options={[
        ...(list.landmark === undefined ? [["", "please say"] as const] : []),
        ...LANDMARK_ANSWERS.map((answer) => [answer, answer] as const),
      ]}
      onChoice={(landmark) =>
        dispatch({ type: "landmark chosen", list: list.id, landmark: landmark === "" ? undefined : landmark })
      }
    />
  );
}

function MakeTable({ list, state, dispatch, newId }: ListProps) {
  return (
    <p class="set-up-buttons">
      <button
        type="button"
        disabled={isBusy(state)}
        aria-label={`Make it a table: the list on ${list.sheet}`}
        onClick={() => dispatch({ type: "make table pressed", list: list.id, id: newId() })}
      >
        Make it a table
      </button>
    </p>
  );
}
