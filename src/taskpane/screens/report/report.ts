import type { ComputedBlock } from "../../../blocks/compute";
import type { HerdTables } from "../../../blocks/data";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import { AS_PRESCRIBED, TRAINED_TRIMMER, VETERINARIAN } from "../../../functions/cautions";
import { counted } from "../../format";
import type { Listing } from "../due/listing";
import { notWhole } from "../herd/change";
import { type FoundRow, foundRows, lesionRows } from "./changes";
import { type DuePart, duePart } from "./due-part";
import { VisitFigures } from "./figures";
import { type Thing, type ThingFacts, THINGS_NAMED, thingsOf } from "./things";
import { nothingDue, nothingStandsOut, tellsDue } from "./untold";

/** All that a visit report says. */
export interface Report {
  readonly title: string;
  /** "Since 2026-06-01 (92 days), against the 92 days before that." */
  readonly period: string;
  readonly found: readonly FoundRow[];
  readonly lesions: ReturnType<typeof lesionRows>;
  /** Everything worth a look, the most pressing first. */
  readonly things: readonly Thing[];
  /** What is said where there is none. */
  readonly noThings: string;
  readonly due: DuePart | undefined;
  /** What is said where there is nothing due. */
  readonly nothingDue: string;
  /** What the workbook does not tell, in plain sentences. */
  readonly missing: readonly string[];
  readonly cautions: readonly string[];
}

/** Why there is no report, and the field where that is put right. */
export interface NoReport {
  readonly problem: string;
  readonly field: "visit" | "since";
}

export type DrawnUp = Report | NoReport;

/** What the report is drawn up from. */
export interface ReportParts {
  readonly block: ComputedBlock;
  /** Undefined where it could not be drawn up. */
  readonly listing: Listing | undefined;
  /** Rolling mean of the tank estimates, thousand/mL. */
  readonly rolling: number | undefined;
  /** The lists that it is drawn up from. */
  readonly tables: HerdTables["tables"];
}

/** Lines and rows that find room on two pages. */
const LESIONS_SHOWN = 8;
const LINES_SHOWN = 14;

export function reportOf({ block, listing, rolling, tables }: ReportParts): DrawnUp {
  const [visit, since] = [dayOf(block, "visit"), dayOf(block, "since")];
  if (visit === undefined) return { problem: "Choose the day of the visit.", field: "visit" };
  if (since === undefined) return { problem: "Choose the day of the visit before.", field: "since" };
  if (since >= visit) {
    const field = "since";
    return { field, problem: `The visit before must be earlier than ${isoDate(visit)}; got ${isoDate(since)}.` };
  }
  const figures = new VisitFigures(block);
  const facts = factsOf(figures, visit, tellsDue(tables) ? listing : undefined, rolling);
  const length = counted(visit - since, "day");
  return {
    title: `Visit report ${isoDate(visit)}`,
    period: `Since the visit of ${isoDate(since)} (${length}), against the ${length} before that.`,
    found: foundRows(figures),
    lesions: lesionRows(figures, LESIONS_SHOWN),
    things: thingsOf(facts),
    noThings: nothingStandsOut(facts, tables),
    due: listing === undefined ? undefined : duePart(listing.lines, visit, LINES_SHOWN),
    nothingDue: nothingDue(tables),
    missing: missingOf(figures, listing),
    cautions: [VETERINARIAN, AS_PRESCRIBED, TRAINED_TRIMMER, NO_SUM],
  };
}

const NO_SUM =
  "Milk that goes with high counts is not milk that is sure to come back, and is not added to what lame cows cost: the cost of a case holds her lost milk.";

/** The things that the report names: those chosen, else the first. */
export function namedThings({ things }: Report, chosen: readonly string[] | undefined): readonly Thing[] {
  if (chosen === undefined) return things.slice(0, THINGS_NAMED);
  return things.filter(({ id }) => chosen.includes(id)).slice(0, THINGS_NAMED);
}

/** What stands in place of the things where none is named. */
export function noneNamed({ things, noThings }: Report): string {
  return things.length === 0 ? noThings : "None named.";
}

export function dayOf({ inputs }: ComputedBlock, name: string): DaySerial | undefined {
  const value = inputs.find((input) => input.name === name)?.value;
  return typeof value === "number" ? value : undefined;
}

function factsOf(
  figures: VisitFigures,
  day: DaySerial,
  listing: Listing | undefined,
  rolling: number | undefined,
): ThingFacts {
  const [herd, examined] = [figures.number("herd"), figures.number("examined")];
  return {
    day,
    due: listing?.lines,
    lesions: figures.lesions("now").map((row) => ({
      code: row.code,
      newCases: row.newCases,
      rate: row.value,
      low: row.low,
      high: row.high,
      target: row.target,
      against: row.against,
      verdict: figures.verdict(row.code),
    })),
    causes: figures
      .rows("causes")
      .filter(([, look]) => look !== "")
      .map(([where, look, evidence, , share]) => ({
        where: String(where),
        look: String(look),
        evidence: String(evidence),
        share: Number(share),
      })),
    rolling,
    top: topOf(figures),
    examined: herd === undefined || examined === undefined || herd === 0 ? undefined : examined / herd,
  };
}

function topOf(figures: VisitFigures): ThingFacts["top"] {
  const [rows, share] = [figures.rows("top"), figures.number("tankShare")];
  if (rows.length === 0 || share === undefined) return undefined;
  const cows = rows.map(([cow]) => String(cow));
  return { cows, share, tank: figures.of("tank", "now"), without: figures.number("without") };
}

function missingOf(figures: VisitFigures, listing: Listing | undefined): readonly string[] {
  const reasons = [
    "lesions now",
    "lesions before",
    "scores now",
    "lame low now",
    "counts now",
    "tank now",
    "loss now",
    "top",
  ]
    .map((id) => figures.reason(id))
    .filter((reason) => reason !== undefined);
  const late = figures.lateList === undefined ? [] : [notWhole(figures.lateList)];
  return [...new Set([...reasons, ...late, ...(listing?.remarks ?? [])])];
}
