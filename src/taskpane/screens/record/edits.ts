import { ZONES_BETWEEN_CLAWS } from "../../../core/claws/claw-zones";
import { disorderOf } from "../../../core/claws/disorder-key";
import type { Care, Field, Visit } from "./fields";
import { currentFinding, type Entry, type FindingEntry, type RecordState } from "./state";
import { typedNumber } from "./typed-text";

const VISIT_FIELDS: ReadonlySet<Field> = new Set<keyof Visit>(["date", "place", "trimmer", "reason", "landmark"]);

/** The state with one value put in. Nothing else that was typed is touched. */
export function withValue(state: RecordState, field: Field, value: string): RecordState {
  if (VISIT_FIELDS.has(field)) return { ...state, visit: { ...state.visit, [field]: value } };
  const { entry } = state;
  switch (field) {
    case "cow":
      return { ...state, highlighted: -1, entry: { ...entry, cowText: value, cow: "" } };
    case "score":
      return { ...state, entry: { ...entry, score: value } };
    case "toeInner":
    case "toeOuter":
      return { ...state, entry: withToe(entry, field === "toeInner" ? "inner" : "outer", value) };
    case "actions":
      return state;
    default:
      return { ...state, highlighted: -1, entry: withFinding(entry, findingWith(currentFinding(entry), field, value)) };
  }
}

function withToe(entry: Entry, claw: "inner" | "outer", text: string): Entry {
  const { foot } = currentFinding(entry);
  if (foot === "") return entry;
  const toes = entry.toes[foot] ?? { inner: "", outer: "" };
  return { ...entry, toes: { ...entry.toes, [foot]: { ...toes, [claw]: text } } };
}

function findingWith(finding: FindingEntry, field: Field, value: string): FindingEntry {
  if (field.startsWith("care.")) return { ...finding, care: { ...finding.care, [field.slice(5)]: value } };
  const changed = { ...finding, [field]: value } as FindingEntry;
  if (field === "zone" && finding.claw === "" && ZONES_BETWEEN_CLAWS.includes(typedNumber(value) ?? NaN))
    return { ...changed, claw: "between" };
  return changed;
}

/** The entry with its open finding put in place. */
function withFinding(entry: Entry, finding: FindingEntry): Entry {
  return { ...entry, findings: entry.findings.map((old, place) => (place === entry.current ? finding : old)) };
}

export function withCare(entry: Entry, key: keyof Care, value: boolean | string): Entry {
  const finding = currentFinding(entry);
  return withFinding(entry, { ...finding, care: { ...finding.care, [key]: value } });
}

/** A stage that no longer fits its disorder would be written by nobody's wish. */
export function withLesion(state: RecordState, code: string): RecordState {
  const chosen = withValue(state, "lesion", code);
  return disorderOf(code)?.code === "DD" ? chosen : withValue(chosen, "stage", "");
}
