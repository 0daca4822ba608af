import { day } from "../../src/core/shared/days";

/** A cell as a sheet holds it; null is a blank. */
export type Cell = number | string | null;
export type ColumnOfCells = readonly Cell[];

/** The invented findings of a claw sheet, column by column, in order of date. */
export interface Findings {
  readonly cows: ColumnOfCells;
  readonly feet: ColumnOfCells;
  readonly lesions: ColumnOfCells;
  readonly dates: ColumnOfCells;
  readonly treatments: ColumnOfCells;
  readonly closedOn: ColumnOfCells;
}

/** An invented milk test, one cow a row. */
export interface MilkTest {
  readonly cows: ColumnOfCells;
  readonly counts: ColumnOfCells;
  readonly lactations: ColumnOfCells;
  readonly milk: ColumnOfCells;
}

const FIRST_DAY = day("2022-01-01");
const DAYS = 1096;
/** The period that rates are asked for, and the day on which lists are made. */
export const PERIOD = { from: day("2024-01-01"), to: day("2024-12-31") };
export const TODAY = FIRST_DAY + DAYS - 1;

/** Findings of a cow in three years, sound ones included. */
const FINDINGS_A_COW = 12;
const SOUND_SHARE = 0.35;
const FEET = ["LF", "RF", "LH", "RH", "LH", "RH"];
const LESIONS = ["DD", "DD", "DD", "SU", "SU", "WL", "WLA", "WLF", "SH", "SHD", "TU", "BU", "IP", "IH", "HHE", "HHE"];
const TREATMENTS = [null, null, "block", "block, pain relief 3 d", "bandage", "topical spray, bandage"];
const NO_FOOT_SHARE = 0.01;
/** A finding is closed at a look between these days after it; few are forgotten and stay open. */
const EARLIEST_CLOSED_DAYS = 14;
const LATEST_CLOSED_DAYS = 42;
const FORGOTTEN_SHARE = 0.01;

export function cowDaysOf(rows: number): number {
  return Math.ceil(rows / FINDINGS_A_COW) * (PERIOD.to - PERIOD.from + 1);
}

/** `herd` tells apart herds of one size. */
export function findings(rows: number, herd = 0): Findings {
  const random = randomNumbers(rows + herd);
  const cowCount = Math.ceil(rows / FINDINGS_A_COW);
  const dates = column(rows, (row) => FIRST_DAY + Math.floor((row * DAYS) / rows));
  return {
    cows: column(rows, () => 1 + Math.floor(random() * cowCount)),
    feet: column(rows, () => (random() < NO_FOOT_SHARE ? null : pick(FEET, random()))),
    lesions: column(rows, () => (random() < SOUND_SHARE ? "none" : pick(LESIONS, random()))),
    dates,
    treatments: column(rows, () => pick(TREATMENTS, random())),
    closedOn: column(rows, (row) => {
      const after = EARLIEST_CLOSED_DAYS + Math.floor(random() * (LATEST_CLOSED_DAYS - EARLIEST_CLOSED_DAYS));
      const closedOn = (dates[row] as number) + after;
      return closedOn > TODAY || random() < FORGOTTEN_SHARE ? null : closedOn;
    }),
  };
}

const NO_COUNT_SHARE = 0.03;
/** Counts lie evenly over a logarithmic scale from 12.5 to 3,200 thousand cells/mL, most of them low. */
const LOWEST_COUNT = 12.5;
const DOUBLINGS = 8;

export function milkTest(rows: number, herd = 0): MilkTest {
  const random = randomNumbers(rows + herd);
  return {
    cows: column(rows, (row) => row + 1),
    counts: column(rows, () =>
      random() < NO_COUNT_SHARE ? null : Math.round(LOWEST_COUNT * 2 ** (DOUBLINGS * random() * random())),
    ),
    lactations: column(rows, () => 1 + Math.floor(5 * random() * random())),
    milk: column(rows, () => Math.round(100 + 350 * random()) / 10),
  };
}

function column(rows: number, cell: (row: number) => Cell): ColumnOfCells {
  return Array.from({ length: rows }, (_, row) => cell(row));
}

function pick<T>(list: readonly T[], share: number): T {
  return list[Math.floor(share * list.length)]!;
}

/** The same numbers on every machine, from 0 to below 1. Source: mulberry32 by T. Ettinger, public domain. */
function randomNumbers(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
