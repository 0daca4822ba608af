import { disorderOf } from "../../../core/claws/disorder-key";
import type { MobilityScale } from "../../../core/claws/mobility";
import { STAGES } from "../../../workbook/tables";
import { withLesion, withValue } from "./edits";
import { fieldAfter, goTo } from "./field-order";
import type { ClawChoice, Field, Foot } from "./fields";
import { scaleOf } from "./mobility";
import { currentFinding, type RecordState } from "./state";
import { cowToTake, disorderToTake, MOST_COWS, offeredDisorders, suggestedCows } from "./suggestions";

/** Letters of a foot: left or right, then front or hind. */
const SIDES = new Set(["l", "r"]);
const ENDS: Readonly<Record<string, "F" | "H">> = { f: "F", h: "H" };
/** Half points are chosen with the arrow keys or by touch. */
const SCORE_KEYS: Readonly<Record<MobilityScale, RegExp>> = { "0-3": /^[0-3]$/, "1-5": /^[1-5]$/ };
const CLAW_KEYS: Readonly<Record<string, ClawChoice>> = { i: "inner", o: "outer", b: "between" };

/** The state after a key on a field; undefined where the key means nothing there. Letters come in lower case. */
export function afterKey(state: RecordState, field: Field, key: string): RecordState | undefined {
  switch (field) {
    case "cow":
      return cowKeys(state, key);
    case "lesion":
      return lesionKeys(state, key);
    case "foot":
      return footKeys(state, key);
    case "claw":
      return chosen(state, "claw", CLAW_KEYS[key], key);
    case "score":
      return chosen(state, "score", SCORE_KEYS[scaleOf(state)].test(key) ? key : undefined, key);
    case "severity":
      return chosen(state, "severity", /^[1-3]$/.test(key) ? key : undefined, key);
    case "stage":
      return chosen(state, "stage", /^[1-5]$/.test(key) ? STAGES[Number(key) - 1] : undefined, key);
    default:
      return key === "enter" && field !== "actions" ? goTo(state, fieldAfter(state, field)) : undefined;
  }
}

function chosen(state: RecordState, field: Field, value: string | undefined, key: string): RecordState | undefined {
  if (value !== undefined) return choose(state, field, value);
  return key === "enter" ? goTo(state, fieldAfter(state, field)) : undefined;
}

/** A value chosen among several; the keyboard goes on to the next field. */
export function choose(state: RecordState, field: Field, value: string): RecordState {
  const changed = field === "lesion" ? withLesion(state, value) : withValue(state, field, value);
  return goTo({ ...changed, footSide: "" }, fieldAfter(changed, field));
}

function footKeys(state: RecordState, key: string): RecordState | undefined {
  if (SIDES.has(key)) return { ...state, footSide: key === "l" ? "L" : "R" };
  const end = ENDS[key];
  if (end !== undefined && state.footSide !== "")
    return choose(state, "foot", `${state.footSide}${end}` satisfies Foot);
  return key === "enter" ? goTo(state, fieldAfter(state, "foot")) : undefined;
}

/** Chooses a cow by name. Her findings of before stay: they were typed about the animal in the chute. */
export function takeCow(state: RecordState, name: string): RecordState {
  const taken = { ...state, entry: { ...state.entry, cowText: name, cow: name }, announced: `Cow ${name}` };
  return goTo(taken, fieldAfter(taken, "cow"));
}

function cowKeys(state: RecordState, key: string): RecordState | undefined {
  const cows = suggestedCows(state);
  if (key === "arrowdown" || key === "arrowup") return stepped(state, key, Math.min(cows.length, MOST_COWS));
  if (key !== "enter") return undefined;
  const cow = cows[cowToTake(state)];
  if (cow !== undefined) return takeCow(state, cow.name);
  if (state.entry.cow !== "") return goTo(state, fieldAfter(state, "cow"));
  const typed = state.entry.cowText.trim();
  if (typed === "") return undefined;
  // Before the list of cows is read, or where there is none, she is taken as typed, so that the keys after this one go
  // where they belong. Whether Cows has her is asked beside the field, and before anything is saved.
  if (state.herd === undefined || state.herd.cows.all.length === 0) return takeCow(state, typed);
  // A number that nobody has: the question stands beside the field, and the keyboard stays there.
  const announced = `The table Cows has no ${typed}`;
  return { ...state, entry: { ...state.entry, cow: typed }, left: [...state.left, "cow"], announced };
}

function lesionKeys(state: RecordState, key: string): RecordState | undefined {
  if (key === "arrowdown" || key === "arrowup") return stepped(state, key, offeredDisorders(state).length);
  if (key !== "enter") return undefined;
  const disorder = disorderToTake(state);
  if (disorder !== undefined) return choose(state, "lesion", disorder.code);
  const { lesion } = currentFinding(state.entry);
  return disorderOf(lesion) === undefined
    ? { ...state, left: [...state.left, "lesion"], announced: "No such disorder" }
    : undefined;
}

function stepped(state: RecordState, key: string, count: number): RecordState {
  if (count === 0) return state;
  const step = key === "arrowdown" ? 1 : -1;
  return { ...state, highlighted: Math.max(-1, Math.min(count - 1, state.highlighted + step)) };
}
