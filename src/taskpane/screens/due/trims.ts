import { defaultTrimRules, nextTrim, type TrimRule } from "../../../core/claws/next-trim";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import { DomainError } from "../../../core/shared/domain-error";
import type { InSteps } from "../../../core/shared/steps";
import { trimRules } from "../../../functions/claws/kinds-of-trimming";
import { cowKey } from "../../../herd/cow-rows";
import type { TableContent } from "../../../workbook/table-port";
import type { CowRow, Cows } from "./cows";
import type { DueLine } from "./line";

interface Trims {
  readonly lines: readonly DueLine[];
  readonly remarks: readonly string[];
}

/** Working out a next trim is more work than reading a row. */
const COWS_A_STEP = 1_000;

/** Routine trims due up to a day, of cows that are here; `lastTrims` are by the key of a cow's name. */
export function* trimLines(
  cows: Cows,
  lastTrims: ReadonlyMap<string, DaySerial>,
  rulesTable: TableContent | undefined,
  day: DaySerial,
  until: DaySerial,
): InSteps<Trims> {
  const { rules, remark } = trimRulesInForce(rulesTable);
  if (rules.length === 0) return { lines: [], remarks: remark };
  const lines: DueLine[] = [];
  const contradicting: string[] = [];
  for (const [place, cow] of cows.all.entries()) {
    if (place % COWS_A_STEP === COWS_A_STEP - 1) yield;
    if (cow.cow === null || cows.hasLeft(cow.cow, day)) continue;
    const lastTrim = lastTrims.get(cowKey(cow.cow));
    const next = nextTrimOf(cow, lastTrim, rules);
    if (next === "contradiction") contradicting.push(cow.cow);
    else if (next !== undefined && next <= until) lines.push(trimLine(cow, next, lastTrim));
  }
  const remarks = contradicting.map((cow) => `Cow ${cow}: Dry-off is not after Calved, so her next trim is not known.`);
  return { lines, remarks: [...remark, ...remarks] };
}

function trimLine(cow: CowRow, due: DaySerial, lastTrim: DaySerial | undefined): DueLine {
  const last = lastTrim === undefined ? "not trimmed before" : `last trim ${isoDate(lastTrim)}`;
  return {
    key: `trim ${cow.cow!} ${due} ${cow.index}`,
    work: "trim",
    what: "routine trim",
    due,
    cow: cow.cow!,
    place: cow.group ?? "",
    remarks: [last],
  };
}

function nextTrimOf(
  { calved, dryOff }: CowRow,
  lastTrim: DaySerial | undefined,
  rules: readonly TrimRule[],
): DaySerial | "contradiction" | undefined {
  if (calved === null && dryOff === null && lastTrim === undefined) return undefined;
  try {
    return nextTrim({ lastTrim, calvedOn: calved ?? undefined, dryOffOn: dryOff ?? undefined }, rules).due;
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return error.kind === "invalid" ? "contradiction" : undefined;
  }
}

/** The trim rules of the workbook, the built-in ones where it has none, and none where the table contradicts itself. */
function trimRulesInForce(content: TableContent | undefined): {
  readonly rules: readonly TrimRule[];
  readonly remark: readonly string[];
} {
  if (content === undefined) return { rules: defaultTrimRules, remark: [] };
  try {
    return {
      rules: trimRules.read([content.columns.map(({ heading }) => heading), ...content.rows], content.name),
      remark: [],
    };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { rules: [], remark: [`Routine trims are not listed: ${error.message}.`] };
  }
}
