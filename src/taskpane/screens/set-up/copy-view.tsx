import "./copy.css";
import type { CopyCount, CopyPreview } from "../../../herd/copy-over/preview";
import { counted, plainNumber } from "../../format";
import { Note, TextList } from "../../parts/blocks";
import { Progress } from "./controls";
import type { CopyState } from "./copy-state";
import { type LeftFor, reasonsOf } from "./left-rows";
import { ListView } from "./list-view";
import { oldCodeFor } from "./old-words";
import type { SetUpViewProps } from "./view-props";
import { WordField } from "./word-field";
import { isBusy } from "./write-model";

/** Copying from an old book into this one. */
export function CopySection(props: SetUpViewProps) {
  const { state, workbook, chooseFile } = props;
  const { copy } = state;
  if (workbook.openBook === undefined) return <p>Files cannot be opened here.</p>;
  return (
    <>
      <p>
        Brings the rows of an old book, or of another program's file, into the lists of this one. The old file stays as
        it is.
      </p>
      <label class="set-up-file">
        <span>{copy.kind === "none" ? "Choose an .xlsx file" : "Choose another .xlsx file"}</span>
        <input
          type="file"
          accept=".xlsx,.xlsm,.xls,application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
          disabled={isBusy(state)}
          onChange={(event) => {
            const file = event.currentTarget.files?.[0];
            if (file !== undefined) chooseFile(file);
            // The same file can be chosen again once it was changed.
            event.currentTarget.value = "";
          }}
        />
      </label>
      {copy.kind === "opening" && <Progress text={`Opening ${copy.name} …`} />}
      {copy.kind === "failed" && (
        <Note kind="error" title={`${copy.name} could not be opened`}>
          <p>{copy.message}</p>
        </Note>
      )}
      {copy.kind === "opened" && <Opened copy={copy} {...props} />}
    </>
  );
}

type OpenedProps = SetUpViewProps & { readonly copy: Extract<CopyState, { kind: "opened" }> };

function Opened(props: OpenedProps) {
  const { copy, state, dispatch, newTurn } = props;
  const { old, preview } = copy;
  const disabled = isBusy(state);
  const shown = old.lists.filter(({ readAs, looksLike }) => readAs !== "" || looksLike !== undefined);
  const others = old.lists.filter((list) => !shown.includes(list));
  const edit = (change: Parameters<Parameters<typeof ListView>[0]["edit"]>[0]): void => dispatch({ type: "old list changed", edit: change }); // oxfmt-ignore
  return (
    <>
      <h3 class="set-up-kind">{old.name}</h3>
      {old.problems.length > 0 && (
        <Note kind="caution" title="Please note">
          <TextList texts={old.problems} />
        </Note>
      )}
      {shown.map((list) => (
        <ListView key={list.id} list={list} disabled={disabled} edit={edit} />
      ))}
      {others.length > 0 && (
        <details>
          <summary>Other lists, not read ({others.length})</summary>
          {others.map((list) => (
            <ListView key={list.id} list={list} disabled={disabled} edit={edit} />
          ))}
        </details>
      )}
      {old.unknown.length > 0 && (
        <details open>
          <summary>Words of the old book ({old.unknown.length})</summary>
          <p class="quiet">What you say here counts for this copy. Rows with a word without a code stay behind.</p>
          <ul class="set-up-columns">
            {old.unknown.map((word) => (
              <WordField
                key={word.word}
                word={word}
                code={oldCodeFor(old, word)}
                disabled={disabled}
                choose={(code) => dispatch({ type: "old code chosen", word: word.word, code })}
              />
            ))}
          </ul>
        </details>
      )}
      <p class="set-up-buttons" data-place>
        <button
          type="button"
          class={preview.kind === "shown" ? undefined : "main"}
          disabled={disabled || preview.kind === "looking"}
          onClick={() => dispatch({ type: "preview pressed", turn: newTurn() })}
        >
          Show what would come over
        </button>
        <small>Nothing is written yet.</small>
      </p>
      {preview.kind === "looking" && <Progress text="Comparing the two books …" />}
      {preview.kind === "failed" && (
        <Note kind="error" title="Not compared">
          <p>{preview.message}</p>
        </Note>
      )}
      {preview.kind === "shown" && <Preview preview={preview.preview} {...props} />}
    </>
  );
}

function Preview({ preview, state, dispatch, newId }: OpenedProps & { readonly preview: CopyPreview }) {
  const { counts, left, notRead, problems } = preview;
  const over = counts.reduce((sum, count) => sum + count.over, 0);
  const { copy } = state;
  const most = copy.kind === "opened" ? copy.shownReasons : 0;
  const reasons = reasonsOf(left);
  return (
    <section aria-label="What would come over">
      <div class="set-up-table" role="region" aria-label="Rows counted" tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">List</th>
              <th scope="col">Rows</th>
              <th scope="col">Come over</th>
              <th scope="col">Here already</th>
              <th scope="col">Stay behind</th>
            </tr>
          </thead>
          <tbody>
            {counts.map((count) => (
              <CountRow key={count.table} count={count} />
            ))}
          </tbody>
        </table>
      </div>
      {problems.length > 0 && <TextList texts={problems} />}
      {notRead.length > 0 && <p class="quiet">Columns that do not come over: {notRead.join(", ")}.</p>}
      {left.length > 0 && (
        <details>
          <summary>Rows that stay behind, and why ({plainNumber(left.length)})</summary>
          <ul class="set-up-lines">
            {reasons.slice(0, most).map((reason) => (
              <Reason key={reason.why} {...reason} />
            ))}
          </ul>
          {reasons.length > most && (
            <button type="button" data-place onClick={() => dispatch({ type: "more reasons asked" })}>
              Show more: {counted(reasons.length - most, "reason")} are left
            </button>
          )}
        </details>
      )}
      <p class="set-up-buttons" data-place>
        <button
          type="button"
          class="main"
          disabled={isBusy(state) || over === 0}
          onClick={() => dispatch({ type: "copy pressed", id: newId() })}
        >
          Copy {counted(over, "row")}
        </button>
        <small>All of them or none. You can take it back.</small>
      </p>
    </section>
  );
}

function CountRow({ count: { table, rows, over, double, doubtful } }: { readonly count: CopyCount }) {
  return (
    <tr>
      <th scope="row">{table}</th>
      {[rows, over, double, doubtful].map((figure, column) => (
        <td key={column}>{plainNumber(figure)}</td>
      ))}
    </tr>
  );
}

/** So many places are named with a reason. */
const PLACES_SHOWN = 20;

function Reason({ why, places }: LeftFor) {
  const more = places.length - PLACES_SHOWN;
  return (
    <li>
      <p>
        <strong>{counted(places.length, "row")}:</strong> {why}
      </p>
      <p class="quiet">
        {places.slice(0, PLACES_SHOWN).join("; ")}
        {more > 0 && ` and ${plainNumber(more)} more`}
      </p>
    </li>
  );
}
