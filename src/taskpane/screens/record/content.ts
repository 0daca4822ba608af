import { disorderOf } from "../../../core/claws/disorder-key";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import type { FindingRecord } from "../../../herd/cow-facts";
import { HEIFER } from "../../../workbook/tables";
import { counted } from "../../format";
import { adviceOf, type TrimAdvice } from "./advice";
import { aftercareOf, careOf, treatmentText } from "./care";
import { checkEntry } from "./check";
import { type CowAtHand, cowAtHand } from "./check-visit";
import type { Care, Field } from "./fields";
import { findingNotices, type Notice, pastNotices } from "./notices";
import type { Problem } from "./problems";
import { currentFinding, isBlankFinding, type FindingEntry, type RecordState } from "./state";
import { typedDay } from "../../typed-day";
import { clearDays, type ClearDay } from "./withdrawal";

/** Earlier findings and open jobs that are shown; more would push the form out of sight. */
const MOST_LINES = 3;

/** A day with what is to be done on it. */
export interface DatedJob {
  readonly day: DaySerial;
  readonly what: string;
}

/** All that the view shows beside what was typed. */
export interface RecordContent {
  readonly at: CowAtHand | undefined;
  /** The cow in short: "Lactation 3 · 112 days in milk · high". */
  readonly cowLine: string;
  readonly earlier: readonly string[];
  readonly open: readonly string[];
  readonly past: readonly Notice[];
  readonly now: readonly Notice[];
  readonly advice: TrimAdvice | undefined;
  readonly care: Care;
  readonly jobs: readonly DatedJob[];
  readonly clear: readonly ClearDay[];
  problemsAt(field: Field): readonly Problem[];
  /** The findings typed, in short, by place. */
  readonly findings: readonly { readonly place: number; readonly text: string; readonly faulty: boolean }[];
}

export function contentOf(state: RecordState): RecordContent {
  const { entry, rules } = state;
  const at = cowAtHand(state);
  const finding = currentFinding(entry);
  const date = typedDay(state.visit.date) ?? state.today;
  const care = careOf(state, finding);
  const problems = checkEntry(state, at);
  return {
    at,
    cowLine: at === undefined ? "" : cowLine(at),
    earlier: at === undefined ? [] : at.facts.earlier.slice(0, MOST_LINES).map(findingLine),
    open: at === undefined ? [] : openLines(at, date),
    past: at === undefined ? [] : pastNotices(at),
    now: at === undefined ? [] : findingNotices(state, at),
    advice: adviceOf(state, at),
    care,
    jobs: aftercareOf(finding, care, rules.rules).map(({ afterDays, what }) => ({ day: date + afterDays, what })),
    clear: clearDays(care, date),
    problemsAt: (field) => problemsAt(state, problems, field),
    findings: entry.findings.flatMap((typed, place) =>
      isBlankFinding(typed)
        ? []
        : [
            {
              place,
              text: entryLine(typed, treatmentText(careOf(state, typed))),
              faulty: problems.some((problem) => problem.finding === place && problem.kind !== "tell"),
            },
          ],
    ),
  };
}

/** Faults are shown once a field was left; questions and remarks at once. */
function problemsAt(state: RecordState, problems: readonly Problem[], field: Field): readonly Problem[] {
  const { entry, left, attempted, obstacle } = state;
  const { foot } = currentFinding(entry);
  const shown = problems.filter(
    (problem) =>
      problem.field === field &&
      (problem.finding === undefined || problem.finding === entry.current) &&
      (problem.foot === undefined || problem.foot === foot) &&
      (problem.kind !== "stop" || attempted || left.includes(field)),
  );
  return obstacle?.field === field ? [...shown, obstacle] : shown;
}

function cowLine({ cow, facts }: CowAtHand): string {
  if (cow === undefined) return "Not under Cows";
  const { lactation, daysInMilk, dryOffInDays } = facts;
  return [
    lactation === null ? "lactation not known" : lactation === 0 ? HEIFER : `lactation ${lactation}`,
    daysInMilk === null ? "" : `${counted(daysInMilk, "day")} in milk`,
    cow.group ?? "",
    dryOffInDays === null ? "" : `dries off in ${dryOffInDays} d`,
  ]
    .filter((part) => part !== "")
    .join(" · ");
}

function findingLine({ date, foot, claw, zone, lesion, stage, treatment }: FindingRecord): string {
  const place = [foot, claw, zone === null ? null : `zone ${zone}`].filter((part) => part !== null).join(" ");
  const what = [lesion === "none" ? "nothing found" : lesion, stage].filter((part) => part !== null).join(" ");
  return `${isoDate(date!)}: ${[place, what, treatment].filter((part) => part !== null && part !== "").join(", ")}`;
}

function openLines({ facts }: CowAtHand, date: DaySerial): readonly string[] {
  const lines = facts.open.slice(0, MOST_LINES).map(({ what, due, finding }) => {
    const when = due === date ? "today" : due < date ? `overdue ${date - due} d` : `in ${due - date} d`;
    const place = [finding.foot, finding.claw, finding.lesion].filter((part) => part !== null).join(" ");
    return `${what}, ${place}: ${isoDate(due)}, ${when}`;
  });
  const more = facts.open.length - lines.length;
  return more > 0 ? [...lines, `and ${more} more`] : lines;
}

function entryLine({ foot, claw, zone, lesion, stage, severity }: FindingEntry, treatment: string): string {
  const code = disorderOf(lesion)?.code ?? lesion.trim();
  return [
    [foot, claw === "between" ? "between the claws" : claw].filter((part) => part !== "").join(" "),
    zone === "" ? "" : `zone ${zone}`,
    [code, stage].filter((part) => part !== "").join(" "),
    severity === "" ? "" : `severity ${severity}`,
    treatment,
  ]
    .filter((part) => part !== "")
    .join(", ");
}
