import { ZONES_BETWEEN_CLAWS } from "../../../core/claws/claw-zones";
import { defaultRecheckRules } from "../../../core/claws/recheck-rules";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import { checkEntry } from "./check";
import { cowAtHand } from "./check-visit";
import { withCare, withValue } from "./edits";
import type { RecordEvent } from "./events";
import { goTo } from "./field-order";
import type { Care } from "./fields";
import { afterKey, choose, takeCow } from "./keys";
import { agreed, fresh, hindered, nothingFound, save, saveAgain, saved, saveFailed, tookBack } from "./saving";
import type { Draft, RecordState } from "./state";
import { blankEntry, blankFinding, blankVisit, currentFinding, isBlankEntry, isBlankFinding } from "./state";

/** The screen before the workbook is read. An entry left from before is offered. */
export function initialState(today: DaySerial, id: string, draft?: Draft): RecordState {
  const offered = draft !== undefined && !isBlankEntry(draft.entry) ? draft : undefined;
  return {
    today,
    herd: undefined,
    rules: { rules: defaultRecheckRules },
    readError: "",
    visit: { ...(draft?.visit ?? blankVisit), date: isoDate(today) },
    entry: blankEntry(id),
    highlighted: -1,
    footSide: "",
    left: [],
    attempted: false,
    obstacle: undefined,
    phase: { kind: "typing" },
    error: "",
    saved: undefined,
    past: [],
    takingBack: "",
    offered,
    cleared: undefined,
    focus: { field: "cow", count: 0 },
    announced: "",
  };
}

/**
 * What is to be kept so that nothing typed is lost: the entry at hand, else the one that is still offered, and the
 * header of the visit.
 */
export function draftOf({ visit, entry, offered, phase }: RecordState): Draft {
  if (!isBlankEntry(entry)) {
    const begun = phase.kind === "typing" ? {} : { begun: phase.planned };
    return { visit, entry, ...begun, ...(offered === undefined ? {} : { earlier: offered }) };
  }
  return offered ?? { visit, entry };
}

/** The next state of the screen. While a save is on its way, or may be half written, nothing typed changes. */
export function nextState(state: RecordState, event: RecordEvent): RecordState {
  switch (event.type) {
    case "herd read":
      return { ...state, herd: event.herd, rules: event.rules, past: event.past, readError: "" };
    case "herd failed":
      return { ...state, readError: event.message };
    case "day began":
      return dayBegan(state, event.today);
    case "saved":
      return saved(state, event);
    case "save failed":
      return saveFailed(state, event);
    case "take back":
      return state.takingBack === "" ? { ...state, takingBack: event.id, error: "" } : state;
    case "taken back":
      return { ...tookBack(state, event.id), past: event.past };
    case "take back failed":
      return { ...state, takingBack: "", error: event.message, announced: event.message };
    case "left":
      return state.left.includes(event.field) ? state : { ...state, left: [...state.left, event.field] };
    case "save":
      return state.phase.kind === "uncertain" ? saveAgain(state) : whileTyping(state, event);
    default:
      return whileTyping(state, event);
  }
}

type TypingEvent = Exclude<
  RecordEvent,
  {
    type:
      | "herd read"
      | "herd failed"
      | "day began"
      | "saved"
      | "save failed"
      | "take back"
      | "taken back"
      | "take back failed"
      | "left";
  }
>;

function whileTyping(before: RecordState, event: TypingEvent): RecordState {
  if (before.phase.kind !== "typing") return before;
  const state = before.obstacle === undefined ? before : { ...before, obstacle: undefined };
  switch (event.type) {
    case "typed":
      return withValue(state, event.field, event.text);
    case "chose":
      return event.field === "cow" ? takeCow(state, event.value) : choose(state, event.field, event.value);
    case "switched":
      return switched(state, event.field, event.on);
    case "key":
      return onKey(state, event);
    case "another finding":
      return anotherFinding(state);
    case "open finding":
      return openFinding(state, event.place);
    case "remove finding":
      return removeFinding(state, event.place);
    case "agreed":
      return agreed(state, event.question, event.field);
    case "pointed":
      return pointed(state, event);
    case "nothing found":
      return nothingFound(state);
    case "save":
      return save(state);
    case "clear":
      return goTo(
        { ...fresh(state, event.nextId), cleared: isBlankEntry(state.entry) ? state.cleared : state.entry },
        "cow",
      );
    case "bring back":
      return state.cleared === undefined || !isBlankEntry(state.entry)
        ? state
        : goTo({ ...fresh(state, ""), entry: state.cleared, cleared: undefined }, "actions");
    case "resume draft":
      return resumeDraft(state);
    case "drop draft":
      return goTo({ ...state, offered: state.offered?.earlier }, "cow");
  }
}

/** A pane left open overnight goes on with the new day, unless another day was typed. */
function dayBegan(state: RecordState, today: DaySerial): RecordState {
  const date =
    state.visit.date === isoDate(state.today) && isBlankEntry(state.entry) ? isoDate(today) : state.visit.date;
  return { ...state, today, visit: { ...state.visit, date } };
}

function onKey(state: RecordState, { field, key }: Extract<RecordEvent, { type: "key" }>): RecordState {
  const pressed = key.toLowerCase();
  if (field === "foot" && pressed === "n") return nothingFound(state);
  if (field === "actions" && pressed === "a") return anotherFinding(state);
  if (field === "actions" && pressed === "s") return save(state);
  return afterKey(state, field, pressed) ?? state;
}

function switched(state: RecordState, field: `care.${string}`, on: boolean): RecordState {
  const key = field.slice("care.".length) as keyof Care;
  return { ...state, entry: withCare(state.entry, key, on) };
}

function pointed(state: RecordState, { claw, zone }: Extract<RecordEvent, { type: "pointed" }>): RecordState {
  const between = ZONES_BETWEEN_CLAWS.includes(zone);
  const onClaw = withValue(state, "claw", between ? "between" : claw);
  return choose(onClaw, "zone", String(zone));
}

function anotherFinding(state: RecordState): RecordState {
  const { entry } = state;
  if (isBlankFinding(currentFinding(entry))) return goTo(state, "foot");
  const problem = checkEntry(state, cowAtHand(state)).find(
    ({ finding, kind }) => finding === entry.current && kind !== "tell",
  );
  if (problem !== undefined) return hindered(state, problem);
  const findings = [...entry.findings.filter((finding) => !isBlankFinding(finding)), blankFinding];
  return goTo(
    { ...state, left: [], attempted: false, entry: { ...entry, findings, current: findings.length - 1 } },
    "foot",
  );
}

function openFinding(state: RecordState, place: number): RecordState {
  if (state.entry.findings[place] === undefined) return state;
  return goTo({ ...state, entry: { ...state.entry, current: place } }, "foot");
}

function removeFinding(state: RecordState, place: number): RecordState {
  const { entry } = state;
  if (entry.findings[place] === undefined) return state;
  const rest = entry.findings.filter((_, index) => index !== place);
  const findings = rest.length === 0 ? [blankFinding] : rest;
  const current = Math.min(entry.current > place ? entry.current - 1 : entry.current, findings.length - 1);
  return goTo({ ...state, entry: { ...entry, findings, current }, announced: "Finding removed" }, "foot");
}

function resumeDraft(state: RecordState): RecordState {
  const { offered } = state;
  if (offered === undefined) return state;
  if (!isBlankEntry(state.entry)) {
    return { ...state, error: "Save or clear the cow at hand first, then go on with the other." };
  }
  const resumed = goTo({ ...state, visit: offered.visit, entry: offered.entry, offered: offered.earlier }, "actions");
  return offered.begun === undefined
    ? resumed
    : { ...resumed, phase: { kind: "uncertain", planned: offered.begun, message: BEGUN } };
}

const BEGUN =
  "Saving had begun when the pane was closed. Save again: what is already in the workbook is not written twice.";
