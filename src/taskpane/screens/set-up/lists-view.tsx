import { Note, TextList } from "../../parts/blocks";
import type { FoundList } from "./found-lists";
import { ListView } from "./list-view";
import { canBeTable, placeText } from "./lists";
import { isToBeKept } from "./summaries";
import type { SetUpViewProps } from "./view-props";
import { isBusy } from "./write-model";

/** The lists of the workbook and what their columns are read as. */
export function ListsSection(props: SetUpViewProps) {
  const { state, dispatch, newId } = props;
  if (state.reading.kind !== "read") return null;
  const { problems, refused, notes, broken } = state.reading;
  const shown = state.lists.filter(({ readAs, looksLike, id }) => readAs !== "" || looksLike !== undefined || state.touched.includes(id)); // oxfmt-ignore
  const others = state.lists.filter((list) => !shown.includes(list));
  return (
    <>
      {problems.length > 0 && (
        <Note kind="caution" title="Please note">
          <TextList texts={problems} />
        </Note>
      )}
      {refused.length > 0 && (
        <Note kind="caution" title="Rows of the sheet Mapping that do not count">
          <TextList texts={refused} />
          <p>Mend them there and read again, or press Keep this: the sheet is then written without them.</p>
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
        <ListView key={list.id} list={list} disabled={isBusy(state)} edit={dispatch}>
          {canBeTable(list) && <MakeTable list={list} {...props} />}
        </ListView>
      ))}
      {others.length > 0 && (
        <details>
          <summary>Other lists, not read ({others.length})</summary>
          {others.map((list) => (
            <ListView key={list.id} list={list} disabled={isBusy(state)} edit={dispatch} />
          ))}
        </details>
      )}
      {shown.some(canBeTable) && (
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

function MakeTable({ list, state, dispatch, newId }: SetUpViewProps & { readonly list: FoundList }) {
  return (
    <p class="set-up-buttons">
      <button
        type="button"
        disabled={isBusy(state)}
        aria-label={`Make it a table: the list on ${list.sheet}, ${placeText(list)}`}
        onClick={() => dispatch({ type: "make table pressed", list: list.id, id: newId() })}
      >
        Make it a table
      </button>
    </p>
  );
}
