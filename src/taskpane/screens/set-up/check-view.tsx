import "./check.css";
import type { Doubt } from "../../../herd/check/doubt";
import type { PlainCell } from "../../../workbook/port";
import { isDay, type TypedValue } from "../../../workbook/table-port";
import { capitalised, counted, dateText, plainNumber } from "../../format";
import { Note, TextList } from "../../parts/blocks";
import { checkedIn, openGroupOf } from "./check-model";
import { Progress } from "./controls";
import { type DoubtGroup, doubtKey, foundText, LEVEL_NAMES } from "./doubts";
import type { Checked } from "./state";
import { isToBeKept } from "./summaries";
import type { SetUpViewProps } from "./view-props";
import { isBusy } from "./write-model";

/** Every doubtful cell of the workbook, by kind. */
export function CheckSection(props: SetUpViewProps) {
  const { state, dispatch } = props;
  const { check } = state;
  const checked = checkedIn(state);
  return (
    <>
      <p>Looks through all lists that are read. It changes nothing.</p>
      {isToBeKept(state) && (
        <p class="quiet">Keep your lists first: the check goes by what is kept, or else by a guess.</p>
      )}
      <p class="set-up-buttons">
        <button
          type="button"
          class="main"
          disabled={isBusy(state) || check.kind === "checking"}
          onClick={() => dispatch({ type: "check pressed" })}
        >
          {checked === undefined ? "Check now" : "Check again"}
        </button>
      </p>
      {check.kind === "checking" && <Progress text="Checking the workbook …" />}
      {check.kind === "failed" && (
        <Note kind="error" title="Not checked">
          <p>{check.message}</p>
        </Note>
      )}
      {checked !== undefined && <Found checked={checked} {...props} />}
    </>
  );
}

function Found({ checked, ...props }: SetUpViewProps & { readonly checked: Checked }) {
  const { groups, remarks, tables, rows } = checked;
  return (
    <>
      <p class="set-up-summary">{capitalised(foundText(groups, tables))}.</p>
      {tables.length > 0 && (
        <p class="quiet">
          Checked: {tables.join(", ")}, {counted(rows, "row")} in all.
        </p>
      )}
      {remarks.length > 0 && (
        <details>
          <summary>About the lists ({remarks.length})</summary>
          <TextList texts={remarks} />
        </details>
      )}
      <ul class="set-up-groups">
        {groups.map((group) => (
          <Group key={group.check} group={group} {...props} />
        ))}
      </ul>
    </>
  );
}

type GroupProps = SetUpViewProps & { readonly group: DoubtGroup };

function Group({ group, ...props }: GroupProps) {
  const { state, dispatch } = props;
  const { check, title, level, cells } = group;
  const isOpen = state.openGroup === check;
  return (
    <li data-place>
      <button
        type="button"
        class="set-up-group"
        aria-expanded={isOpen}
        onClick={() => dispatch({ type: "group pressed", check })}
      >
        <span>{capitalised(title)}</span>
        <strong>{plainNumber(cells)}</strong>
        <small>{LEVEL_NAMES[level]}</small>
      </button>
      {isOpen && <Doubts group={group} {...props} />}
    </li>
  );
}

function Doubts({ group, ...props }: GroupProps) {
  const { state, dispatch } = props;
  const { doubts, repairable } = group;
  const shown = doubts.slice(0, state.shownDoubts);
  const touches = new Set(doubts.map((doubt) => doubt.touches));
  return (
    <div class="set-up-doubts">
      {touches.size === 1 && <p class="quiet">Touches: {doubts[0]!.touches}</p>}
      {repairable.length > 1 && (state.askingAll ? <AskAll {...props} /> : <RepairAll group={group} {...props} />)}
      <ul class="set-up-lines">
        {shown.map((doubt) => (
          <DoubtLine key={doubtKey(doubt)} doubt={doubt} withTouches={touches.size > 1} {...props} />
        ))}
      </ul>
      {shown.length < doubts.length && (
        <button type="button" data-place onClick={() => dispatch({ type: "more doubts asked" })}>
          Show more: {plainNumber(doubts.length - shown.length)} are left
        </button>
      )}
    </div>
  );
}

function RepairAll({ group, state, dispatch }: GroupProps) {
  return (
    <p class="set-up-buttons" data-place>
      <button type="button" disabled={isBusy(state)} onClick={() => dispatch({ type: "all repairs asked" })}>
        Repair all {plainNumber(group.repairs.length)} that can be repaired safely
      </button>
    </p>
  );
}

/** So many of the changes are shown before all are made. */
const CHANGES_SHOWN = 5;

function AskAll({ state, dispatch, newId }: SetUpViewProps) {
  const cells = openGroupOf(state)?.repairs ?? [];
  const left = cells.length - CHANGES_SHOWN;
  return (
    <div data-place>
      <Note kind="caution" title={`Change ${counted(cells.length, "cell")}?`}>
        <ul>
          {cells.slice(0, CHANGES_SHOWN).map(({ sheet, address, was, set }) => (
            <li key={`${sheet} ${address}`}>
              {sheet}, {address}: {cellText(was)} becomes {cellText(set)}
            </li>
          ))}
        </ul>
        {left > 0 && <p>And {counted(left, "cell")} more in the same way.</p>}
        <p>You can take it back.</p>
        <p class="set-up-buttons">
          <button
            type="button"
            disabled={isBusy(state)}
            onClick={() => dispatch({ type: "all repairs pressed", id: newId() })}
          >
            Change {counted(cells.length, "cell")}
          </button>
          <button type="button" onClick={() => dispatch({ type: "all repairs left" })}>
            Leave them
          </button>
        </p>
      </Note>
    </div>
  );
}

type LineProps = SetUpViewProps & { readonly doubt: Doubt; readonly withTouches: boolean };

function DoubtLine({ doubt, withTouches, state, dispatch, newId, show }: LineProps) {
  const { sheet, address, cells, holds, wrong, touches, repair } = doubt;
  const place = `${sheet}, ${address}`;
  return (
    <li data-place>
      <p>
        <strong>{place}</strong>
        {holds !== null && <span class="quiet"> holds {cellText(holds)}</span>}
        {cells > 1 && <span class="quiet"> ({counted(cells, "cell")})</span>}
      </p>
      <p>{wrong}</p>
      {withTouches && <p class="quiet">Touches: {touches}</p>}
      <p class="set-up-buttons">
        <button type="button" aria-label={`Go to cell: ${place}`} onClick={() => show({ sheet, address })}>
          Go to cell
        </button>
        {repair !== undefined && (
          <button
            type="button"
            disabled={isBusy(state) || state.check.kind !== "checked"}
            aria-label={`${capitalised(repair.title)}, ${place}`}
            onClick={() => dispatch({ type: "repair pressed", doubt, id: newId() })}
          >
            {capitalised(repair.title)}
          </button>
        )}
      </p>
    </li>
  );
}

/** Text stands in quotes, so that a number typed as text is told from a number. */
function cellText(value: PlainCell | TypedValue): string {
  if (value === null) return "nothing";
  if (isDay(value)) return dateText(value.day);
  return typeof value === "string" ? `"${value}"` : String(value);
}
