import { useState } from "preact/hooks";
import type { ComponentChildren } from "preact";
import type { Unit } from "../../../herd/mapping/mapping";
import type { HerdTableName } from "../../../herd/mapping/targets";
import { columnLetters } from "../../../workbook/plain-book";
import { capitalised, counted } from "../../format";
import { TextList } from "../../parts/blocks";
import { SelectField } from "./controls";
import type { FoundList, ListColumn } from "./found-lists";
import { LANDMARK_ANSWERS, needsLandmark } from "./landmark";
import type { ListEdit } from "./list-edits";
import {
  type Certainty,
  certaintyOf,
  choicesFor,
  missingFrom,
  openPoints,
  placeText,
  TABLE_CHOICES,
  TABLE_NAMES,
  UNIT_NAMES,
  unitQuestion,
} from "./lists";

interface ListProps {
  readonly list: FoundList;
  readonly disabled: boolean;
  edit(edit: ListEdit): void;
  /** What else can be done with it. */
  readonly children?: ComponentChildren;
}

/** One list: what it holds, and what each of its columns is read as. */
export function ListView(props: ListProps) {
  const { list, disabled, edit, children } = props;
  const { sheet, readAs, own, remarks, looksLike } = list;
  const missing = missingFrom(list);
  const hint = readAs === "" && looksLike !== undefined ? `It looks like ${TABLE_NAMES[looksLike]}.` : undefined;
  return (
    <article class="set-up-list" aria-label={`List on ${sheet}, ${placeText(list)}`} data-place>
      <h3>{sheet}</h3>
      <p class="quiet">
        {placeText(list)}, {counted(list.rowCount, "row")}
      </p>
      {own ? (
        <p>This is Evenfoot's own table {readAs}: nothing has to be said.</p>
      ) : (
        <SelectField
          label="This list holds"
          value={readAs}
          hint={hint}
          disabled={disabled}
          options={[
            ["", "something else: not read"],
            ...TABLE_CHOICES.map((name) => [name, TABLE_NAMES[name]] as const),
          ]}
          onChoice={(table) => edit({ type: "list read as", list: list.id, table: table as HerdTableName | "" })}
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
          <Columns key={readAs} table={readAs} {...props} />
        </>
      )}
      {children}
    </article>
  );
}

/** The columns; shown at once where something has to be said, and then until the user closes them. */
function Columns(props: ListProps & { readonly table: HerdTableName }) {
  const { list } = props;
  const { columns } = list;
  const [isOpen] = useState(
    openPoints(list).length > 0 || columns.some((column) => certaintyOf(column) === "please say"),
  );
  return (
    <details open={isOpen}>
      <summary>{columnsText(columns)}</summary>
      <ul class="set-up-columns">
        {columns.map((column) => (
          <Column key={column.column} column={column} {...props} />
        ))}
      </ul>
    </details>
  );
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

function Column({ column, table, list, disabled, edit }: ColumnProps) {
  const { heading, key, examples, because, units, unit, unitBecause } = column;
  const letters = columnLetters(column.column);
  const certainty = certaintyOf(column);
  const name = heading === "" ? "no heading" : heading;
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
        disabled={disabled}
        options={[["", "not used"], ...choicesFor(table)]}
        onChoice={(choice) => edit({ type: "column read as", list: list.id, column: column.column, key: choice })}
      />
      {key !== "" && units.length > 0 && (
        <SelectField
          label={unitQuestion(key)}
          about={`Column ${letters}, ${name}`}
          value={unit ?? ""}
          hint={unitBecause === "" ? undefined : capitalised(unitBecause)}
          disabled={disabled}
          isOpen={unit === undefined}
          options={[
            ...(unit === undefined ? [["", "please say"] as const] : []),
            ...units.map((known) => [known, UNIT_NAMES[known]] as const),
          ]}
          onChoice={(choice) =>
            edit({
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

function Landmark({ list, disabled, edit }: ListProps) {
  return (
    <SelectField
      label="All toes were measured from"
      value={list.landmark ?? ""}
      hint="Lengths from the hard horn and from the skin-horn line differ by more than a cut. Without it no toe advice is given."
      disabled={disabled}
      isOpen={list.landmark === undefined}
      options={[
        ...(list.landmark === undefined ? [["", "please say"] as const] : []),
        ...LANDMARK_ANSWERS.map((answer) => [answer, answer] as const),
      ]}
      onChoice={(landmark) =>
        edit({ type: "landmark chosen", list: list.id, landmark: landmark === "" ? undefined : landmark })
      }
    />
  );
}
