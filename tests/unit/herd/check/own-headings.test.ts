import { readFileSync } from "node:fs";
import { join } from "node:path";
import { day } from "../../../../src/core/shared/days";
import { plainBook } from "../../../../src/workbook/file/plain-book";
import { checkTables } from "../../../../src/herd/check/check-book";
import { checks } from "../../../../src/herd/check/checks";
import { likelyCode } from "../../../../src/herd/codes/likely-code";
import { LesionWords, proposedRows } from "../../../../src/herd/codes/words";
import { guessBook } from "../../../../src/herd/mapping/guess-book";
import { type MappedTable, readMapped } from "../../../../src/herd/mapping/read-mapped";
import { resolveMapping } from "../../../../src/herd/mapping/resolve";
import { plantedMistakes } from "../../../../src/samples/own-headings";
import { LESION_WORDS } from "../../../../src/samples/own-headings/farm-words";
import { wordsTable } from "../../../../src/workbook/words-table";
import { readWorkbook } from "../../../../src/xlsx/read";

const AS_OF = day("2026-09-01");

function bookOf(file: string) {
  const bytes = readFileSync(join(__dirname, "../../../../sample-workbooks", file));
  return plainBook(readWorkbook(bytes, []));
}

const own = bookOf("own-headings.xlsx");
const guess = guessBook(own);

/** The words as the secretary confirms them: what is surely proposed is right. */
function confirmedWords(): LesionWords {
  const resolved = resolveMapping(guess, own);
  const findings = resolved.sources
    .filter(({ source }) => source.table === "Findings")
    .map((source) => readMapped(source, new LesionWords()));
  const texts = findings.flatMap(({ content }) => {
    const column = content.columns.findIndex(({ heading }) => heading === "Lesion");
    return content.rows.map((cells) => cells[column]).filter((cell) => typeof cell === "string");
  });
  const rows = proposedRows(new LesionWords().unknown(texts)).map(({ word, code }) => [word, code]);
  const columns = [wordsTable.columns[0], wordsTable.columns[1]].map(({ heading }) => ({ heading, calculated: false }));
  return new LesionWords({ name: "Words", sheet: "Words", columns, rowCount: rows.length, rows });
}

function mappedTables(words: LesionWords): readonly MappedTable[] {
  return resolveMapping(guess, own).sources.map((source) => readMapped(source, words));
}

describe("a farm's own book", () => {
  test("is mapped right in every column without help", () => {
    const mapped = Object.fromEntries(
      guess.sources.map(({ table, sheet, columns }) => [
        `${table} on ${sheet}`,
        Object.fromEntries(columns.map(({ key, heading, unit }) => [key, unit === undefined ? heading : `${heading}: ${unit}`])), // oxfmt-ignore
      ]),
    );
    expect(mapped).toEqual({
      "Cows on Herd": {
        cow: "Tag",
        born: "DOB",
        lactation: "Lact no",
        calved: "Last calving",
        dryOff: "Dried off",
        entered: "Came in",
        left: "Went",
        group: "Pen",
      },
      "Findings on Feet 2026": {
        date: "Visit: day first",
        cow: "Tag",
        foot: "Leg",
        claw: "Inside/outside",
        lesion: "What found",
        stage: "Wart stage",
        toeMm: "Toe cm: cm",
        measuredFrom: "Measured from",
        treatment: "What done",
        nextLook: "Look again",
        drug: "Medicine",
        withdrawal: "Withdrawal",
        note: "Remarks",
      },
      "Tests on Milk recording": {
        cow: "Tag",
        date: "Test day",
        lactation: "Lact no",
        daysInMilk: "DIM",
        milkKg: "Litres: litres",
        count: "Cells/ml: cells/mL",
      },
      "Scores on Walking": { date: "Scored on", cow: "Tag", score: "Mobility 0-3: 0-3" },
    });
    expect(guess.sources.flatMap(({ unused }) => unused.map(({ heading }) => heading))).toEqual(["Butterfat"]);
    expect(guess.alternatives).toEqual([]);
    expect(guess.problems).toEqual([]);
  });

  test("every word of the farm is proposed with the code that it has there, and none by chance", () => {
    for (const [code, words] of Object.entries(LESION_WORDS)) {
      for (const word of words) expect([word, new LesionWords().codeOf(word) ?? likelyCode(word)?.code]).toEqual([word, code]); // oxfmt-ignore
    }
    expect(likelyCode("bad un")).toBeUndefined();
  });

  test("every planted mistake is found and nothing sound is accused", () => {
    const words = confirmedWords();
    const doubts = checkTables(mappedTables(words), AS_OF, words);
    const found = doubts.filter(({ address }) => !address.includes(":")).map(({ check, sheet, address }) => `${check}: ${sheet}!${address}`); // oxfmt-ignore
    const planted = plantedMistakes().map(({ check, sheet, address }) => `${check}: ${sheet}!${address}`);
    expect([...found].sort()).toEqual([...planted].sort());
    const wholeColumns = doubts.filter(({ address }) => address.includes(":"));
    expect(wholeColumns.map(({ check, level, sheet, address }) => [check, level, sheet, address.slice(0, 1)])).toEqual([
      ["text date", "note", "Feet 2026", "A"],
    ]);
  });

  test("there is a planted mistake for every check", () => {
    const planted = new Set(plantedMistakes().map(({ check }) => check));
    expect([...planted].sort()).toEqual(checks.map(({ id }) => id).sort());
  });

  test("repairs are the values that the farm meant", () => {
    const words = confirmedWords();
    const repairs = checkTables(mappedTables(words), AS_OF, words)
      .filter(({ repair, address }) => repair !== undefined && !address.includes(":"))
      .map(({ sheet, address, holds, repair }) => [`${sheet}!${address}`, holds, repair!.cells[0]!.to]);
    expect(repairs.filter(([place]) => String(place).startsWith("Milk recording"))).toEqual([
      [expect.any(String), "185000", 185_000],
      [expect.any(String), 240, 240_000],
      [expect.any(String), 0, null],
    ]);
    expect(repairs.find(([, holds]) => holds === 84)?.[2]).toBe(8.4);
    expect(repairs.find(([, holds]) => holds === "3")?.[2]).toBe(3);
  });
});

test("nothing in the sample herd workbook is accused; one capped count is worth knowing", () => {
  const sample = bookOf("herd-workbook.xlsx");
  const { sources, alternatives } = guessBook(sample);
  expect(sources.map(({ table, own: isOwn }) => [table, isOwn])).toEqual([
    ["Cows", true],
    ["Findings", true],
    ["Scores", true],
    ["Tests", true],
  ]);
  expect(alternatives).toEqual([]);
  const tables = resolveMapping({ sources }, sample).sources.map((source) =>
    readMapped(source, new LesionWords(), true),
  );
  const doubts = checkTables(tables, AS_OF, new LesionWords());
  expect(doubts.map(({ check, level, holds }) => [check, level, holds])).toEqual([["capped count", "note", 9999]]);
});
