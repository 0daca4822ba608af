import { isoDate } from "../../../core/shared/days";
import { counted } from "../../format";
import { Note, TextList } from "../../parts/blocks";
import { SlowStatus } from "../../parts/slow-status";
import { type Bucket, type BucketGroups, filtered, grouped } from "./grouping";
import { useFocusInList } from "./keep-focus";
import { LineView } from "./line-view";
import { TakeBack } from "./take-back";
import { linesOf, listingIn, summary } from "./model";
import type { Notice } from "./state";
import type { DueViewProps } from "./view-props";
import { Tools } from "./tools-view";

/** What is due, line by line. */
export function DueView({ doing, ...props }: DueViewProps & { readonly doing: string | undefined }) {
  const { state, dispatch } = props;
  const { reading, notice } = state;
  const onFocusIn = useFocusInList(state.handled);
  return (
    <div class="due" onFocusIn={onFocusIn}>
      <h1>What is due</h1>
      <p class="readers-only" role="status">
        {notice?.text ?? summary(state)}
      </p>
      <SlowStatus doing={doing} />
      {reading.kind === "failed" && (
        <Note kind="error" title="The workbook could not be read">
          <p>{reading.message}</p>
          <p class="due-buttons">
            <button type="button" onClick={() => dispatch({ type: "workbook changed" })}>
              Read again
            </button>
          </p>
        </Note>
      )}
      {reading.kind === "read" && <List {...props} />}
      {notice !== undefined && <NoticeBar notice={notice} {...props} />}
    </div>
  );
}

const NOTE_KINDS = { done: "remark", error: "error", caution: "caution" } as const;
const NOTE_TITLES = { done: "Done", error: "Not done", caution: "Saved. Take care" } as const;

/** Stays in view at the lower edge, wherever in a long list the user is. */
function NoticeBar({ notice, state, dispatch }: DueViewProps & { readonly notice: Notice }) {
  return (
    <div class="due-notice">
      <Note kind={NOTE_KINDS[notice.kind]} title={NOTE_TITLES[notice.kind]}>
        <p>{notice.text}</p>
        <p class="due-buttons">
          {state.pending?.brokenOff === true ? (
            <>
              <button type="button" onClick={() => dispatch({ type: "save tried again" })}>
                Save again
              </button>
              <button type="button" onClick={() => dispatch({ type: "save given up" })}>
                Leave it as it is
              </button>
            </>
          ) : (
            <button type="button" onClick={() => dispatch({ type: "notice read" })}>
              Close
            </button>
          )}
        </p>
      </Note>
    </div>
  );
}

function List(props: DueViewProps) {
  const { state, dispatch } = props;
  const { remarks = [] } = listingIn(state) ?? {};
  const parts = grouped(filtered(linesOf(state), state.filter), state.day, state.groupBy, state.most);
  return (
    <>
      <Tools state={state} dispatch={dispatch} />
      <p class="due-summary">{summary(state)}.</p>
      {parts.map((part) => (
        <Part key={part.bucket} part={part} {...props} />
      ))}
      <Saved {...props} />
      {remarks.length > 0 && (
        <Note kind="remark" title="Not on the list">
          <TextList texts={remarks} />
        </Note>
      )}
    </>
  );
}

const PART_NAMES: Readonly<Record<Exclude<Bucket, "ahead">, string>> = { overdue: "Overdue", today: "On the day" };

function Part({ part, ...props }: DueViewProps & { readonly part: BucketGroups }) {
  const { state, dispatch } = props;
  const { bucket, count, shown, groups } = part;
  const name = bucket === "ahead" ? `In the ${counted(state.daysAhead, "day")} after` : PART_NAMES[bucket];
  const id = `due-${bucket}`;
  return (
    <section aria-labelledby={id}>
      <h2 id={id} class="strong">
        {bucket === "today" ? `On ${isoDate(state.day)}` : name} ({count})
      </h2>
      {count === 0 && <p class="quiet">Nothing.</p>}
      {groups.map(({ name: group, lines }) => (
        <div key={group}>
          <h3 class="due-group">{group}</h3>
          <ul class="due-lines">
            {lines.map((line) => (
              <LineView key={line.key} line={line} {...props} />
            ))}
          </ul>
        </div>
      ))}
      {shown < count && (
        <button type="button" class="due-more" onClick={() => dispatch({ type: "more asked" })}>
          Show more: {count - shown} are left
        </button>
      )}
    </section>
  );
}

/** What was written from this screen, the latest first, whatever the list shows now. */
function Saved({ state, dispatch }: DueViewProps) {
  if (state.handled.length === 0) return null;
  return (
    <details class="due-saved">
      <summary>Saved here ({state.handled.length})</summary>
      <ul class="due-lines">
        {[...state.handled].reverse().map((save) => (
          <li key={save.id} class="due-line handled">
            <div class="due-head">
              <span>{save.told}</span>
              <TakeBack save={save} state={state} dispatch={dispatch} />
            </div>
          </li>
        ))}
      </ul>
    </details>
  );
}
