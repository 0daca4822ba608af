import type { ComputedBlock } from "../../../blocks/compute";
import { isoDate } from "../../../core/shared/days";
import { capitalised, counted, formatNumber } from "../../format";
import { listed } from "../../parts/listed";
import { limitsText } from "../../parts/pictures/interval-words";
import { groupSharesOf } from "./groups";
import { lesionTableOf, targetedIn } from "./lesions";
import { monthName } from "./month-names";
import { BlockFigures } from "../../parts/live-blocks/block-figures";
import { lesionSharesIn } from "./shares";
import { kindOf } from "./shown-blocks";
import { numberIn, recordsIn, textIn } from "./rows";

/** What a section comes down to, in a line below its heading. */
type Answer = (figures: BlockFigures) => string | undefined;

const PERCENT = "0%";
const ONE_DECIMAL_PERCENT = "0.0%";

const coverage: Answer = (figures) => {
  const [milking, examined, share] = ["milking", "examined", "share"].map((id) => figures.number(id));
  if (milking === undefined || examined === undefined) return undefined;
  if (milking === 0) return "No cow is in milk on the last day, as far as the workbook tells.";
  return `${counted(milking, "milking cow")}, ${formatNumber(examined, "#,##0")} of them examined (${formatNumber(share ?? 0, PERCENT)}).`;
};

const lesionRates: Answer = (figures) => {
  const spilled = figures.spilled("lesions");
  if (spilled === undefined) return undefined;
  const table = lesionTableOf(spilled);
  const { all } = table;
  if (all === undefined || all.newCases === 0) return "No new case in this time.";
  const targeted = targetedIn(table);
  const above = targeted.filter(({ against }) => against === "above").map(({ name }) => name.toLowerCase());
  const against =
    above.length > 0 ? `; above target: ${listed(above)}` : targeted.length > 0 ? "; none above target for sure" : "";
  return `${counted(all.newCases, "new case")}, ${formatNumber(all.rate, "0.0")} per 100 cow-years${against}.`;
};

const lesionShares: Answer = (figures) => {
  const spilled = figures.spilled("shares");
  if (spilled === undefined) return undefined;
  const { lesions, all } = lesionSharesIn(spilled);
  const [first] = lesions;
  if (all === undefined || first === undefined) return "No lesion was recorded in this time.";
  const { cows, examined, share } = first;
  return `${first.name}: ${formatNumber(cows, "#,##0")} of ${counted(examined, "cow")} examined (${formatNumber(share ?? 0, PERCENT)}).`;
};

const byLactation: Answer = (figures) => {
  const spilled = figures.spilled("dermatitis");
  if (spilled === undefined) return undefined;
  const groups = groupSharesOf(spilled).filter(({ share }) => share !== undefined);
  if (groups.length === 0) return "No cow with a lactation was examined.";
  return `Digital dermatitis: ${groups.map(({ name, share }) => `${name} ${formatNumber(share!, PERCENT)}`).join(", ")}.`;
};

const months: Answer = (figures) => {
  const spilled = figures.spilled("months");
  if (spilled === undefined) return undefined;
  const rows = recordsIn(spilled).map((row) => ({
    day: numberIn(row, "Month from") ?? 0,
    cases: numberIn(row, "All") ?? 0,
  }));
  const cases = rows.reduce((sum, row) => sum + row.cases, 0);
  if (cases === 0) return "No new case in these months.";
  const most = rows.reduce((high, row) => (row.cases > high.cases ? row : high));
  return `${counted(cases, "new case")} in ${counted(rows.length, "month")}, most in ${monthName(most.day)} (${most.cases}).`;
};

const hornAndInfectious: Answer = (figures) => {
  const [infectious, horn] = [figures.number("rate infectious"), figures.number("rate horn")];
  if (infectious === undefined || horn === undefined) return undefined;
  return `Infectious ${formatNumber(infectious, "0.0")}, horn ${formatNumber(horn, "0.0")} new cases per 100 cow-years.`;
};

const newAndRepeat: Answer = (figures) => {
  const [first, repeats] = [figures.number("new"), figures.number("repeats")];
  if (first === undefined || repeats === undefined) return undefined;
  const records = first + repeats;
  if (records === 0) return "No lesion was recorded in this time.";
  const many = figures.rows("cows").length;
  const share = formatNumber(repeats / records, PERCENT);
  const tail =
    many === 0 ? "no cow has many" : `${counted(many, "cow")} ${many === 1 ? "has" : "have"} several new cases`;
  return `${share} of ${counted(records, "record")} are repeats; ${tail}.`;
};

const lame: Answer = (figures) => {
  const summary = figures.spilled("summary");
  const day = figures.input("scored");
  if (summary === undefined || day === undefined) return undefined;
  const [row = {}] = recordsIn(summary);
  const [share, low, high] = [numberIn(row, "Share lame"), numberIn(row, "Low"), numberIn(row, "High")];
  if (share === undefined || low === undefined || high === undefined) return undefined;
  return `${formatNumber(share, ONE_DECIMAL_PERCENT)} lame on ${isoDate(day)} (${limitsText(low, high, ONE_DECIMAL_PERCENT)}).`;
};

const lameToTreated: Answer = (figures) => {
  const [cases, inTime] = [figures.number("cases"), figures.number("inTime")];
  if (cases === undefined) return undefined;
  if (cases === 0) return "No cow became lame in this time, as far as the scores tell.";
  const hours = figures.input("hours");
  const share = inTime === undefined ? "" : `: ${formatNumber(inTime, PERCENT)} treated within ${String(hours)} hours`;
  return `${counted(cases, "cow")} became lame${share}.`;
};

const causes: Answer = (figures) => {
  const spilled = figures.spilled("causes");
  if (spilled === undefined) return undefined;
  const [row = {}] = recordsIn(spilled);
  const share = numberIn(row, "Share of findings");
  const where = textIn(row, "Where to look");
  return share === undefined
    ? `${where}.`
    : `First: ${where.toLowerCase()} (${formatNumber(share, PERCENT)} of the findings).`;
};

const againstBefore: Answer = (figures) => {
  const [now, before] = [figures.number("now"), figures.number("before")];
  const verdict = figures.text("verdict");
  if (verdict?.startsWith("cannot be told") === true) return `${verdict}.`;
  if (now === undefined || before === undefined || verdict === undefined) return undefined;
  return `${counted(now, "new case")} in this time, ${formatNumber(before, "#,##0")} in as many days before: ${verdict}.`;
};

const ANSWERS: Readonly<Record<string, Answer>> = {
  coverage,
  "lesion-rates": lesionRates,
  "lesion-shares": lesionShares,
  "against-before": againstBefore,
  "lesions-by-lactation": byLactation,
  "lesion-months": months,
  "horn-and-infectious": hornAndInfectious,
  "new-and-repeat": newAndRepeat,
  "lame-share": lame,
  "lame-to-treated": lameToTreated,
  "where-to-look": causes,
};

/** The line below the heading of a section: its answer, else why there is none. */
export function sectionAnswer(computed: ComputedBlock): string {
  const { block, parts } = computed;
  const answer = ANSWERS[kindOf(block)]?.(new BlockFigures(computed));
  if (answer !== undefined) return capitalised(answer);
  const refused = parts.find((part) => part.kind === "refused");
  return refused === undefined ? block.about : `Cannot be told. ${refused.sentence}`;
}
