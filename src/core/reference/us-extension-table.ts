import type { Source } from "../shared/source";

/** Later lactations: "1 linear score = 1.5 lb a day or about 400 lb a lactation". */
export const bailey1997: Source = {
  name: "Bailey 1997",
  citation:
    "Bailey T 1997. Dairy Pipeline, Virginia Tech extension, May 1997: 1 linear score is 1.5 lb a day or about 400 lb a lactation.",
  standing: "read",
};

/** 75 cows at 800,000: 120,000 lb a year. */
export const keownKononoff2007: Source = {
  name: "Keown & Kononoff 2007",
  citation: "Keown JF, Kononoff PJ 2007. Extension circular G1656, University of Nebraska-Lincoln.",
  standing: "read",
};

export const usExtensionTable: Source = {
  name: "US extension table",
  citation:
    "Milk loss by linear score as printed in extension fact sheets of US universities, after Raubertas & Shook 1982 and " +
    "Jones et al. 1984 (J Dairy Sci 67:1823-1831). Later-lactation slope read (Bailey 1997; Keown & Kononoff 2007); " +
    "first-lactation column from memory.",
  standing: "memory",
};

/** Loss for each doubling above the base, lb a day of a test and lb a lactation of 305 days. */
export const US_EXTENSION_SLOPES = {
  lbPerDay: { first: 0.75, later: 1.5 },
  lbPerLactation: { first: 200, later: 400 },
} as const;

/** Columns of the printed table: score, thousand cells/mL, lb a day (first, later), lb a lactation (first, later). */
type Row = readonly [
  score: number,
  thousandPerMl: number,
  lbPerDayFirst: number,
  lbPerDayLater: number,
  lbPerLactationFirst: number,
  lbPerLactationLater: number,
];

/** The table as printed; up to score 2 (50 thousand) nothing is lost. */
export const US_EXTENSION_TABLE: readonly Row[] = [
  [2, 50, 0, 0, 0, 0],
  [3, 100, 0.75, 1.5, 200, 400],
  [4, 200, 1.5, 3, 400, 800],
  [5, 400, 2.25, 4.5, 600, 1200],
  [6, 800, 3, 6, 800, 1600],
  [7, 1600, 3.75, 7.5, 1000, 2000],
  [8, 3200, 4.5, 9, 1200, 2400],
  [9, 6400, 5.25, 10.5, 1400, 2800],
];
