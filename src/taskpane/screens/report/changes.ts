import { BEGINS_LATE } from "../../../blocks/herd/against-before";
import { parentCode } from "../../../core/claws/disorder-key";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import { formatNumber } from "../../format";
import type { Verdict } from "../herd/change";
import type { VisitFigures, LesionRow, Limited } from "./figures";

/** A line of what was found, now and before, in words. */
export interface FoundRow {
  readonly name: string;
  readonly now: string;
  readonly before: string;
  /** "higher, more than chance"; "" where there is nothing to compare. */
  readonly change: string;
}

const OPEN = "–";

/** What was found since the visit before, against the time before it. */
export function foundRows(figures: VisitFigures): readonly FoundRow[] {
  return [
    caseRow("New claw cases per 100 cow-years", "all", figures),
    ...(["infectious", "horn"] as const).map((group) => groupRow(group, figures)),
    shareRow("Lame cows at the last scoring", figures, "lame", "scores", "scored"),
    shareRow("Cows with high counts at the last test", figures, "high", "counts", "tested"),
    plainRow("Tank estimate, thousand/mL", figures.of("tank", "now"), figures.of("tank", "before"), "#,##0"),
    plainRow(
      "Litres that go with high counts, a day",
      figures.of("loss", "now"),
      figures.of("loss", "before"),
      "#,##0",
    ),
  ];
}

/** The lesions with most new cases since the visit before, all of them together left out. */
export function lesionRows(figures: VisitFigures, most: number): readonly (FoundRow & { readonly cases: string })[] {
  const single = figures.lesions("now").filter(({ code, newCases }) => /^[A-Z]+$/.test(code) && newCases > 0);
  // A form that makes up all cases of its parent stands for both.
  const isCovered = ({ code, newCases }: LesionRow): boolean =>
    single.some((form) => form.code !== code && parentCode(form.code) === code && form.newCases === newCases);
  return single
    .filter((row) => !isCovered(row))
    .sort((a, b) => b.newCases - a.newCases)
    .slice(0, most)
    .map((row) => ({
      ...caseRow(row.name, row.code, figures),
      cases: `${row.newCases}${row.target === undefined ? "" : ` (target ${row.target}: ${row.against})`}`,
    }));
}

function caseRow(name: string, code: string, figures: VisitFigures): FoundRow {
  const [now, before] = [figures.lesion(code, "now"), figures.lesion(code, "before")];
  return {
    name,
    now: limitedText(now, "0.0"),
    before: limitedText(before, "0.0"),
    change:
      now !== undefined && figures.lateList !== undefined ? BEGINS_LATE : caseWords(now, before, figures.verdict(code)),
  };
}

function caseWords(now: LesionRow | undefined, before: LesionRow | undefined, verdict: Verdict | undefined): string {
  if (now === undefined || before === undefined || verdict === undefined) return "";
  if (verdict === "may be chance") return now.value === before.value ? "the same" : verdict;
  return verdict === "more" ? "higher, more than chance" : "lower, more than chance";
}

function groupRow(group: "infectious" | "horn", figures: VisitFigures): FoundRow {
  const row = plainRow(`of these ${group}`, figures.of(group, "now"), figures.of(group, "before"), "0.0");
  return figures.lateList === undefined || row.now === OPEN ? row : { ...row, before: OPEN, change: BEGINS_LATE };
}

function shareRow(name: string, figures: VisitFigures, cows: string, all: string, day: string): FoundRow {
  const [now, before] = [figures.share(cows, all, "now"), figures.share(cows, all, "before")];
  const dated = (share: Limited | undefined, on: number | undefined): string =>
    share === undefined ? OPEN : `${limitedText(share, "0%")} on ${dayText(on)}`;
  return {
    name,
    now: dated(now, figures.of(day, "now")),
    before: dated(before, figures.of(day, "before")),
    change: shareWords(now, before),
  };
}

function plainRow(name: string, now: number | undefined, before: number | undefined, format: string): FoundRow {
  const text = (value: number | undefined): string => (value === undefined ? OPEN : formatNumber(value, format));
  return { name, now: text(now), before: text(before), change: differenceWords(now, before, format) };
}

function limitedText(limited: Limited | undefined, format: string): string {
  if (limited === undefined) return OPEN;
  const { value, low, high } = limited;
  const from = formatNumber(low, format).replace(" %", "");
  return `${formatNumber(value, format)} (${from} to ${formatNumber(high, format)})`;
}

function dayText(day: DaySerial | undefined): string {
  return day === undefined ? "" : isoDate(day);
}

/**
 * Whether two shares of cows differ. Mostly the same cows stand behind both, so that no test of separate counts holds:
 * only where their limits do not touch is it called more than chance.
 */
export function shareWords(now: Limited | undefined, before: Limited | undefined): string {
  if (now === undefined || before === undefined) return "";
  if (now.low > before.high) return "higher, more than chance";
  if (now.high < before.low) return "lower, more than chance";
  if (now.value === before.value) return "the same";
  return "may be chance";
}

function differenceWords(now: number | undefined, before: number | undefined, format: string): string {
  if (now === undefined || before === undefined) return "";
  const difference = formatNumber(Math.abs(now - before), format);
  if (Number(difference.replaceAll(",", "")) === 0) return "the same";
  return `${now > before ? "up" : "down"} ${difference}`;
}
