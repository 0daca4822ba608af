import { call } from "../expression/call";
import { column, columnOrBlanks, columns } from "../expression/columns";
import { type Expression, literal } from "../expression/expression";
import { type Condition, countOf, filtered } from "../expression/filtered";
import { arithmetic, iff, ifNa, is, isNumber } from "../expression/operators";
import { unless } from "../expression/unless";
import { dayIn, from, inPeriod, to, toDay } from "./inputs";

/**
 * Cow, foot, lesion and day of each finding, as the functions of lesions take them. They always take the whole herd's:
 * what is a repeat is told by the records before, also those of an earlier lactation.
 */
export const findings = [
  column("Findings", "cow"),
  columnOrBlanks("Findings", "foot", "cow"),
  column("Findings", "lesion"),
  column("Findings", "date"),
] as const;

/** The cows that a block is about. */
export interface CowsLookedAt {
  /** Stands behind the names of the blocks: "first". */
  readonly name: string;
  /** Stands behind their titles: "first lactation". */
  readonly title: string;
  /** What a finding must meet beside its day. */
  readonly conditions: readonly Condition[];
  /** Which findings of the herd are theirs, "yes" or "no" a row; undefined where all are. */
  readonly counted: Expression | undefined;
  /** Their days at risk in the period; undefined where the list of cows cannot tell them. */
  readonly cowDays: Expression | undefined;
  /** What a reader must know of those days. Plain sentences. */
  readonly notes: readonly string[];
}

export const wholeHerd: CowsLookedAt = {
  name: "",
  title: "",
  conditions: [],
  counted: undefined,
  cowDays: call("COW.DAYS", column("Cows", "entered"), column("Cows", "left"), from, to),
  notes: [],
};

const LAST_LACTATION = 20;
const lactationOfFinding = column("Findings", "lactation");
const { lactation, calved, entered, left } = columns("Cows", "lactation", "calved", "entered", "left");

type Compared = Extract<Condition, { readonly than: unknown }>;

function between(lowest: number | string, highest: number | string): readonly Compared[] {
  return [
    { column: lactationOfFinding, is: ">=", than: lowest },
    { column: lactationOfFinding, is: "<=", than: highest },
  ];
}

/** Cow-days of the cows that meet the conditions from one day of each to another; 0 where there is no such cow. */
function daysOf(start: Expression, end: Expression, ...conditions: readonly Condition[]): Expression {
  return ifNa(call("COW.DAYS", filtered(start, ...conditions), filtered(end, ...conditions), from, toDay), 0);
}

/** Cows that are in the herd on a day of the period. */
const atRisk: readonly Condition[] = [
  { column: entered, is: "a number" },
  { column: entered, is: "<=", than: toDay },
  { column: iff(isNumber(left), is(left, ">=", from), true), is: "=", than: true },
];

/** The longest year: in the usual period of a year no cow that calves once a year has calved twice. */
const YEAR_DAYS = 366;
const isLactation = iff(isNumber(lactation), is(lactation, ">=", 1), false);
/** The day of the second calving where a cow calves once a year; 0 where the list does not tell. */
const secondCalving = iff(
  isNumber(calved),
  iff(isNumber(lactation), arithmetic(calved, "-", arithmetic(arithmetic(lactation, "-", 2), "*", YEAR_DAYS)), 0),
  0,
);

/**
 * A cow is in her first lactation from the day she joined to her second calving. The list knows her lactation and her
 * latest calving: so it must tell both where they part her days, and it cannot tell a second calving long ago.
 */
function parted(days: Expression): Expression {
  const isThere = (...conditions: readonly Condition[]): Expression => is(countOf(...atRisk, ...conditions), ">", 0);
  const told = unless(
    isThere({ column: calved, is: "a number" }, { column: isLactation, is: "=", than: false }),
    "A cow that has calved has no lactation under Cows: write it, then the days of each lactation can be told.",
    unless(
      isThere({ column: lactation, is: "=", than: 2 }, { column: isNumber(calved), is: "=", than: false }),
      "A cow in her second lactation has no day of calving under Cows: write it, then the days of each lactation can be told.",
      unless(
        isThere({ column: isLactation, is: "=", than: true }, { column: lactation, is: ">=", than: 3 }, { column: secondCalving, is: ">", than: from }), // oxfmt-ignore
        "A cow that has calved since was in her first lactation when this time began, or may have been, and the list of cows holds only her latest calving: choose a later first day.",
        days,
      ),
    ),
  );
  return dayIn("from", "From", told);
}

const inSecond: readonly Condition[] = [
  { column: lactation, is: "=", than: 2 },
  { column: calved, is: "a number" },
];
const joinedBefore: Condition = {
  column: iff(isNumber(entered), is(calved, ">", entered), false),
  is: "=",
  than: true,
};

const firstDays = parted(
  arithmetic(
    daysOf(entered, left, { column: lactation, is: "=", than: 1 }),
    "+",
    daysOf(entered, arithmetic(calved, "-", 1), ...inSecond, joinedBefore),
  ),
);

/** A cow that was bought in her second lactation had calved before she joined. */
const secondFrom = iff(isNumber(entered), iff(is(calved, ">", entered), calved, entered), "");

const laterDays = parted(
  arithmetic(
    daysOf(entered, left, { column: lactation, is: "a number" }, { column: lactation, is: ">=", than: 3 }),
    "+",
    daysOf(secondFrom, left, ...inSecond),
  ),
);

const DAYS_NOTE =
  "Days at risk: cows under Cows with neither a lactation nor a calving are taken for heifers. A cow that calves twice within a year counts as a later one too early.";

function group(name: string, title: string, conditions: readonly Compared[], cowDays?: Expression): CowsLookedAt {
  const counted = conditions.reduceRight<Expression>(
    (yes, { column: cells, is: how, than }) => iff(is(cells, how, than), yes, "no"),
    literal("yes"),
  );
  return { name, title, conditions, counted, cowDays, notes: cowDays === undefined ? [] : [DAYS_NOTE] };
}

/** Heifers have not calved: the list of cows does not hold their days. */
export const cowGroups: readonly CowsLookedAt[] = [
  group("heifers", "heifers", [{ column: lactationOfFinding, is: "=", than: "heifer" }]),
  group("first", "first lactation", between(1, 1), firstDays),
  group("later", "second and later lactations", between(2, LAST_LACTATION), laterDays),
];

/** A column of their findings of the period. */
export function findingsOf({ conditions }: CowsLookedAt, key: string): Expression {
  return filtered(column("Findings", key), ...inPeriod("Findings"), ...conditions);
}

/** Name and title of a block that is about them. */
export function named(cows: CowsLookedAt, id: string, title: string): { readonly id: string; readonly title: string } {
  if (cows === wholeHerd) return { id, title };
  return { id: `${id}-${cows.name}`, title: `${title}: ${cows.title}` };
}
