import { disorderOf } from "../../../core/claws/disorder-key";
import type { Field } from "./fields";
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

/** The field after this one. Toe lengths and the stage are passed over where they are not asked for. */
export function fieldAfter(state: RecordState, field: Field): Field {
  const place = WAY.indexOf(field);
  return WAY.slice(place + 1).find((next) => isAsked(state, next)) ?? "actions";
}

export function isAsked({ visit, entry }: RecordState, field: Field): boolean {
  if (field === "toeInner" || field === "toeOuter") return visit.landmark !== "";
  if (field === "stage") return disorderOf(currentFinding(entry).lesion)?.code === "DD";
  return true;
}

export function goTo(state: RecordState, field: Field): RecordState {
  return { ...state, highlighted: -1, focus: { field, count: state.focus.count + 1 } };
}
