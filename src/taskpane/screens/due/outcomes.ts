import { nextLook, type OpenOutcome, type Outcome } from "../../../core/claws/next-look";
import { ruleFor } from "../../../core/claws/recheck-rules";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import { columnOf, cowKey } from "../../../herd/cow-rows";
import { type Change, rowAsRead, type Save, type TableContent } from "../../../workbook/table-port";
import { counted } from "../../format";
import type { DueBook } from "./book";
import type { FindingLine } from "./line";
import type { Listing } from "./listing";
import { type Caution, cautionOf } from "./outcome-caution";
import { isRefused, type Refused, rowUnder } from "./outcome-row";

/** An outcome as it is chosen on a line. */
export interface ChosenOutcome {
  readonly outcome: Outcome;
  /** The day on which the foot was looked at, or by which she had gone. */
  readonly seenOn: DaySerial;
  /** The day that the user set for the next look; undefined: by the rules. */
  readonly nextLookOn: DaySerial | undefined;
}

/** What an outcome writes, and how it is told. */
export interface OutcomeSave {
  readonly save: Save;
  /** What is written, in a sentence. */
  readonly told: string;
  readonly caution: Caution | undefined;
  /** Whether it settles the one finding, or everything that is due for the cow. */
  readonly settles: "finding" | "cow";
}

/** The one save that writes an outcome; the book is the one from which the list was drawn up. */
export function outcomeSave(
  id: string,
  line: FindingLine,
  chosen: ChosenOutcome,
  book: DueBook,
  listing: Listing,
): OutcomeSave | Refused {
  const content = book.findings!;
  const { treatedOn } = line.finding;
  if (chosen.seenOn < treatedOn)
    return {
      refused: `The day of the look must be ${isoDate(treatedOn)}, the day of treatment, or later; got ${isoDate(chosen.seenOn)}.`,
    };
  const { outcome } = chosen;
  if (outcome === "gone") return goneSave(id, line, chosen.seenOn, book, listing);
  return outcome === "healed"
    ? healedSave(id, line, chosen.seenOn, content, listing)
    : openSave(id, line, outcome, chosen, content, listing);
}

function healedSave(
  id: string,
  line: FindingLine,
  seenOn: DaySerial,
  content: TableContent,
  listing: Listing,
): OutcomeSave | Refused {
  const seen = { day: seenOn };
  const row = rowUnder(content, { closedOn: seen }, { seenAgain: seen, outcome: "healed", nextLook: null });
  if (isRefused(row)) return row;
  return {
    save: saveOf(id, line, "healed", [{ update: rowAsRead(content, line.finding.index), set: row }]),
    told: `${nameOf(line)}: healed on ${isoDate(seenOn)}, closed.`,
    caution: cautionOf(line, "healed", seenOn, listing),
    settles: "finding",
  };
}

function openSave(
  id: string,
  line: FindingLine,
  outcome: OpenOutcome,
  { seenOn, nextLookOn }: ChosenOutcome,
  content: TableContent,
  listing: Listing,
): OutcomeSave | Refused {
  const next = nextLookOn ?? proposedLook(line, outcome, seenOn, listing);
  if (next === undefined) {
    const lesion = line.finding.lesion === "" ? "a finding without a lesion" : line.finding.lesion;
    return { refused: `The rules have no recheck for ${lesion}: set the day of the next look, then choose again.` };
  }
  if (next <= seenOn)
    return { refused: `The next look must be after ${isoDate(seenOn)}, the day of this one; got ${isoDate(next)}.` };
  const row = rowUnder(content, { seenAgain: { day: seenOn }, outcome, nextLook: { day: next } }, {});
  if (isRefused(row)) return row;
  return {
    save: saveOf(id, line, outcome, [{ update: rowAsRead(content, line.finding.index), set: row }]),
    told: `${nameOf(line)}: ${outcome} on ${isoDate(seenOn)}, next look ${isoDate(next)}.`,
    caution: cautionOf(line, outcome, seenOn, listing),
    settles: "finding",
  };
}

/** When the foot is seen next by the rules; a recheck done before its day is not asked for again. */
export function proposedLook(
  { finding, work, due }: FindingLine,
  outcome: OpenOutcome,
  seenOn: DaySerial,
  { rules }: Listing,
): DaySerial | undefined {
  const rule = finding.lesion === "" ? undefined : ruleFor(rules, finding.lesion);
  const dueOn = work === "recheck" ? due : seenOn;
  return nextLook(rule, { treatedOn: finding.treatedOn, seenOn, dueOn, outcome });
}

/** She is no longer there: all her open findings are closed, and the day she left is written where none stands. */
function goneSave(
  id: string,
  line: FindingLine,
  seenOn: DaySerial,
  book: DueBook,
  { cows, findings }: Listing,
): OutcomeSave | Refused {
  const content = book.findings!;
  const row = rowUnder(content, { closedOn: { day: seenOn } }, { outcome: "gone", nextLook: null });
  if (isRefused(row)) return row;
  const key = cowKey(line.cow);
  const open = findings!.open.filter(({ cow }) => cow !== null && cowKey(cow) === key);
  const later = open.find(({ date }) => date !== null && date > seenOn);
  if (later !== undefined)
    return {
      refused: `Cow ${line.cow} has a finding of ${isoDate(later.date!)}: she cannot have gone by ${isoDate(seenOn)}.`,
    };
  const changes: Change[] = open.map(({ index }) => ({ update: rowAsRead(content, index), set: row }));
  const cow = cows.get(line.cow);
  const left = book.cows?.columns[columnOf(book.cows, "Left")];
  const leaves = cow !== undefined && cow.left === null && left !== undefined && !left.calculated;
  if (leaves) changes.push({ update: rowAsRead(book.cows!, cow.index), set: { [left.heading]: { day: seenOn } } });
  const under = leaves ? `, and the day written as Left under ${book.cows!.name}` : "";
  return {
    save: saveOf(id, line, "gone", changes),
    told: `Cow ${line.cow}: gone by ${isoDate(seenOn)}, ${counted(open.length, "open finding")} closed${under}.`,
    caution: undefined,
    settles: "cow",
  };
}

function saveOf(id: string, line: FindingLine, outcome: Outcome, changes: readonly Change[]): Save {
  return { id, title: `${nameOf(line)} ${outcome}`, changes };
}

function nameOf({ cow, finding: { foot, lesion } }: FindingLine): string {
  return ["Cow", cow, foot, lesion].filter((part) => part !== "").join(" ");
}
