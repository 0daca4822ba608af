import { disorderOf } from "../../../core/claws/disorder-key";
import { isOnScale, type MobilityScale } from "../../../core/claws/mobility";
import { isoDate } from "../../../core/shared/days";
import { type CowFacts, cowFacts, lesionOf } from "../../../herd/cow-facts";
import { counted } from "../../format";
import type { Cow } from "../../../herd/cow-list";
import { scaleOf } from "./mobility";
import { ask, type Problem, stop, tell } from "./problems";
import { isBlankFinding, type RecordState } from "./state";
import { typedDay } from "../../typed-day";
import { typedNumber } from "./typed-text";

/** Records are entered within days; a date a season back is most often a mistyped year. */
const LONG_AGO_DAYS = 120;

/** The cow at hand as the workbook knows her on the day of the visit. */
export interface CowAtHand {
  readonly cow: Cow | undefined;
  readonly facts: CowFacts;
}

export function cowAtHand({ herd, entry, visit, today, rules }: RecordState): CowAtHand | undefined {
  if (herd === undefined || entry.cow === "") return undefined;
  const cow = herd.cows.get(entry.cow);
  return { cow, facts: cowFacts(herd, cow, entry.cow, typedDay(visit.date) ?? today, rules.rules) };
}

const STEPS: Readonly<Record<MobilityScale, string>> = {
  "0-3": "0, 1, 2 or 3",
  "1-5": "1 to 5, in whole or half points",
};

/** What is wrong with the date, the cow and her score. */
export function checkVisit(state: RecordState, at: CowAtHand | undefined): readonly Problem[] {
  return [...checkDate(state, at?.cow), ...checkCow(state, at), ...checkScore(state, at)];
}

function checkDate({ visit, today }: RecordState, cow: Cow | undefined): Problem[] {
  const date = typedDay(visit.date);
  if (date === undefined) return [stop("date", `Date must be a day, such as ${isoDate(today)}.`)];
  if (date > today) return [stop("date", `Date must be no later than today, ${isoDate(today)}; got ${isoDate(date)}.`)];
  if (cow?.born !== undefined && cow.born !== null && date < cow.born)
    return [stop("date", `Cow ${cow.name} was born on ${isoDate(cow.born)}, after ${isoDate(date)}.`)];
  if (date < today && today - date <= LONG_AGO_DAYS)
    return [tell("date", `Entering for ${counted(today - date, "day")} ago, not for today.`)];
  if (today - date > LONG_AGO_DAYS)
    return [ask("date", `long-ago:${date}`, `${isoDate(date)} is ${today - date} days ago. Is the date right?`)];
  return [];
}

function checkCow(state: RecordState, at: CowAtHand | undefined): Problem[] {
  const { entry, herd, visit, today } = state;
  if (entry.cow === "") {
    if (entry.cowText.trim() === "") return [stop("cow", "Enter a cow.")];
    return [stop("cow", `Choose a cow from the list, or press Enter to take "${entry.cowText.trim()}".`)];
  }
  if (herd === undefined || at === undefined) return [];
  const { cow, facts } = at;
  const date = typedDay(visit.date) ?? today;
  if (cow === undefined)
    return [
      ask(
        "cow",
        `unknown:${entry.cow}`,
        `The table Cows has no ${entry.cow}. Check the number. Record her under it anyway? Her lactation stays blank until she stands under Cows.`,
      ),
    ];
  const problems: Problem[] = [];
  if (cow.left !== null && cow.left < date)
    problems.push(ask("cow", `left:${cow.name}:${date}`, `Cow ${cow.name} left on ${isoDate(cow.left)}. Is it she?`));
  if (facts.sameDay.length > 0) problems.push(tell("cow", `Already entered on this day: ${sameDayText(facts)}.`));
  if (cow.calved !== null && cow.calved > date) {
    const then = facts.lactation === 0 ? "she was a heifer then" : "lactation is left blank";
    problems.push(tell("cow", `She calved on ${isoDate(cow.calved)}, later than this day: ${then}.`));
  }
  return problems;
}

function sameDayText({ sameDay }: CowFacts): string {
  return sameDay
    .map(({ foot, claw, lesion }) => [foot, claw, lesion].filter((part) => part !== null).join(" "))
    .join(", ");
}

function checkScore(state: RecordState, at: CowAtHand | undefined): Problem[] {
  const { entry } = state;
  const score = typedNumber(entry.score);
  if (score === undefined) return [];
  const scale = scaleOf(state);
  if (Number.isNaN(score) || !isOnScale(score, scale))
    return [stop("score", `Score must be ${STEPS[scale]}; got ${entry.score}.`)];
  const before = at?.facts.scoreOnDay;
  if (before === undefined || before.score === null || before.score === score) return [];
  return [tell("score", `She has score ${before.score} on this day; ${score} takes its place.`)];
}

/** Whether the open finding, or one beside it, is on the same claw with the same lesion as a row of the day. */
export function repeatedToday({ entry }: RecordState, at: CowAtHand | undefined, place: number): string | undefined {
  const finding = entry.findings[place];
  if (finding === undefined || isBlankFinding(finding)) return undefined;
  const code = disorderOf(finding.lesion)?.code;
  if (code === undefined) return undefined;
  const claw = finding.claw === "between" ? "" : finding.claw;
  const inRow = at?.facts.sameDay.some(
    (row) => (row.foot ?? "") === finding.foot && (row.claw ?? "") === claw && lesionOf(row.lesion) === code,
  );
  if (inRow === true) return "is in the workbook for this day";
  const twin = entry.findings.findIndex(
    (other, index) =>
      index < place &&
      other.foot === finding.foot &&
      other.claw === finding.claw &&
      disorderOf(other.lesion)?.code === code,
  );
  return twin < 0 ? undefined : `is finding ${twin + 1} already`;
}
