import { BLOCK_OFF } from "../../../core/claws/aftercare";
import { disorderOf } from "../../../core/claws/disorder-key";
import { dueList } from "../../../core/claws/due-list";
import type { DueRow } from "../../../core/claws/due-rows";
import { type RecheckRule, ruleFor } from "../../../core/claws/recheck-rules";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import { atOnce, type InSteps } from "../../../core/shared/steps";
import { rowAsRead, type TableContent } from "../../../workbook/table-port";
import { findingsTable } from "../../../workbook/tables";
import { counted } from "../../format";
import { rulesInForce } from "../../rules";
import type { DueBook } from "./book";
import { Cows } from "./cows";
import { columnsOf, footOf, readFindings, type FindingRow, type ReadFindings } from "./findings";
import type { DueLine, LineFinding } from "./line";
import { scoringLines } from "./scoring";
import { trimLines } from "./trims";

/** All that is due on a day and in the days after it. */
export interface Listing {
  readonly day: DaySerial;
  /** The longest overdue first. */
  readonly lines: readonly DueLine[];
  /** What could not be placed on a day, in plain words. */
  readonly remarks: readonly string[];
  readonly rules: readonly RecheckRule[];
  readonly cows: Cows;
  readonly findings: ReadFindings | undefined;
}

/** Draws up the list. The lines of findings are those that HERD.RECHECK.LIST gives for the same rows and day. */
export function listingOf(book: DueBook, day: DaySerial, daysAhead: number): Listing {
  return atOnce(listingInSteps(book, day, daysAhead));
}

/** The same with pauses, for a screen on which someone may be typing. */
export function* listingInSteps(book: DueBook, day: DaySerial, daysAhead: number): InSteps<Listing> {
  const until = day + daysAhead;
  const cows = new Cows(book.cows);
  const { rules, remark } = rulesInForce(book.rules);
  const remarks = remark === undefined ? [] : [remark];
  let lines: readonly DueLine[] = [];
  let findings: ReadFindings | undefined;
  if (book.findings === undefined) remarks.push(`The workbook has no table ${findingsTable.name}: no foot is listed.`);
  else {
    yield;
    findings = yield* readFindings(book.findings, day);
    yield;
    const due = dueList(columnsOf(findings.open), (code) => ruleFor(rules, code), day, daysAhead);
    yield;
    lines = yield* findingLines(due.due.list(), findings.open, book.findings, cows, day);
    remarks.push(...findings.problems, ...unplaced(due));
  }
  yield;
  const trims = yield* trimLines(cows, findings?.lastLifted ?? new Map(), book.trimRules, day, until);
  yield;
  const scoring = yield* scoringLines(book.scores, book.scale, findings, cows, day, until);
  remarks.push(...trims.remarks);
  yield;
  // The sort keeps lines of one day in the order in which they were found.
  const all = [...lines, ...trims.lines, ...scoring].sort((a, b) => a.due - b.due);
  return { day, lines: all, remarks, rules, cows, findings };
}

function unplaced(due: ReturnType<typeof dueList>): readonly string[] {
  return [
    ...[...due.withoutRule].map(
      ([code, count]) => `${counted(count, "open finding")} of ${code} without a recheck: no row in the rules.`,
    ),
    ...(due.withoutNextLook > 0
      ? [`${counted(due.withoutNextLook, "open finding")} seen again without a next look.`]
      : []),
    ...(due.withoutDate > 0 ? [`${counted(due.withoutDate, "open finding")} without a date.`] : []),
    ...(due.withoutCow > 0 ? [`${counted(due.withoutCow, "open finding")} without a cow.`] : []),
  ];
}

function* findingLines(
  rows: readonly DueRow[],
  findings: readonly FindingRow[],
  content: TableContent,
  cows: Cows,
  day: DaySerial,
): InSteps<readonly DueLine[]> {
  const known = new Map<number, LineFinding>();
  const equals = new Map<string, number>();
  const lines: DueLine[] = [];
  for (const { finding: place, kind, what, due } of rows) {
    if (lines.length % LINES_A_STEP === LINES_A_STEP - 1) yield;
    const row = findings[place]!;
    let finding = known.get(place);
    if (finding === undefined) {
      const cells = JSON.stringify(Object.values(rowAsRead(content, row.index).cells));
      const nth = equals.get(cells) ?? 0;
      equals.set(cells, nth + 1);
      const lesion = row.lesion ?? "";
      finding = {
        key: `${cells} ${nth}`,
        index: row.index,
        foot: footOf(row),
        claw: row.claw ?? "",
        lesion,
        lesionName: lesion === "" ? "" : (disorderOf(lesion)?.name ?? lesion),
        treatment: row.treatment ?? "",
        treatedOn: row.date!,
        note: row.note ?? "",
      };
      known.set(place, finding);
    }
    const cow = row.cow!;
    const left = cows.get(cow)?.left ?? null;
    lines.push({
      key: `${what} ${due} ${finding.key}`,
      work: kind,
      what,
      ends: kind === "block" && what === BLOCK_OFF,
      due,
      cow,
      place: cows.place(cow),
      finding,
      remarks: cows.hasLeft(cow, day) ? [`left the herd ${isoDate(left!)}: record her as gone`] : [],
    });
  }
  return lines;
}

/** A line is more work than a row. */
const LINES_A_STEP = 1_000;
