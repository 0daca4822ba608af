import { ENOUGH_EXAMINED } from "../../../blocks/herd/coverage";
import { disorderOf } from "../../../core/claws/disorder-key";
import { FEW_CASES } from "../../../core/claws/lesion-rate";
import type { DaySerial } from "../../../core/shared/days";
import { EU_TANK_LIMIT_THOUSAND } from "../../../core/reference/regulation-853-2004";
import { counted, formatNumber } from "../../format";
import { shareText } from "../cells/wording/money";
import type { DueLine } from "../due/line";
import type { Verdict } from "../herd/change";

/** Something to look at on the farm. */
export interface Thing {
  readonly id: string;
  readonly title: string;
  /** Why, with the figures. */
  readonly why: string;
  /** What to go and see, or to do. */
  readonly look: string;
}

/** A lesion in this period, and against the one before. */
export interface LesionFacts {
  readonly code: string;
  readonly newCases: number;
  readonly rate: number;
  readonly low: number;
  readonly high: number;
  readonly against: string;
  readonly target: number | undefined;
  /** Against the time before; undefined where that cannot be told. */
  readonly verdict: Verdict | undefined;
}

/** A place of HERD.CAUSE.REVIEW. */
export interface CausePlace {
  readonly where: string;
  readonly look: string;
  readonly evidence: string;
  readonly share: number;
}

/** What the three things are chosen from; each part is undefined where the workbook does not tell. */
export interface ThingFacts {
  readonly day: DaySerial;
  readonly due: readonly DueLine[] | undefined;
  readonly lesions: readonly LesionFacts[];
  readonly causes: readonly CausePlace[];
  /** Rolling mean of the tank estimates, thousand/mL. */
  readonly rolling: number | undefined;
  /** The cows that lose most, what they hold of the tank's cells, and the tank with and without them. */
  readonly top:
    | {
        readonly cows: readonly string[];
        readonly share: number;
        readonly tank: number | undefined;
        readonly without: number | undefined;
      }
    | undefined;
  /** Share of the herd's cows whose feet were looked at in the year up to the visit. */
  readonly examined: number | undefined;
}

/** How many the report names unless others are chosen. */
export const THINGS_NAMED = 3;

/** Above this share of the limit the tank is called near it. Common practice, no source. */
const NEAR_LIMIT = 0.75;
/** Of the tank's cells, from which on the cows that lose most are worth a look one by one. Common practice, no source. */
const MUCH_OF_TANK = 0.2;

/** All things worth a look, the most pressing first: lame cows, feet overdue, the limit of the tank, lesions, cells. */
export function thingsOf(facts: ThingFacts): readonly Thing[] {
  return [
    lameCows(facts),
    overdueFeet(facts),
    tankLimit(facts),
    ...lesionThings(facts),
    cellCows(facts),
    causes(facts),
    coverage(facts),
  ].filter((thing) => thing !== undefined);
}

function lameCows({ due = [] }: ThingFacts): Thing | undefined {
  const lame = due.filter(({ work }) => work === "lame");
  if (lame.length === 0) return undefined;
  return {
    id: "lame",
    title: `${counted(lame.length, "lame cow")} not treated yet`,
    why: `Lame when last scored, and no foot lifted since: ${cowNames(lame.map(({ cow }) => cow))}.`,
    look: "Lift and treat them first. A cow that bears no weight needs the veterinarian today.",
  };
}

function overdueFeet({ due = [], day }: ThingFacts): Thing | undefined {
  const overdue = due.filter((line) => line.finding !== undefined && line.due < day);
  const [longest] = overdue;
  if (longest === undefined) return undefined;
  return {
    id: "overdue",
    title: `${counted(overdue.length, "look")} at treated feet overdue`,
    why: `The longest waits ${counted(day - longest.due, "day")}: cow ${longest.cow}, ${longest.what}.`,
    look: "Go through the list of what is due; write down what was seen, or that the cow has gone.",
  };
}

function tankLimit({ rolling }: ThingFacts): Thing | undefined {
  if (rolling === undefined || rolling < NEAR_LIMIT * EU_TANK_LIMIT_THOUSAND) return undefined;
  const above = rolling > EU_TANK_LIMIT_THOUSAND;
  return {
    id: "limit",
    title: above ? "Cell counts above the European limit" : "Cell counts near the European limit",
    why: `Rolling mean over three months ${formatNumber(rolling, "0")} thousand/mL, limit ${EU_TANK_LIMIT_THOUSAND}. It is reckoned from the cows' tests: the buyer's figure counts.`,
    look: "Ask the buyer for the tank's own figures, and the veterinarian about the cows that fill it.",
  };
}

function lesionThings({ lesions, causes }: ThingFacts): readonly Thing[] {
  return lesions
    .filter(({ code, newCases }) => disorderOf(code) !== undefined && newCases >= FEW_CASES)
    .map((lesion) => ({ lesion, reasons: lesionReasons(lesion) }))
    .filter(({ reasons }) => reasons.length > 0)
    .sort((a, b) => b.lesion.newCases - a.lesion.newCases)
    .map(({ lesion: { code, newCases, rate, low, high }, reasons }) => {
      const limits = `${formatNumber(low, "0.0")} to ${formatNumber(high, "0.0")}`;
      const place = causes.find(({ evidence }) => codesIn(evidence).includes(code));
      return {
        id: `lesion ${code}`,
        title: `${disorderOf(code)!.name} ${reasons.join(" and ")}`,
        why: `${counted(newCases, "new case")}, ${formatNumber(rate, "0.0")} per 100 cow-years (${limits}).`,
        look: place === undefined ? "Talk over the causes with the veterinarian." : `${place.where}: ${place.look}.`,
      };
    });
}

function lesionReasons({ against, target, verdict }: LesionFacts): string[] {
  return [
    ...(against === "above" ? [`above the target of ${target}`] : []),
    ...(verdict === "more" ? ["more than before, beyond chance"] : []),
  ];
}

/** Lesion codes that the evidence of a place names: "sole lesions: SU 12, SH 3; zone 4: 5". */
function codesIn(evidence: string): readonly string[] {
  const [, named = ""] = /^[^:]*: ([^;]*)/.exec(evidence) ?? [];
  return named.split(", ").map((part) => part.split(" ")[0]!);
}

function cellCows({ top }: ThingFacts): Thing | undefined {
  if (top === undefined || top.cows.length === 0 || top.share < MUCH_OF_TANK) return undefined;
  const without =
    top.without === undefined || top.tank === undefined
      ? ""
      : `; without them the tank would hold ${formatNumber(top.without, "0")} instead of ${formatNumber(top.tank, "0")} thousand/mL`;
  return {
    id: "cells",
    title: `${counted(top.cows.length, "cow")} with ${shareText(top.share)} of the tank's cells`,
    why: `Cows ${top.cows.join(", ")}${without}.`,
    look: "Look at each with the veterinarian: treat, dry off, keep her milk back, or let her go.",
  };
}

function causes({ causes: [first] }: ThingFacts): Thing | undefined {
  if (first === undefined || first.look === "") return undefined;
  return {
    id: "cause",
    title: first.where,
    why: `${shareText(first.share)} of the findings point there (${first.evidence}).`,
    look: `Go and see: ${first.look}.`,
  };
}

function coverage({ examined }: ThingFacts): Thing | undefined {
  if (examined === undefined || examined >= ENOUGH_EXAMINED) return undefined;
  return {
    id: "examined",
    title: `Only ${shareText(examined)} of the cows examined in a year`,
    why: "Rates count all cows, and those that are not lifted show nothing: the true rates may be higher.",
    look: "Plan the trimming so that every cow is lifted once a year at least, lame or not.",
  };
}

/** So many cows are named in a sentence. */
const MOST_NAMED = 6;

function cowNames(cows: readonly string[]): string {
  const named = [...new Set(cows)].slice(0, MOST_NAMED).join(", ");
  return cows.length > MOST_NAMED ? `${named} and ${cows.length - MOST_NAMED} more` : named;
}
