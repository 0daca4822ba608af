import { checkEntry, hindrance } from "./check";
import { cowAtHand } from "./check-visit";
import type { RecordEvent } from "./events";
import { fieldAfter, goTo } from "./field-order";
import type { Field } from "./fields";
import { isLame } from "./mobility";
import { ask, type Problem, stop } from "./problems";
import { plannedSave, type SaveKind } from "./rows";
import { blankEntry, blankFinding, isBlankFinding, type RecordState } from "./state";

/** The screen with a blank entry. */
export function fresh(state: RecordState, nextId: string): RecordState {
  return { ...state, entry: blankEntry(nextId), left: [], attempted: false, error: "", footSide: "" };
}

/** The fault is shown, and the keyboard goes to its field. */
export function hindered(state: RecordState, problem: Problem): RecordState {
  const { entry } = state;
  const ofFoot = entry.findings.findIndex(({ foot }) => foot === problem.foot);
  const place = problem.finding ?? (problem.foot !== undefined && ofFoot >= 0 ? ofFoot : entry.current);
  const shown = { ...state, attempted: true, entry: { ...entry, current: place }, announced: problem.text };
  // A toe of a foot that no finding names any more has no field of its own.
  const lost = problem.foot !== undefined && entry.findings[place]?.foot !== problem.foot;
  return goTo(lost ? { ...shown, obstacle: problem } : shown, problem.field);
}

/** The same for what no field is to blame for: it is told beside the button or key that was pressed. */
function refused(state: RecordState, obstacle: Problem): RecordState {
  return { ...hindered(state, obstacle), attempted: state.attempted, obstacle };
}

/** A score alone is an entry of a scoring day; a treated or sound cow has a row under Findings. */
export function save(state: RecordState): RecordState {
  if (!state.entry.findings.every(isBlankFinding)) return handOver(state, "findings");
  if (state.entry.score !== "") return handOver(state, "score");
  if (state.entry.cow === "") return handOver(state, "findings");
  return refused(state, stop("foot", "Enter a finding, or choose Nothing found."));
}

export function nothingFound(state: RecordState): RecordState {
  const { entry } = state;
  if (entry.findings.some((finding) => !isBlankFinding({ ...finding, foot: "" })))
    return refused(state, stop("foot", "Findings are entered: remove them before Nothing found."));
  const rows = cowAtHand(state)?.facts.sameDay.length ?? 0;
  if (rows > 0)
    return refused(state, stop("foot", "She is entered on this day already; her score alone can be saved."));
  const question = `${LAME_AND_SOUND}:${entry.cow}:${entry.score}`;
  if (isLame(state) === true && !entry.agreed.includes(question))
    return refused(
      state,
      ask(
        "foot",
        question,
        `Score ${entry.score} is lame. Lift the other foot of the pair too; where no cause is found, call the veterinarian. Save that nothing was found?`,
      ),
    );
  return handOver({ ...state, entry: { ...entry, findings: [blankFinding], current: 0 } }, "sound");
}

const LAME_AND_SOUND = "lame-and-sound";

/** A yes to a question; the keyboard goes on from its field, and what waited for the yes is done. */
export function agreed(state: RecordState, question: string, field: Field): RecordState {
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
export function saveAgain(state: RecordState): RecordState {
  if (state.phase.kind !== "uncertain") return state;
  return { ...state, phase: { kind: "saving", planned: state.phase.planned }, announced: "Saving again" };
}

export function saved(state: RecordState, event: Extract<RecordEvent, { type: "saved" }>): RecordState {
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

export function saveFailed(state: RecordState, event: Extract<RecordEvent, { type: "save failed" }>): RecordState {
  const { phase } = state;
  if (phase.kind !== "saving" || phase.planned.save.id !== event.id) return state;
  const { message } = event;
  const { planned } = phase;
  return event.uncertain
    ? { ...goTo(state, "actions"), phase: { kind: "uncertain", planned, message }, announced: message }
    : { ...goTo(state, "actions"), phase: { kind: "typing" }, error: message, announced: message };
}

export function tookBack(state: RecordState, id: string): RecordState {
  const title = state.past.find((past) => past.id === id)?.title ?? "";
  const still = state.saved?.id === id ? undefined : state.saved;
  return { ...state, takingBack: "", saved: still, error: "", announced: `Taken back. ${title}` };
}
