import {
  blankVisit,
  type Draft,
  type Entry,
  blankEntry,
  blankFinding,
  type FindingEntry,
  type PlannedSave,
} from "./state";

/**
 * A draft as it was kept, undefined where it is none. A draft of an earlier version of the screen comes back with what
 * it shares with this one; nothing in it can break the screen.
 */
export function keptDraft(kept: unknown): Draft | undefined {
  if (!isRecord(kept) || !isRecord(kept["entry"]) || typeof kept["entry"]["id"] !== "string") return undefined;
  const begun = keptSave(kept["begun"]);
  const earlier = keptDraft(kept["earlier"]);
  return {
    visit: withTexts(blankVisit, kept["visit"]),
    entry: keptEntry(kept["entry"]["id"], kept["entry"]),
    ...(begun === undefined ? {} : { begun }),
    ...(earlier === undefined ? {} : { earlier }),
  };
}

function keptEntry(id: string, kept: Record<string, unknown>): Entry {
  const blank = blankEntry(id);
  const { cowText, cow, score } = withTexts({ cowText: "", cow: "", score: "" }, kept);
  const findings = listOf(kept["findings"]).filter(isRecord).map(keptFinding);
  const toes = Object.entries(isRecord(kept["toes"]) ? kept["toes"] : {});
  const { current } = kept;
  return {
    ...blank,
    cowText,
    cow,
    score,
    toes: Object.fromEntries(toes.map(([foot, lengths]) => [foot, withTexts({ inner: "", outer: "" }, lengths)])),
    findings: findings.length === 0 ? blank.findings : findings,
    current: typeof current === "number" && findings[current] !== undefined ? current : 0,
    agreed: listOf(kept["agreed"]).filter((question) => typeof question === "string"),
  };
}

function keptFinding(kept: Record<string, unknown>): FindingEntry {
  const care = Object.entries(isRecord(kept["care"]) ? kept["care"] : {});
  const known = care.filter(([, value]) => typeof value === "string" || typeof value === "boolean");
  return { ...withTexts(blankFinding, kept), care: Object.fromEntries(known) };
}

/** A save is handed over as it was begun, or not at all. */
function keptSave(kept: unknown): PlannedSave | undefined {
  if (!isRecord(kept) || !isRecord(kept["save"])) return undefined;
  const { id, title, changes } = kept["save"];
  if (typeof id !== "string" || typeof title !== "string" || !Array.isArray(changes)) return undefined;
  return kept as unknown as PlannedSave;
}

/** The blank with those of its texts that were kept. */
function withTexts<T extends object>(blank: T, kept: unknown): T {
  if (!isRecord(kept)) return blank;
  const texts = Object.keys(blank).filter((key) => typeof kept[key] === "string");
  return { ...blank, ...Object.fromEntries(texts.map((key) => [key, kept[key]])) };
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}
