import fc from "../../../random";
import { disorders } from "../../../../src/core/claws/disorder-key";
import { day } from "../../../../src/core/shared/days";
import { LesionWords } from "../../../../src/herd/codes/words";
import { backConverter } from "../../../../src/herd/mapped-port/convert-back";
import { converter } from "../../../../src/herd/mapping/convert";
import { DAY_ORDERS, type MappedColumn, type Unit, unitsOf } from "../../../../src/herd/mapping/mapping";
import { mappedColumns } from "../../../../src/herd/mapping/targets";
import type { PlainCell } from "../../../../src/workbook/port";
import { plainValue } from "../../../../src/workbook/saving/row-match";
import type { TypedValue } from "../../../../src/workbook/table-port";
import { CLAWS, FEET, GROUPS, LANDMARKS, OUTCOMES } from "../../../../src/workbook/tables";

const definitions = (["Cows", "Findings", "Scores", "Tests"] as const).flatMap((name) => mappedColumns(name));

function written(
  key: string,
  unit: Unit | undefined,
  value: TypedValue,
  cells: readonly PlainCell[] = [],
  words = new LesionWords(),
) {
  const column: MappedColumn = { key, heading: "x", column: 0, ...(unit === undefined ? {} : { unit }) };
  const definition = definitions.find((known) => known.key === key)!;
  const farm = backConverter(column, definition, words, cells)(value);
  return { farm, ours: farm === undefined ? undefined : converter(column, definition, words)(plainValue(farm)) };
}

/** Values as they are typed: with a few decimals. */
const typed = (min: number, max: number, decimals: number) =>
  fc.integer({ min: min * 10 ** decimals, max: max * 10 ** decimals }).map((whole) => whole / 10 ** decimals);

test.each(unitsOf["count"]!.map((unit) => [unit]))("a count goes into %s and comes back", (unit) => {
  fc.assert(fc.property(typed(1, 9999, 1), (count) => written("count", unit, count).ours === count));
});

test.each(unitsOf["milkKg"]!.map((unit) => [unit]))("milk goes into %s and comes back", (unit) => {
  fc.assert(fc.property(typed(0, 120, 3), (kg) => written("milkKg", unit, kg).ours === kg));
});

test.each(unitsOf["toeMm"]!.map((unit) => [unit]))("a toe goes into %s and comes back", (unit) => {
  fc.assert(fc.property(typed(30, 200, 1), (mm) => written("toeMm", unit, mm).ours === mm));
});

test.each(unitsOf["score"]!.map((unit) => [unit]))("a score on %s stays as it is", (unit) => {
  fc.assert(fc.property(typed(0, 5, 1), (score) => written("score", unit, score).farm === score));
});

describe.each(DAY_ORDERS.map((order) => [order]))("dates written as text, %s", (order) => {
  const patterns: Readonly<Record<string, readonly string[]>> = {
    "day first": ["05/03/2026", "5.3.2026", "05.03.26", "5-3-26", "31/12/2026"],
    "month first": ["03/05/2026", "3/5/26", "12-31-2026"],
    "year first": ["2026-03-05", "2026/3/5", "2026.12.31"],
  };
  test.each(patterns[order]!.map((text) => [text]))("like %s, come back as the same day", (text) => {
    const days = fc.integer({ min: day("1980-01-01"), max: day("2099-12-31") });
    fc.assert(fc.property(days, (serial) => {
      const { farm, ours } = written("date", order, { day: serial }, [text]);
      return typeof farm === "string" && ours === serial;
    })); // oxfmt-ignore
  });
});

test.each([
  ["day first", ["05/03/2026", "31/12/2025"], "07/02/2026"],
  ["day first", ["5.3.2026", "31.12.2025"], "7.2.2026"],
  ["day first", ["05-03-26"], "07-02-26"],
  ["month first", ["3/15/26"], "2/7/26"],
  ["month first", ["3/5/26", "12/31/25"], "2/7/26"],
  ["year first", ["2026.03.05"], "2026.02.07"],
  ["day first", [], "2026-02-07"],
] as const)("a day written %s among %j is %s", (order, cells, expected) => {
  expect(written("date", order, { day: day("2026-02-07") }, [...cells]).farm).toBe(expected);
});

test("a column of real dates gets real dates, also where a few are text", () => {
  const serial = day("2026-02-07");
  expect(written("date", undefined, { day: serial }).farm).toEqual({ day: serial });
  expect(written("date", "day first", { day: serial }, [45_000, 45_001, "05/03/2026"]).farm).toEqual({ day: serial });
});

test.each([
  ["foot", FEET, ["left front", "right front", "left back", "right back"]],
  ["claw", CLAWS, ["inside", "outside"]],
  ["measuredFrom", LANDMARKS, ["hard wall", "hairline"]],
  ["outcome", OUTCOMES, ["cured", "improved", "no change", "deteriorated", "culled"]],
  ["group", GROUPS, ["just calved", "high yielders", "lows", "dry cows"]],
] as const)(
  "each %s is written in the column's own words, or as ours where it has none, and comes back",
  (key, ours, theirs) => {
    ours.forEach((choice, at) => {
      expect(written(key, undefined, choice, theirs)).toEqual({ farm: theirs[at], ours: choice });
      expect(written(key, undefined, choice)).toEqual({ farm: choice, ours: choice });
    });
  },
);

test("of several words of a column the most frequent is written", () => {
  expect(written("claw", undefined, "outer", ["lat", "outside", "outside", "inside"]).farm).toBe("outside");
});

function words(...rows: readonly (readonly [string, string | null])[]): LesionWords {
  const columns = ["Word", "Code"].map((heading) => ({ heading, calculated: false }));
  return new LesionWords({ name: "Words", sheet: "Words", columns, rowCount: rows.length, rows });
}

describe("lesions", () => {
  const known = words(["hairy wart", "DD"], ["digi", "DD"], ["bad ulcer", "SU"], ["ID", "DD"], ["scald", "ID"]);

  test("one word of the farm is written, of several none: then the code is", () => {
    expect(written("lesion", undefined, "SU", [], known)).toEqual({ farm: "bad ulcer", ours: "SU" });
    expect(written("lesion", undefined, "DD", [], known)).toEqual({ farm: "DD", ours: "DD" });
  });

  test("a code that the farm uses for something else is never written", () => {
    expect(written("lesion", undefined, "ID", [], known)).toEqual({ farm: "scald", ours: "ID" });
    expect(written("lesion", undefined, "ID", [], words(["ID", "DD"])).farm).not.toBe("ID");
  });

  test("every code of the key comes back, whatever words the farm has", () => {
    const codes = [...disorders.map(({ code }) => code), "none"];
    const anyWords = fc.array(fc.tuple(fc.string({ minLength: 1, maxLength: 6 }), fc.constantFrom(...codes)), { maxLength: 8 }); // oxfmt-ignore
    fc.assert(
      fc.property(anyWords, fc.constantFrom(...codes), (rows, code) => {
        const { farm, ours } = written("lesion", undefined, code, [], words(...rows));
        return farm === undefined || ours === code;
      }),
    );
  });
});

test("blanks and notes stay as they are in every column", () => {
  for (const { key } of definitions) {
    for (const value of [null, "-", "no sample"]) expect([key, written(key, unitsOf[key]?.at(-1), value).farm]).toEqual([key, value]); // oxfmt-ignore
  }
});
