import { type DaySerial, isoDate } from "../../../core/shared/days";
import { USUAL_LEVEL } from "../../../core/shared/statistics/interval";
import { chanceOfDifference } from "../../../core/shared/statistics/two-counts";
import { type LesionCases, type LesionTable, parentsOf } from "./lesions";

/** A lesion in two times. */
export interface LesionChange {
  readonly name: string;
  readonly now: number;
  readonly before: number;
  /** New cases per 100 cow-years. */
  readonly rateNow: number;
  readonly rateBefore: number;
  readonly verdict: Verdict;
}

/** Whether more than chance lies between two counts of cases. */
export type Verdict = "more" | "fewer" | "may be chance";

/** Cow-days at risk of two times, above 0. */
interface CowDays {
  readonly now: number;
  readonly before: number;
}

/** The lesions of both times, most cases first; all of them together stand last. */
export function lesionChanges(now: LesionTable, before: LesionTable, cowDays: CowDays): readonly LesionChange[] {
  const rows = new Map<string, { now?: LesionCases; before?: LesionCases }>();
  for (const lesion of parentsOf(now)) rows.set(lesion.code, { now: lesion });
  for (const lesion of parentsOf(before)) rows.set(lesion.code, { ...rows.get(lesion.code), before: lesion });
  const changes = [...rows.values()].map(({ now, before }) => changeOf(now, before, cowDays));
  const all = now.all === undefined && before.all === undefined ? [] : [changeOf(now.all, before.all, cowDays)];
  return [...changes.sort((a, b) => b.now + b.before - a.now - a.before), ...all];
}

function changeOf(now: LesionCases | undefined, before: LesionCases | undefined, cowDays: CowDays): LesionChange {
  const [cases, casesBefore] = [now?.newCases ?? 0, before?.newCases ?? 0];
  return {
    name: now?.name ?? before?.name ?? "",
    now: cases,
    before: casesBefore,
    rateNow: now?.rate ?? 0,
    rateBefore: before?.rate ?? 0,
    verdict: verdictOf(cases, casesBefore, cowDays),
  };
}

/** Where nothing changed, the part of both counts that falls into the later time is its part of the cow-days. */
export function verdictOf(cases: number, casesBefore: number, { now, before }: CowDays): Verdict {
  const both = cases + casesBefore;
  const expected = now / (now + before);
  if (both === 0 || chanceOfDifference(cases, casesBefore, expected) >= 1 - USUAL_LEVEL) return "may be chance";
  return cases > both * expected ? "more" : "fewer";
}

/** Why there is nothing to compare with, and from which day on a comparison would do. */
export function beginsLate(listFrom: DaySerial, to: DaySerial): string {
  const earliest = Math.ceil((listFrom + to + 1) / 2);
  return `${notWhole(listFrom)} Own dates from ${isoDate(earliest)} on, or later, have a whole time before them.`;
}

/** Why there is nothing to compare with. */
export function notWhole(listFrom: DaySerial): string {
  return `The list of findings begins on ${isoDate(listFrom)}: the time before is not whole.`;
}

/** Which lesions changed beyond chance, in a sentence. */
export function changesSentence(changes: readonly LesionChange[]): string {
  const names = (wanted: LesionChange["verdict"]): string =>
    changes
      .slice(0, -1)
      .filter(({ verdict }) => verdict === wanted)
      .map(({ name }) => name.toLowerCase())
      .join(", ");
  const [more, fewer] = [names("more"), names("fewer")];
  if (more === "" && fewer === "") return "No lesion changed by more than chance explains.";
  return [
    ...(more === "" ? [] : [`More than before, beyond chance: ${more}.`]),
    ...(fewer === "" ? [] : [`Fewer than before, beyond chance: ${fewer}.`]),
    "The others may differ by chance.",
  ].join(" ");
}
