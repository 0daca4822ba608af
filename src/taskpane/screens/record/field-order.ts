import { disorderOf } from "../../../core/claws/disorder-key";
import type { Field } from "./fields";
import { placeOf } from "./places";
import { currentFinding, type RecordState } from "./state";

/** The way of the keyboard through an entry. */
const WAY: readonly Field[] = [
  "cow",
  "score",
  "foot",
  "toeInner",
  "toeOuter",
  "claw",
  "zone",
  "lesion",
  "stage",
  "severity",
  "actions",
];

/** The field after this one. Those that are not asked for are passed over. */
export function fieldAfter(state: RecordState, field: Field): Field {
  const place = WAY.indexOf(field);
  return WAY.slice(place + 1).find((next) => isAsked(state, next)) ?? "actions";
}

/** The place on the claw is asked for in any case: rules and suggestions go by it. */
const ALWAYS_ASKED: ReadonlySet<Field> = new Set<Field>(["foot", "claw", "zone"]);

export function isAsked(state: RecordState, field: Field): boolean {
  const { visit, entry } = state;
  if (!ALWAYS_ASKED.has(field) && placeOf(state, field) === "nowhere") return false;
  if (field === "toeInner" || field === "toeOuter") return visit.landmark !== "";
  if (field === "stage") return disorderOf(currentFinding(entry).lesion)?.code === "DD";
  return true;
}

export function goTo(state: RecordState, field: Field): RecordState {
  return { ...state, highlighted: -1, focus: { field, count: state.focus.count + 1 } };
}
