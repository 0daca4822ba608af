import type { StartCell, StartSheet } from "./test-sheets";

/** 2024-03-01. */
export const MARCH_1 = 45_352;

/** Rows of plain values from a cell on. */
function block(
  column: string,
  row: number,
  rows: readonly (readonly StartCell["value"][])[],
): Record<string, StartCell> {
  const first = column.charCodeAt(0);
  return Object.fromEntries(
    rows.flatMap((cells, down) =>
      cells.flatMap((value, right) =>
        value === null ? [] : [[`${String.fromCharCode(first + right)}${row + down}`, { value }] as const],
      ),
    ),
  );
}

const day = (value: number): StartCell => ({ value, numberFormat: "dd/mm/yyyy" });

/** A farm's own list: a title, headings in row 3, dates of which one is text. */
export const feet: StartSheet = {
  name: "Feet 'hind' & more",
  cells: {
    A1: { value: "Trimming 2024" },
    ...block("A", 3, [
      ["Day", "Cow", "Lesion", "Note"],
      [null, 101, "DD", null],
      ["02/03/2024", "102", "SU", "see vet"],
      [null, 103, "DD", null],
    ]),
    A4: day(MARCH_1),
    A6: day(MARCH_1 + 2),
    E4: { value: 202, formula: "B4*2" },
    B9: { value: 7, numberFormat: "@" },
  },
};

export const cows: StartSheet = {
  name: "Cows",
  cells: block("B", 2, [
    ["Cow", "Group"],
    [101, "A"],
    [102, "B"],
  ]),
  tables: [{ name: "Herd", area: "B2:C4" }],
};

/** Lists that cannot become tables as they are. */
export const odd: StartSheet = {
  name: "Odd",
  cells: {
    ...block("A", 1, [
      ["Cow", null, "Cow", 2024],
      [1, 2, 3, 4],
    ]),
    ...block("A", 5, [
      ["Left", "Right"],
      [1, 2],
    ]),
    A10: { value: "over both" },
    D10: { value: 5 },
  },
  merges: ["A10:B10", "B6:C6"],
};

export const notes: StartSheet = { name: "Old notes", hidden: true, cells: block("A", 1, [["kept"]]) };

export const empty: StartSheet = { name: "Empty", cells: {} };

export const figures: StartSheet = {
  name: "Figures",
  cells: {
    A1: { value: "#NAME?", formula: "HERD.CELL.SCORE(200)" },
    A2: { value: "#NAME?", formula: 'IF(TRUE,HERD.CELL.SCORE(400),"HERD.NOT(")' },
    A3: { value: "#NAME?", formula: 'OTHER.CALL("HERD.CELL.SCORE(1)")' },
    A4: { value: 3, formula: "1+2" },
  },
};

/** A list of which one formula fills a column. */
export const filled: StartSheet = {
  name: "Filled",
  cells: {
    ...block("A", 1, [
      ["Cow", "Twice"],
      [1, null],
      [2, 4],
      [3, 6],
    ]),
    B2: { value: 2, formula: "A2:A4*2", spills: "B2:B4" },
  },
};

export const startSheets: readonly StartSheet[] = [feet, cows, odd, notes, empty, figures, filled];
