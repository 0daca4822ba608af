import { USUAL_LIMIT_THOUSAND } from "../../core/cells/high-counts";
import type { Block, Figure, Part } from "../block";
import { tankWithout } from "../cells/top-cows";
import { columnOfTable, sum } from "../expression/aggregates";
import { call } from "../expression/call";
import { column, settingsIfAny } from "../expression/columns";
import { earliestDay, latestDay, monthsOn } from "../expression/days";
import { type Expression, literal } from "../expression/expression";
import { type Condition, countOf, filtered } from "../expression/filtered";
import { countFound } from "../expression/lookup";
import { arithmetic, iff, is } from "../expression/operators";
import { asOf, input, part } from "../expression/places";
import { DAY, DAY_OR_NONE, dayIn } from "../herd/inputs";
import { lameFrom } from "../herd/lame";
import { findings } from "../herd/lesion-rates";
import { scoringUpTo } from "../herd/scorings";

/** The period since the visit before, and one of the same length before that. */
export const PERIODS = ["now", "before"] as const;
export type Period = (typeof PERIODS)[number];

/** Figures of a period by their name; their parts are called "<name> <period>". */
export function partOf(name: string, period: Period): string {
  return `${name} ${period}`;
}

const NONE = "none";
const WHEN: Readonly<Record<Period, string>> = { now: "since the visit before", before: "before that" };
/** Cows whose feet were looked at are counted over a year: few herds lift every cow between two visits. */
const EXAMINED_DAYS = 365;
/** Cows of a list that someone goes through at a visit. */
const COWS_LISTED = 5;
/** Advisers come about four times a year; the user picks the day. */
const MONTHS_BETWEEN = 3;
/** Rows kept free: most herds have fewer lesions in a period; a sheet that needs more shows that it spills. */
const LESION_ROWS = 20;
const CAUSE_ROWS = 9;

const visit = dayIn("visit", "Day of the visit");
const since = dayIn("since", "Visit before");

/** A count takes an error for nothing counted: where a day of the visits is missing there is none. */
function ofVisits(value: Expression): Expression {
  return dayIn("visit", "Day of the visit", dayIn("since", "Visit before", value));
}

const dates = { scores: column("Scores", "date"), tests: column("Tests", "date") };

/** A day up to the end of the period, where it lies in it. */
function inPeriodOnly(latest: Expression, period: Period): Expression {
  return iff(is(latest, ">=", part(partOf("from", period))), latest, NONE);
}

function figuresOf(period: Period): readonly Figure[] {
  const own = (name: string): Expression => part(partOf(name, period));
  const figure = (name: string, label: string, value: Expression, format: string, unit?: string): Figure => ({
    kind: "figure",
    id: partOf(name, period),
    label: `${label}, ${WHEN[period]}`,
    value,
    format,
    ...(unit === undefined ? {} : { unit }),
  });
  const length = part("days");
  const last = arithmetic(since, "-", period === "now" ? 0 : length);
  const onDay = (days: Expression, day: string): Condition => ({ column: days, is: "=", than: own(day) });
  const scored = onDay(dates.scores, "scored");
  const tested = onDay(dates.tests, "tested");
  const ofTest = (key: string): Expression => filtered(column("Tests", key), tested);
  const [score, count] = [column("Scores", "score"), column("Tests", "count")];
  const rate = (lesion: string): Expression =>
    call("LESION.RATE", ...findings, literal(lesion), own("from"), own("to"), own("cowDays"));
  return [
    figure("from", "From", arithmetic(last, "+", 1), DAY),
    figure("to", "To", arithmetic(last, "+", length), DAY),
    figure(
      "cowDays",
      "Cow-days at risk",
      call("COW.DAYS", column("Cows", "entered"), column("Cows", "left"), own("from"), own("to")),
      "#,##0",
    ),
    figure("all", "New claw cases", rate("all"), "0.0", "per 100 cow-years"),
    figure("infectious", "of these infectious", rate("infectious"), "0.0", "per 100 cow-years"),
    figure("horn", "of these horn", rate("horn"), "0.0", "per 100 cow-years"),
    figure("scored", "Last scoring", ofVisits(inPeriodOnly(scoringUpTo(own("to"), NONE), period)), DAY),
    figure("scores", "Cows scored", ofVisits(countOf(scored, { column: score, is: "a number" })), "0"),
    figure(
      "lame",
      "of these lame",
      ofVisits(countOf(scored, { column: score, is: "a number" }, { column: score, is: ">=", than: lameFrom })),
      "0",
    ),
    figure("lame low", "Lame share, lower limit", call("SHARE.LOW", own("lame"), own("scores")), "0%"),
    figure("lame high", "Lame share, upper limit", call("SHARE.HIGH", own("lame"), own("scores")), "0%"),
    figure("tested", "Last milk test", ofVisits(inPeriodOnly(latestDay(dates.tests, own("to"), NONE), period)), DAY),
    figure("counts", "Cows with a count", ofVisits(countOf(tested, { column: count, is: "a number" })), "0"),
    figure(
      "high",
      "of these high",
      ofVisits(
        countOf(tested, { column: count, is: "a number" }, { column: count, is: ">=", than: USUAL_LIMIT_THOUSAND }),
      ),
      "0",
    ),
    figure("high low", "High share, lower limit", call("SHARE.LOW", own("high"), own("counts")), "0%"),
    figure("high high", "High share, upper limit", call("SHARE.HIGH", own("high"), own("counts")), "0%"),
    figure("tank", "Tank estimate", call("TANK.ESTIMATE", ofTest("count"), ofTest("milkKg")), "0", "thousand/mL"),
    figure(
      "loss",
      "Milk that goes with high counts",
      call("CELL.HERDLOSS", ofTest("count"), ofTest("lactation"), literal(1)),
      "0",
      "litres a day",
    ),
  ];
}

/** New cases of the period by lesion, against the targets. */
function lesionsOf(period: Period): Part {
  const own = (name: string): Expression => part(partOf(name, period));
  return {
    kind: "table",
    id: partOf("lesions", period),
    title: `New cases by lesion, ${WHEN[period]}`,
    value: call("LESION.TABLE", ...findings, own("from"), own("to"), own("cowDays"), settingsIfAny("Targets")),
    of: "LESION.TABLE",
    rows: LESION_ROWS,
  };
}

const year: readonly Condition[] = [
  { column: column("Findings", "date"), is: ">", than: arithmetic(input("visit"), "-", EXAMINED_DAYS) },
  { column: column("Findings", "date"), is: "<=", than: input("visit") },
];
const looked = column("Findings", "cow");
const present: readonly Condition[] = [
  { column: column("Cows", "cow"), is: "filled" },
  { column: column("Cows", "left"), is: "=", than: "" },
];
const inPeriod: readonly Condition[] = [
  { column: column("Findings", "date"), is: ">=", than: part(partOf("from", "now")) },
  { column: column("Findings", "date"), is: "<=", than: part(partOf("to", "now")) },
];
const findingsColumn = (key: string): Expression => filtered(column("Findings", key), ...inPeriod);
const latestTest = dayIn("visit", "Day of the visit", latestDay(dates.tests, input("visit"), NONE));
const ofLatestTest = (key: string): Expression =>
  filtered(column("Tests", key), { column: dates.tests, is: "=", than: part("lastTest") });

/** A price that the order of the cows does not depend on: the report names them without money. */
const ANY_PRICE = 1;
const top = call(
  "CELL.TOP",
  ...["cow", "count", "lactation", "milkKg"].map(ofLatestTest),
  literal(COWS_LISTED),
  literal(ANY_PRICE),
);
/** Counted from 1. */
const TANK_SHARE_COLUMN = 6;

/** What a visit finds, against the time before the visit before. The sentences of the report are drawn up from it. */
export const visitReport: Block = {
  id: "visit-report",
  title: "Visit report",
  about: "What was found since the visit before, and what changed against the same number of days before that.",
  screen: "report",
  inputs: [
    { name: "visit", label: "Day of the visit", usual: asOf, format: DAY },
    { name: "since", label: "Visit before", usual: monthsOn(asOf, -MONTHS_BETWEEN), format: DAY },
  ],
  parts: [
    { kind: "figure", id: "days", label: "Days between", value: arithmetic(visit, "-", since), format: "0" }, // oxfmt-ignore
    {
      kind: "figure",
      id: "listFrom",
      label: "The list of findings begins on",
      value: earliestDay(column("Findings", "date")),
      format: DAY_OR_NONE,
      note: "Where that lies within the time before, its cases are not all in the list: the two times cannot be compared.",
    },
    ...PERIODS.flatMap(figuresOf),
    { kind: "figure", id: "herd", label: "Cows in the herd", value: countOf(...present), format: "0" },
    {
      kind: "figure",
      id: "examined",
      label: "of these with feet looked at in a year",
      value: dayIn(
        "visit",
        "Day of the visit",
        // A count of places passes over an error among the cows; the two counts before it do not.
        iff(
          is(arithmetic(part("herd"), "*", countOf({ column: looked, is: "filled" }, ...year)), "=", 0),
          0,
          countFound(filtered(column("Cows", "cow"), ...present), filtered(looked, ...year)),
        ),
      ),
      format: "0",
    },
    { kind: "figure", id: "lastTest", label: "Latest milk test", value: latestTest, format: DAY },
    lesionsOf("now"),
    lesionsOf("before"),
    {
      kind: "table",
      id: "causes",
      title: "Where to look",
      value: call("CAUSE.REVIEW", ...["lesion", "zone", "lactation", "daysInMilk"].map(findingsColumn)),
      of: "CAUSE.REVIEW",
      rows: CAUSE_ROWS,
    },
    {
      kind: "figure",
      id: "tankShare",
      label: "Share of the tank's cells in the cows below",
      value: sum(columnOfTable(top, TANK_SHARE_COLUMN)),
      format: "0%",
    },
    {
      kind: "figure",
      id: "without",
      label: "Tank without their milk, thousand cells/mL",
      // Where the list is refused, no cow would be left out: then there is no figure either.
      value: iff(
        is(part("tankShare"), ">=", 0),
        tankWithout(top, ofLatestTest("cow"), ofLatestTest("count"), ofLatestTest("milkKg")),
        "",
      ),
      format: "0",
    },
    {
      kind: "table",
      id: "top",
      title: "Cows that lose most milk to their counts",
      value: top,
      of: "CELL.TOP",
      rows: COWS_LISTED,
    },
  ],
  charts: [],
  notes: [
    "Small numbers move a lot by chance: read the limits.",
    "Milk that goes with high counts is not milk that is sure to come back. Do not add it to what lame cows cost: a case's cost holds her lost milk.",
  ],
};
