import { day } from "../../../../src/core/shared/days";
import { checkBook } from "../../../../src/herd/check/check-book";
import { guessBook } from "../../../../src/herd/mapping/guess-book";
import { openQuestions } from "../../../../src/herd/mapping/open-questions";
import { mappingTable } from "../../../../src/workbook/mapping-table";
import type { PlainCell } from "../../../../src/workbook/port";
import { wordsTable } from "../../../../src/workbook/words-table";
import { book, type Rows, sheet } from "../plain-sheet";

const AS_OF = day("2026-09-01");

const FEET: Rows = [
  ["A", "B", "C", "D", "E"],
  ...Array.from({ length: 12 }, (_, row): PlainCell[] => [day("2026-06-01") + row, 100 + row, "LH", "manky", 8.1]),
];
const feet = sheet("Feet", FEET, { table: "Feet", days: [0] });

const words = sheet("Words", [wordsTable.columns.map(({ heading }) => heading), ["Manky", "HHE", null, null]], { table: "Words" }); // oxfmt-ignore

function mapping(...rows: readonly (readonly [value: string, heading: PlainCell, unit: PlainCell])[]) {
  const cells = rows.map(([value, heading, unit]) => ["Findings", value, "Feet", "Feet", heading, null, 1, unit, null]);
  return sheet("Mapping", [mappingTable.columns.map(({ heading }) => heading), ...cells], { table: "Mapping" });
}

const whole = mapping(["Date", "A", null], ["Cow", "B", null], ["Foot", "C", null], ["Lesion", "D", null], ["Toe mm", "E", "cm"], ["Measured from", null, "hard horn"]); // oxfmt-ignore

describe("a workbook with a Mapping and a Words table", () => {
  test("is checked by them", () => {
    const { doubts, tables, remarks } = checkBook(book(feet, whole, words), AS_OF);
    expect([doubts, remarks]).toEqual([[], []]);
    expect(tables.map(({ content }) => [content.name, content.rows[0]])).toEqual([
      ["Findings", [day("2026-06-01"), 100, "LH", "HHE", 81, "hard horn"]],
    ]);
  });

  test("says what its mapping does not find any more, and checks the rest", () => {
    const renamed = sheet("Feet", [["A", "B", "C", "D", "Cell count"], ...FEET.slice(1)], { table: "Feet", days: [0] });
    const { remarks, doubts } = checkBook(book(renamed, whole), AS_OF);
    expect(remarks).toEqual(['Findings, Toe mm: no heading of the table Feet is "E" any more; map it again.']);
    expect(doubts.map(({ check, cells }) => [check, cells])).toEqual([["unknown lesion", 12]]);
  });

  test("names rows of either table that it does not understand", () => {
    const oddWords = sheet(
      "Words",
      [
        ["Word", "Code"],
        ["manky", "??"],
      ],
      { table: "Words" },
    );
    const { remarks } = checkBook(book(feet, mapping(["Date", "A", "backwards"]), oddWords), AS_OF);
    expect(remarks).toEqual([
      'Mapping, H2: Unit must be day first, month first, year first; got "backwards".',
      'Words: the code of "manky" must be one of the claw disorder key; got "??"',
    ]);
  });
});

test("what the cells do not tell is asked once, with the answers that there are", () => {
  const rows = Array.from({ length: 12 }, (_, row): PlainCell[] => [100 + row, `0${1 + (row % 9)}/05/2026`, 22.5 + row, 150]); // oxfmt-ignore
  const toes = Array.from({ length: 12 }, (_, row): PlainCell[] => [100 + row, day("2026-05-01"), "SU", 80 + row]);
  const { sources } = guessBook(
    book(
      sheet("Milk", [["Cow", "Test day", "Milk yield", "SCC"], ...rows]),
      sheet("Feet", [["Cow", "Visit", "Lesion", "Toe mm"], ...toes], { days: [1] }),
    ),
  );
  expect(sources.flatMap(openQuestions).map(({ key, answers, taken }) => [key, answers, taken])).toEqual([
    ["date", ["day first", "month first", "year first"], "day first"],
    ["milkKg", ["kg", "litres", "lb"], "kg"],
    ["measuredFrom", ["hard horn", "skin-horn line"], undefined],
  ]);
});
