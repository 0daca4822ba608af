import { disorderOf } from "../../../core/claws/disorder-key";
import { SOUND } from "../../../core/claws/findings";
import { referenceClaw } from "../../../core/claws/reference-claw";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import { foldHeading } from "../../../herd/read-rows";
import { lesionOf } from "../../../herd/cow-facts";
import type { PlainCell } from "../../../workbook/port";
import type { ColumnDefinition, TableDefinition } from "../../../workbook/table-definition";
import { type Change, isDay, type NewRow, type TableContent, type TypedValue } from "../../../workbook/table-port";
import { findingsTable, HEIFER, scoresTable } from "../../../workbook/tables";
import { counted } from "../../format";
import { careOf, treatmentText } from "./care";
import { measuredFeet } from "./check";
import type { CowAtHand } from "./check-visit";
import { limbOf } from "./feet";
import type { Care, Foot, Visit } from "./fields";
import { placed, type Values } from "./placed";
import { headingOf, placeUnder, takes } from "./places";
import { type FindingEntry, isBlankFinding, type PlannedSave, type RecordState } from "./state";
import { typedDay } from "../../typed-day";
import { typedNumber } from "./typed-text";
import { withdrawalNote } from "./withdrawal";

/** What is saved: the findings typed, that nothing was found, or the score alone. */
export type SaveKind = "findings" | "sound" | "score";

/** All rows of the entry as one save. The entry has nothing that hinders it. */
export function plannedSave(state: RecordState, at: CowAtHand, kind: SaveKind): PlannedSave {
  const { entry } = state;
  const date = typedDay(state.visit.date)!;
  const rows = kind === "score" ? [] : kind === "sound" ? [soundRow(state, at, date)] : findingRows(state, at, date);
  const score = scoreChange(state, at, date);
  const name = `Cow ${at.cow?.name ?? entry.cow}`;
  const titles = { findings: counted(rows.length, "finding"), sound: "nothing found", score: "score" };
  return {
    save: {
      id: entry.id,
      title: `${name}, ${titles[kind]}`,
      changes: [...findingChanges(state, at, rows), ...score.changes],
    },
    written: [...rows.map((row) => inWords("Findings", row)), ...score.written],
  };
}

/** New rows; the first takes the place of a row that calls her sound on the day. */
function findingChanges(state: RecordState, at: CowAtHand, rows: readonly Values[]): readonly Change[] {
  const { findings } = state.herd!;
  const sound = at.facts.sameDay.find(({ lesion }) => lesionOf(lesion) === SOUND);
  const [first, ...others] = rows;
  if (sound === undefined || first === undefined) return appended(findingsTable, findings.content, rows);
  const set = byHeading(findingsTable, findings.content, first);
  return [{ update: findings.asRead(sound.index), set }, ...appended(findingsTable, findings.content, others)];
}

/** The cell that names the cow: as Cows has it, else a number where it is written like one. */
function cowCell(state: RecordState, at: CowAtHand): PlainCell {
  if (at.cow !== undefined) return at.cow.cell;
  const text = state.entry.cow.trim();
  return /^[1-9]\d{0,14}$/.test(text) ? Number(text) : text;
}

/** What every row of the cow begins with. What follows from Cows is written only where the table keeps it. */
function rowHead(state: RecordState, at: CowAtHand, date: DaySerial): Values {
  const { content } = state.herd!.findings;
  return {
    date: { day: date },
    cow: cowCell(state, at),
    ...(takes(content, headingOf("lactation"))
      ? { lactation: at.facts.lactation === 0 ? HEIFER : at.facts.lactation }
      : {}),
    ...(takes(content, headingOf("daysInMilk")) ? { daysInMilk: at.facts.daysInMilk } : {}),
  };
}

function findingRows(state: RecordState, at: CowAtHand, date: DaySerial): readonly Values[] {
  const { entry, visit } = state;
  const { content } = state.herd!.findings;
  const found = entry.findings.filter((finding) => !isBlankFinding(finding));
  const kept = keptToes(state, found);
  const toes = measuredFeet(entry).flatMap((foot) => toeNotes(state, foot, kept));
  const ofVisit = [...toes, visitNote(content, visit)];
  return found.map((finding, index) => {
    const { cells, notes } = placed(content, {
      ...placeOf(finding),
      lesion: disorderOf(finding.lesion)!.code,
      stage: finding.stage === "" ? null : finding.stage,
      severity: typedNumber(finding.severity) ?? null,
      ...(kept.get(finding) ?? {}),
      ...treatmentCells(content, careOf(state, finding), date),
    });
    return {
      ...rowHead(state, at, date),
      ...cells,
      note: noteOf([...notes, finding.note.trim(), text(cells["note"]), ...(index === 0 ? ofVisit : [])]),
      ...visitCells(visit),
    };
  });
}

/** The treatment, and the withdrawal in the note; where there is none, behind the treatment. */
function treatmentCells(content: TableContent, care: Care, date: DaySerial): Values {
  const [treatment, withdrawal] = [treatmentText(care), withdrawalNote(care, date)];
  if (placeUnder(content, headingOf("treatment")) === "nowhere") return {};
  if (placeUnder(content, headingOf("note")) === "column") return { treatment: treatment || null, note: withdrawal };
  return { treatment: noteOf([treatment, withdrawal]) };
}

function text(value: TypedValue | undefined): string {
  return typeof value === "string" ? value : "";
}

function noteOf(parts: readonly string[]): string | null {
  return parts.filter((part) => part !== "").join("; ") || null;
}

function placeOf({ foot, claw, zone }: FindingEntry): Values {
  return {
    foot: foot === "" ? null : foot,
    claw: claw === "between" || claw === "" ? null : claw,
    zone: typedNumber(zone) ?? null,
  };
}

interface KeptToe {
  readonly toeMm: number;
  readonly measuredFrom: string;
}

/** The toe length that goes into the row of a finding: that of its claw, once. None where the list has no column. */
function keptToes(state: RecordState, found: readonly FindingEntry[]): ReadonlyMap<FindingEntry, KeptToe> {
  const { entry, visit } = state;
  const kept = new Map<FindingEntry, KeptToe>();
  if (placeUnder(state.herd!.findings.content, headingOf("toeMm")) !== "column") return kept;
  const used = new Set<string>();
  for (const finding of found) {
    if (finding.foot === "" || (finding.claw !== "inner" && finding.claw !== "outer")) continue;
    const toeMm = typedNumber(entry.toes[finding.foot]?.[finding.claw] ?? "");
    const key = finding.foot + finding.claw;
    if (toeMm === undefined || used.has(key)) continue;
    used.add(key);
    kept.set(finding, { toeMm, measuredFrom: visit.landmark });
  }
  return kept;
}

/** The lengths of a foot that have no row of their own, in words. */
function toeNotes({ entry, visit }: RecordState, foot: Foot, kept: ReadonlyMap<FindingEntry, KeptToe>): string[] {
  const inRow = (claw: "inner" | "outer") =>
    [...kept.keys()].some((finding) => finding.foot === foot && finding.claw === claw);
  return (["inner", "outer"] as const).flatMap((claw) => {
    const mm = typedNumber(entry.toes[foot]?.[claw] ?? "");
    return mm === undefined || inRow(claw) ? [] : [`${foot} ${claw} toe ${mm} mm from ${visit.landmark}`];
  });
}

/** One row says that a cow was looked at and nothing was found; it holds the first reference claw measured. */
function soundRow(state: RecordState, at: CowAtHand, date: DaySerial): Values {
  const { entry, visit, herd } = state;
  const feet = measuredFeet(entry);
  const foot = feet.find((measured) => entry.toes[measured]![referenceClaw(limbOf(measured))] !== "");
  const claw = foot === undefined ? undefined : referenceClaw(limbOf(foot));
  const { content } = herd!.findings;
  const isKept = placeUnder(content, headingOf("toeMm")) === "column";
  const ofToe = foot === undefined || claw === undefined || !isKept ? {} : { foot, claw, toeMm: typedNumber(entry.toes[foot]![claw])!, measuredFrom: visit.landmark }; // oxfmt-ignore
  const { cells, notes } = placed(content, ofToe);
  const toes = feet
    .flatMap((measured) => toeNotes(state, measured, new Map()))
    .filter((note) => !isKept || !note.startsWith(`${foot} ${claw} `));
  return {
    ...rowHead(state, at, date),
    ...cells,
    lesion: SOUND,
    note: noteOf([...notes, ...toes, visitNote(content, visit)]),
    ...visitCells(visit),
  };
}

const VISIT_PARTS = ["reason", "trimmer", "place"] as const;

/** Columns that some farms keep for it. */
function visitCells({ reason, trimmer, place }: Visit): Values {
  return { reason: reason.trim() || null, trimmer: trimmer.trim() || null, place: place.trim() || null };
}

/** What of the visit has no column in the table goes into the note. */
function visitNote(content: TableContent, visit: Visit): string {
  return VISIT_PARTS.filter((part) => visit[part].trim() !== "" && !takes(content, part))
    .map((part) => (part === "reason" ? visit[part].trim() : `${part} ${visit[part].trim()}`))
    .join("; ");
}

function scoreChange(state: RecordState, at: CowAtHand, date: DaySerial) {
  const score = typedNumber(state.entry.score);
  const before = at.facts.scoreOnDay;
  if (score === undefined || before?.score === score) return { changes: [], written: [] };
  const { content } = state.herd!.scores;
  const row: Values = { date: { day: date }, cow: cowCell(state, at), score };
  const changes: readonly Change[] =
    before === undefined
      ? appended(scoresTable, content, [row])
      : [{ update: state.herd!.scores.asRead(before.index), set: byHeading(scoresTable, content, { score }) }];
  return { changes, written: [inWords("Scores", row)] };
}

function appended(table: TableDefinition, content: TableContent, rows: readonly Values[]): readonly Change[] {
  return rows.length === 0 ? [] : [{ append: table.name, rows: rows.map((row) => byHeading(table, content, row)) }];
}

/** Values under the headings that the table has; blanks are left out. A column that is not there is named as ours. */
function byHeading(table: TableDefinition, content: TableContent, values: Values): NewRow {
  const headings = new Map(content.columns.map(({ heading }) => [foldHeading(heading), heading]));
  const columns = new Map<string, ColumnDefinition>(table.columns.map((column) => [column.key, column]));
  return Object.fromEntries(
    Object.entries(values).flatMap(([key, value]) => {
      const own = columns.get(key)?.heading;
      const heading = headings.get(foldHeading(own ?? key)) ?? own;
      return value === null || heading === undefined ? [] : [[heading, value]];
    }),
  );
}

const LEFT_OUT = new Set(["lactation", "daysInMilk", "reason", "trimmer", "place"]);

function inWords(table: string, row: Values): string {
  const parts = Object.entries(row).flatMap(([key, value]) => {
    if (value === null || LEFT_OUT.has(key)) return [];
    const text = isDay(value) ? isoDate(value.day) : String(value);
    return [
      {
        zone: `zone ${text}`,
        severity: `severity ${text}`,
        score: `score ${text}`,
        toeMm: `toe ${text} mm`,
        cow: `cow ${text}`,
      }[key] ?? text,
    ];
  });
  return `${table}: ${parts.join(", ")}`;
}
