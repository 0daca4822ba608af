import { defaultRecheckRules } from "../../../core/claws/recheck-rules";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import { ZONES_BETWEEN_CLAWS } from "../../../core/claws/claw-zones";
import { isLame } from "./care";
import { checkEntry, hindrance } from "./check";
import { cowAtHand } from "./check-visit";
import type { Care, Field } from "./fields";
import type { Draft, RecordState } from "./state";
import { blankEntry, blankFinding, blankVisit, currentFinding, isBlankEntry, isBlankFinding } from "./state";
import { withCare, withValue } from "./edits";
import type { RecordEvent } from "./events";
import { fieldAfter, goTo } from "./field-order";
import { afterKey, choose, takeCow } from "./keys";
import { ask, type Problem, stop } from "./problems";
import { plannedSave, type SaveKind } from "./rows";

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
  { type: "herd read" | "herd failed" | "day began" | "saved" | "save failed" | "take back" | "taken back" | "take back failed" | "left" } // prettier-ignore
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
      return goTo({ ...fresh(state, event.nextId), cleared: isBlankEntry(state.entry) ? state.cleared : state.entry }, "cow"); // prettier-ignore
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

function fresh(state: RecordState, nextId: string): RecordState {
  return { ...state, entry: blankEntry(nextId), left: [], attempted: false, error: "", footSide: "" };
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
  const problem = checkEntry(state, cowAtHand(state)).find(({ finding, kind }) => finding === entry.current && kind !== "tell"); // prettier-ignore
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

/** The fault is shown, and the keyboard goes to its field. */
function hindered(state: RecordState, problem: Problem): RecordState {
  const { entry } = state;
  const ofFoot = entry.findings.findIndex(({ foot }) => foot === problem.foot);
  const place = problem.finding ?? (problem.foot !== undefined && ofFoot >= 0 ? ofFoot : entry.current);
  const shown = { ...state, attempted: true, entry: { ...entry, current: place }, announced: problem.text };
  return goTo(shown, problem.field);
}

/** The same for what no field is to blame for: it is told beside the button or key that was pressed. */
function refused(state: RecordState, obstacle: Problem): RecordState {
  return { ...hindered(state, obstacle), attempted: state.attempted, obstacle };
}

/** A score alone is an entry of a scoring day; a treated or sound cow has a row under Findings. */
function save(state: RecordState): RecordState {
  if (!state.entry.findings.every(isBlankFinding)) return handOver(state, "findings");
  if (state.entry.score !== "") return handOver(state, "score");
  if (state.entry.cow === "") return handOver(state, "findings");
  return refused(state, stop("foot", "Enter a finding, or choose Nothing found."));
}

function nothingFound(state: RecordState): RecordState {
  const { entry } = state;
  if (entry.findings.some((finding) => !isBlankFinding({ ...finding, foot: "" })))
    return refused(state, stop("foot", "Findings are entered: remove them before Nothing found."));
  const rows = cowAtHand(state)?.facts.sameDay.length ?? 0;
  if (rows > 0)
    return refused(state, stop("foot", "She is entered on this day already; her score alone can be saved."));
  const question = `${LAME_AND_SOUND}:${entry.cow}:${entry.score}`;
  if (isLame(entry) === true && !entry.agreed.includes(question))
    return refused(state, ask("foot", question, `Score ${entry.score} is lame. Lift the other foot of the pair too; where no cause is found, call the veterinarian. Save that nothing was found?`)); // prettier-ignore
  return handOver({ ...state, entry: { ...entry, findings: [blankFinding], current: 0 } }, "sound");
}

const LAME_AND_SOUND = "lame-and-sound";

/** A yes to a question; the keyboard goes on from its field, and what waited for the yes is done. */
function agreed(state: RecordState, question: string, field: Field): RecordState {
  const yes = { ...state, obstacle: undefined, entry: { ...state.entry, agreed: [...state.entry.agreed, question] } };
  return question.startsWith(LAME_AND_SOUND) ? nothingFound(yes) : goTo(yes, fieldAfter(yes, field));
}

function handOver(state: RecordState, kind: SaveKind): RecordState {
  if (state.herd === undefined) return { ...state, error: "The workbook is still being read. Try again in a moment." };
  const at = cowAtHand(state);
  const problem = hindrance(checkEntry(state, at));
  if (problem !== undefined) return hindered(state, problem);
  if (at === undefined) return state;
  const planned = plannedSave(state, at, kind);
  if (planned.save.changes.length === 0)
    return { ...state, error: "There is nothing new to save for her on this day." };
  return { ...state, error: "", obstacle: undefined, phase: { kind: "saving", planned }, announced: "Saving" };
}

/** The very save that was begun, whatever is typed: another under its id would be taken for written. */
function saveAgain(state: RecordState): RecordState {
  if (state.phase.kind !== "uncertain") return state;
  return { ...state, phase: { kind: "saving", planned: state.phase.planned }, announced: "Saving again" };
}

function saved(state: RecordState, event: Extract<RecordEvent, { type: "saved" }>): RecordState {
  const { phase } = state;
  if (phase.kind !== "saving" || phase.planned.save.id !== event.id) return { ...state, past: event.past };
  const { save, written } = phase.planned;
  const next = fresh({ ...state, phase: { kind: "typing" }, past: event.past, cleared: undefined }, event.nextId);
  return {
    ...goTo(next, "cow"),
    saved: { title: save.title, id: save.id, written },
    announced: `Saved. ${save.title}`,
  };
}

function saveFailed(state: RecordState, event: Extract<RecordEvent, { type: "save failed" }>): RecordState {
  const { phase } = state;
  if (phase.kind !== "saving" || phase.planned.save.id !== event.id) return state;
  const { message } = event;
  const { planned } = phase;
  return event.uncertain
    ? { ...goTo(state, "actions"), phase: { kind: "uncertain", planned, message }, announced: message }
    : { ...goTo(state, "actions"), phase: { kind: "typing" }, error: message, announced: message };
}

function tookBack(state: RecordState, id: string): RecordState {
  const title = state.past.find((past) => past.id === id)?.title ?? "";
  const still = state.saved?.id === id ? undefined : state.saved;
  return { ...state, takingBack: "", saved: still, error: "", announced: `Taken back. ${title}` };
}
