import type { JSX } from "preact";
import { type Outcome, outcomes } from "../../../core/claws/next-look";
import { recheckStatus } from "../../../core/claws/recheck-status";
import { isoDate } from "../../../core/shared/days";
import { placeName } from "./grouping";
import type { DueLine, FindingLine } from "./line";
import { handledBy, isBusy, listingIn } from "./model";
import { proposedLook } from "./outcomes";
import { DayField } from "./day-field";
import type { DueState } from "./state";
import { TakeBack } from "./take-back";
import type { DueViewProps } from "./view-props";

type LineProps = DueViewProps & { readonly line: DueLine };

/** One line: what is to be done for a cow; opened, what is known and the outcomes to choose from. */
export function LineView(props: LineProps) {
  const { line, state, dispatch } = props;
  const { finding } = line;
  const handled = handledBy(state, line.key);
  const isOpen = state.open === line.key;
  const saving = state.pending?.lines.some(({ key }) => key === line.key) === true;
  if (handled !== undefined) return <HandledLine {...props} />;
  const head = <LineHead line={line} state={state} />;
  if (finding === undefined)
    return (
      <li class="due-line" data-place>
        <div class="due-head">{head}</div>
      </li>
    );
  return (
    <li class={isOpen ? "due-line opened" : "due-line"} data-place onKeyDown={(event) => onKey(event, props, isOpen)}>
      <button
        type="button"
        class="due-head"
        data-line
        aria-expanded={isOpen}
        onClick={() => dispatch({ type: "line pressed", key: line.key })}
      >
        {head}
      </button>
      {isOpen && <Opened {...props} line={line as FindingLine} saving={saving} />}
    </li>
  );
}

function LineHead({ line, state }: { readonly line: DueLine; readonly state: DueState }) {
  const { cow, finding, what, due, remarks } = line;
  const foot = [finding?.foot, finding?.claw, finding?.lesion].filter(Boolean).join(" ");
  return (
    <>
      <span class="due-cow">{cow === "" ? "Herd" : cow}</span>
      <span class="due-when">{recheckStatus(due, false, state.day)}</span>
      <span class="due-what">
        <span>
          {what}
          {foot !== "" && <span class="due-foot"> {foot}</span>}
        </span>
        {cow !== "" && <span class="due-place">group {placeName(line)}</span>}
      </span>
      {remarks.length > 0 && <span class="due-remarks">{remarks.join("; ")}</span>}
    </>
  );
}

function HandledLine({ line, state, dispatch }: LineProps) {
  const save = handledBy(state, line.key)!;
  return (
    <li class="due-line handled" data-place>
      <div class="due-head">
        <span class="due-cow">{line.cow}</span>
        <TakeBack save={save} state={state} dispatch={dispatch} />
        <span class="due-told">
          <span aria-hidden="true">✓ </span>
          {save.told}
        </span>
        {save.caution !== undefined && (
          <span class="due-caution">
            <span aria-hidden="true">! </span>
            {save.caution.full}
          </span>
        )}
      </div>
    </li>
  );
}

const OUTCOME_NAMES: Readonly<Record<Outcome, string>> = {
  healed: "Healed",
  better: "Better",
  same: "Same",
  worse: "Worse",
  gone: "Gone",
};

function Opened({ line, state, dispatch, choose, saving }: LineProps & { line: FindingLine; saving: boolean }) {
  const { finding } = line;
  const busy = isBusy(state);
  return (
    <div class="due-opened">
      <p>
        {finding.lesionName === "" ? "No lesion written" : finding.lesionName}, {isoDate(finding.treatedOn)}
        {finding.treatment !== "" && `: ${finding.treatment}`}
        {finding.note !== "" && <span class="quiet"> ({finding.note})</span>}
      </p>
      <CountsAsDone line={line} state={state} />
      <DayField
        label="Next look, if not by the rules"
        day={state.nextLookOn}
        min={state.seenOn + 1}
        onDay={(day) => dispatch({ type: "next look chosen", day })}
      />
      <div
        class="due-outcomes"
        role="group"
        aria-label={`Cow ${line.cow}, how was the foot on ${isoDate(state.seenOn)}?`}
      >
        {outcomes.map((outcome) => (
          <button
            key={outcome}
            type="button"
            disabled={busy}
            aria-keyshortcuts={outcome.charAt(0)}
            onClick={() => choose(line.key, outcome)}
          >
            <strong>{OUTCOME_NAMES[outcome]}</strong>
            <small>{saving ? "saving …" : consequence(line, outcome, state)}</small>
          </button>
        ))}
      </div>
    </div>
  );
}

/** All that a look on the day would settle of the finding. */
function CountsAsDone({ line, state }: { readonly line: FindingLine; readonly state: DueState }) {
  const own = (listingIn(state)?.lines ?? []).filter(({ finding }) => finding?.key === line.finding.key);
  const done = own.filter(({ due, work, key }) => due <= state.seenOn || (key === line.key && work === "recheck"));
  const left = own.filter((other) => !done.includes(other) && other.work !== "recheck");
  return (
    <>
      {done.length > 1 && <p class="quiet">A look does all of: {done.map(({ what }) => what).join(", ")}.</p>}
      {left.length > 0 && (
        <p class="quiet">Still to come: {left.map(({ what, due }) => `${what} ${isoDate(due)}`).join(", ")}.</p>
      )}
    </>
  );
}

function consequence(line: FindingLine, outcome: Outcome, state: DueState): string {
  if (outcome === "healed") return "closes it";
  if (outcome === "gone") return "cow left";
  const next = state.nextLookOn ?? proposedLook(line, outcome, state.seenOn, listingIn(state)!);
  return next === undefined ? "set a day" : `look ${isoDate(next)}`;
}

/** Arrows go from line to line; in an opened line the first letter of an outcome chooses it. */
function onKey(event: JSX.TargetedKeyboardEvent<HTMLElement>, { line, choose }: LineProps, isOpen: boolean): void {
  if (event.ctrlKey || event.altKey || event.metaKey || event.target instanceof HTMLInputElement) return;
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (step !== undefined) {
    const lines = [...document.querySelectorAll<HTMLElement>(".due-lines button[data-line]")];
    const at = lines.indexOf(event.currentTarget.querySelector<HTMLElement>("[data-line]")!);
    lines[at + step]?.focus();
    event.preventDefault();
    return;
  }
  const outcome = outcomes.find((known) => known.startsWith(event.key.toLowerCase()) && event.key.length === 1);
  if (!isOpen || outcome === undefined || event.repeat) return;
  choose(line.key, outcome);
  event.preventDefault();
}
