import { arithmetic, ifNa, is } from "../expression/operators";
import { call } from "../expression/call";
import { column, columnOrBlanks, columns } from "../expression/columns";
import type { Expression } from "../expression/expression";
import { type Condition, filtered } from "../expression/filtered";
import { from, inPeriod, to } from "./inputs";

/** Cow, foot, lesion and day of each finding, as the functions of lesions take them. */
const findings = [
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
  /** Cow, foot, lesion and day of their findings, whenever they were made. */
  readonly findings: readonly Expression[];
  /** Their days at risk in the period; undefined where the list of cows cannot tell them. */
  readonly cowDays: Expression | undefined;
}

export const wholeHerd: CowsLookedAt = {
  name: "",
  title: "",
  conditions: [],
  findings,
  cowDays: call("COW.DAYS", column("Cows", "entered"), column("Cows", "left"), from, to),
};

const LAST_LACTATION = 20;
const lactationOfFinding = column("Findings", "lactation");
const { lactation, calved, entered, left } = columns("Cows", "lactation", "calved", "entered", "left");

function between(lowest: number | string, highest: number | string): readonly Condition[] {
  return [
    { column: lactationOfFinding, is: ">=", than: lowest },
    { column: lactationOfFinding, is: "<=", than: highest },
  ];
}

/** Cow-days of the cows that meet the conditions, up to `end`; 0 where there is none. */
function daysOf(end: Expression, ...conditions: readonly Condition[]): Expression {
  return ifNa(call("COW.DAYS", filtered(entered, ...conditions), filtered(end, ...conditions), from, to), 0);
}

/**
 * A cow is in her first lactation from the day she joined to her second calving, and the list knows her latest one: so
 * the first lactation is that of the cows in it, and of those in their second until they calved. It holds for a period
 * in which no cow calved twice.
 */
const firstDays = arithmetic(
  daysOf(left, { column: lactation, is: "=", than: 1 }),
  "+",
  daysOf(
    arithmetic(calved, "-", 1),
    { column: lactation, is: "=", than: 2 },
    { column: calved, is: "a number" },
    { column: is(calved, ">", entered), is: "=", than: true },
  ),
);

function group(name: string, title: string, conditions: readonly Condition[], cowDays?: Expression): CowsLookedAt {
  return { name, title, conditions, findings: findings.map((cells) => filtered(cells, ...conditions)), cowDays };
}

/** Heifers have not calved: the list of cows does not hold their days. */
export const cowGroups: readonly CowsLookedAt[] = [
  group("heifers", "heifers", [{ column: lactationOfFinding, is: "=", than: "heifer" }]),
  group("first", "first lactation", between(1, 1), firstDays),
  group(
    "later",
    "second and later lactations",
    between(2, LAST_LACTATION),
    arithmetic(wholeHerd.cowDays!, "-", firstDays),
  ),
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
