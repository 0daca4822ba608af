import { addDays, type DaySerial, isoDate } from "../shared/days";
import { DomainError } from "../shared/domain-error";
import { asWords, NO_WORD, type WordColumn } from "../shared/words";
import { aftercareJobs, type AftercareJob, type AftercareKind } from "./aftercare";
import { DueRows } from "./due-rows";
import { SOUND } from "./findings";
import type { RecheckRule } from "./recheck-rules";
import { statedLengths } from "./stated-lengths";
import { treatmentOf } from "./treatment-words";

/** Days row by row; null, NaN or 0 where a row has none. */
type DayColumn = ArrayLike<DaySerial | null>;

/** Findings column by column. */
export interface Findings {
  readonly cows: WordColumn;
  /** Codes; null or SOUND where the cow had no lesion. */
  readonly lesions: WordColumn;
  readonly treatedOn: DayColumn;
  readonly treatments: WordColumn;
  readonly closedOn: DayColumn;
  /** The last look since treatment, where it did not close the finding. */
  readonly seenAgainOn?: DayColumn | undefined;
  /** The day set at that look for the next one. */
  readonly nextLookOn?: DayColumn | undefined;
}

export interface DueList {
  /** What is due, the longest overdue first. */
  readonly due: DueRows;
  /** Open findings that led to a look for aftercare. */
  readonly open: number;
  /** Open findings by lesion for which there is no rule. */
  readonly withoutRule: ReadonlyMap<string, number>;
  readonly withoutDate: number;
  readonly withoutCow: number;
  /** Open findings that were looked at again and for which no further look is left. */
  readonly withoutNextLook: number;
}

/**
 * What is due up to `daysAhead` days after `today` for findings that are not closed.
 * Of each kind of work a finding shows the last that has fallen due and those still to come: a later recheck stands
 * in for a missed one. A bandage or a topical treatment is no longer listed once a later recheck has fallen due, and
 * a course of pain relief not after its last day.
 * A look since treatment does what was due up to its day. A day set for the next look takes the place of the rule's
 * rechecks.
 */
export function dueList(
  findings: Findings,
  ruleOf: (code: string) => RecheckRule | undefined,
  today: DaySerial,
  daysAhead: number,
): DueList {
  const cows = asWords(findings.cows).places;
  const [lesions, treatments] = [asWords(findings.lesions), asWords(findings.treatments)];
  const sound = lesions.distinct.indexOf(SOUND) + 1;
  const jobsOf = cachedJobs(lesions.distinct, treatments.distinct, ruleOf);
  const due = new DueRows();
  const withoutRule = new Map<string, number>();
  let open = 0;
  let withoutDate = 0;
  let withoutCow = 0;
  let withoutNextLook = 0;
  for (let row = 0; row < cows.length; row++) {
    const lesion = lesions.places[row] === sound ? NO_WORD : lesions.places[row]!;
    const treatment = treatments.places[row]!;
    const treatedOn = dayAt(findings.treatedOn, row);
    if (isClosed(findings, row, today) || (lesion === NO_WORD && treatment === NO_WORD)) continue;
    if (treatedOn === null) withoutDate++;
    else if (cows[row] === NO_WORD) withoutCow++;
    else {
      open++;
      const { jobs: all, hasRule } = jobsOf(lesion, treatment);
      const jobs = jobsLeft(all, treatedOn, dayAt(findings.seenAgainOn, row), dayAt(findings.nextLookOn, row));
      const looksLeft = jobs === all || jobs.some(({ kind }) => kind === "recheck" || kind === "block");
      if (!hasRule && (jobs === all || !looksLeft)) count(withoutRule, lesions.distinct[lesion - 1]!);
      else if (!looksLeft) withoutNextLook++;
      const age = today - treatedOn;
      for (const job of jobs)
        if (isListed(job, jobs, age, age + daysAhead)) due.add(row, job, addDays(treatedOn, job.afterDays));
    }
  }
  return { due, open, withoutRule, withoutDate, withoutCow, withoutNextLook };
}

function dayAt(column: DayColumn | undefined, row: number): DaySerial | null {
  return column?.[row] || null;
}

function count(counts: Map<string, number>, key: string): void {
  counts.set(key, (counts.get(key) ?? 0) + 1);
}

/** What a look since treatment leaves to do. A next look set for a day before that look is no longer one. */
function jobsLeft(
  jobs: readonly AftercareJob[],
  treatedOn: DaySerial,
  seenAgainOn: DaySerial | null,
  nextLookOn: DaySerial | null,
): readonly AftercareJob[] {
  if (seenAgainOn === null && nextLookOn === null) return jobs;
  const seenAge = (seenAgainOn ?? treatedOn - 1) - treatedOn;
  const left = jobs.filter(({ afterDays }) => afterDays > seenAge);
  const nextAge = (nextLookOn ?? -Infinity) - treatedOn;
  if (nextAge <= seenAge) return left;
  return [...left.filter(({ kind }) => kind !== "recheck"), { kind: "recheck", what: "next look", afterDays: nextAge }];
}

/** Refuses days that cannot be: treated, seen again or closed after today, seen again or closed before treated. */
function isClosed({ treatedOn, closedOn, seenAgainOn }: Findings, row: number, today: DaySerial): boolean {
  const treated = dayAt(treatedOn, row);
  const closed = dayAt(closedOn, row);
  if (treated !== null && treated > today) throw tooLate("treatedOn", row, treated, `today (${isoDate(today)})`);
  refuseOutside("seenAgainOn", row, dayAt(seenAgainOn, row), treated, today);
  refuseOutside("closedOn", row, closed, treated, today);
  return closed !== null;
}

function refuseOutside(
  argument: string,
  row: number,
  got: DaySerial | null,
  treated: DaySerial | null,
  today: DaySerial,
): void {
  if (got === null) return;
  if (got > today) throw tooLate(argument, row, got, `today (${isoDate(today)})`);
  if (treated !== null && got < treated)
    throw new DomainError(
      "invalid",
      `${argument} row ${row + 1} must be no earlier than treatedOn (${isoDate(treated)}); got ${isoDate(got)}`,
    );
}

function tooLate(argument: string, row: number, got: DaySerial, limit: string): DomainError {
  return new DomainError("invalid", `${argument} row ${row + 1} must be no later than ${limit}; got ${isoDate(got)}`);
}

interface Jobs {
  readonly jobs: readonly AftercareJob[];
  /** False for a lesion without a rule. */
  readonly hasRule: boolean;
}

/** A herd writes few different treatments: each pair of lesion and treatment, by their places, is worked out once. */
function cachedJobs(
  lesions: readonly string[],
  treatments: readonly string[],
  ruleOf: (code: string) => RecheckRule | undefined,
) {
  const known = new Map<number, Jobs>();
  return (lesion: number, treatment: number): Jobs => {
    const pair = lesion * (treatments.length + 1) + treatment;
    let jobs = known.get(pair);
    if (jobs === undefined) {
      const rule = lesion === NO_WORD ? undefined : ruleOf(lesions[lesion - 1]!);
      const text = treatments[treatment - 1] ?? "";
      jobs = {
        jobs: aftercareJobs({ ...rule, ...statedLengths(text) }, treatmentOf(text)),
        hasRule: lesion === NO_WORD || rule !== undefined,
      };
      known.set(pair, jobs);
    }
    return jobs;
  };
}

const ENDED_BY_RECHECK: ReadonlySet<AftercareKind> = new Set<AftercareKind>(["bandage", "topical"]);

function isListed(job: AftercareJob, jobs: readonly AftercareJob[], age: number, horizon: number): boolean {
  if (job.afterDays > horizon) return false;
  if (job.afterDays >= age) return true;
  if (job.kind === "pain relief") return false;
  return !jobs.some(
    (later) =>
      later.afterDays > job.afterDays &&
      later.afterDays <= age &&
      (later.kind === job.kind || (later.kind === "recheck" && ENDED_BY_RECHECK.has(job.kind))),
  );
}
