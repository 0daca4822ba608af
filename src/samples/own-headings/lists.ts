import { defaultRecheckRules, recheckDays, ruleFor } from "../../core/claws/recheck-rules";
import { MILK_KG_PER_LITRE } from "../../core/shared/milk-units";
import { type DaySerial, day, isoDate } from "../../core/shared/days";
import { inventedHerd } from "../herd/invented-herd";
import { CLAW_WORDS, FOOT_WORDS, LANDMARK_WORDS, LESION_WORDS } from "./farm-words";
import { FarmList, type ListCell } from "./list";

/** The farm keeps every third cow of the other sample's herd, and began to write things down here. */
const EVERY = 3;
const BEGAN = day("2026-03-01");
const TESTS_FROM = day("2026-05-15");
const SCORES_FROM = day("2026-08-01");
const MM_PER_CM = 10;
const CELLS_PER_THOUSAND = 1000;
const CAP_THOUSAND = 9999;

export interface FarmLists {
  readonly cows: FarmList;
  readonly feet: FarmList;
  readonly milk: FarmList;
  readonly walking: FarmList;
}

/** The lists of the farm's own book before any mistake. */
export function farmLists(): FarmLists {
  const herd = inventedHerd(defaultRecheckRules);
  const ours = (cow: number | string): boolean => Number(cow) % EVERY === 0;
  const cows = herd.cows.filter(({ cow }) => ours(cow));
  const findings = herd.findings.filter(({ cow, date }) => ours(cow) && date >= BEGAN);
  const tests = herd.tests.filter(({ cow, date }) => ours(cow) && date >= TESTS_FROM);
  const scores = herd.scores.filter(({ cow, date }) => ours(cow) && date >= SCORES_FROM);
  return {
    cows: new FarmList(
      "Herd",
      ["Tag", "DOB", "Lact no", "Last calving", "Dried off", "Came in", "Went", "Pen"],
      cows.map((row) => [row.cow, row.born, row.lactation, row.calved, row.dryOff, row.entered, row.left, row.group]),
      3,
    ),
    feet: new FarmList(
      "Feet 2026",
      ["Visit", "Tag", "Leg", "Inside/outside", "What found", "Wart stage", "Toe cm", "Measured from", "What done", "Look again", "Medicine", "Withdrawal", "Remarks"], // oxfmt-ignore
      findings.map((row, index) => [
        writtenDay(row.date),
        row.cow,
        wordFor(FOOT_WORDS, row.foot),
        wordFor(CLAW_WORDS, row.claw),
        lesionWord(row.lesion, index),
        row.stage,
        typeof row.toeMm === "number" ? row.toeMm / MM_PER_CM : null,
        wordFor(LANDMARK_WORDS, row.measuredFrom),
        row.treatment,
        nextLook(row.lesion, row.date),
        null,
        null,
        row.note,
      ]),
      5,
    ),
    milk: new FarmList(
      "Milk recording",
      ["Tag", "Test day", "Lact no", "DIM", "Litres", "Cells/ml", "Butterfat"],
      tests.map((row, index) => [
        row.cow,
        row.date,
        row.lactation,
        row.daysInMilk,
        typeof row.milkKg === "number" ? Math.round((row.milkKg / MILK_KG_PER_LITRE) * 10) / 10 : row.milkKg,
        typeof row.count === "number" ? Math.min(row.count, CAP_THOUSAND - 1) * CELLS_PER_THOUSAND : row.count,
        Math.round((3.9 + ((index * 7) % 11) / 10) * 100) / 100,
      ]),
      3,
    ),
    walking: new FarmList(
      "Walking",
      ["Scored on", "Tag", "Mobility 0-3"],
      scores.map((row) => [row.date, row.cow, row.score]),
      3,
    ),
  };
}

/** 05/03/2026, day first, as text. */
export function writtenDay(serial: DaySerial): string {
  return isoDate(serial).split("-").reverse().join("/");
}

function wordFor(words: Readonly<Record<string, string>>, value: number | string | null): ListCell {
  return value === null ? null : (words[String(value)] ?? null);
}

function lesionWord(code: string, index: number): string {
  const words = LESION_WORDS[code];
  if (words === undefined) throw new Error(`the farm has no word for ${code}`);
  return words[index % words.length]!;
}

function nextLook(lesion: string, date: DaySerial): ListCell {
  const rule = ruleFor(defaultRecheckRules, lesion);
  const days = rule === undefined ? undefined : recheckDays(rule)[0];
  return days === undefined ? null : date + days;
}
