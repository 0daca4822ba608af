import { sheet, tableRows, valueAt } from "./sample-file";

/** Figures of the summary sheets, counted again by plain loops over the rows of the file. */
const AS_OF = 46266; // 2026-09-01
const cows = tableRows("Cows");
const findings = tableRows("Findings");
const scores = tableRows("Scores");
const tests = tableRows("Tests");

const number = (value: unknown): number => value as number;
const latest = (rows: readonly Record<string, unknown>[]): number =>
  Math.max(...rows.map((row) => number(row["Date"])));
const isCount = (row: Record<string, unknown>): boolean => typeof row["Count"] === "number";

/** Cells of a column below a heading, until the first blank. */
function listBelow(name: string, heading: string): unknown[] {
  const [, letters, row] = /^([A-Z]+)(\d+)$/.exec(heading)!;
  const values: unknown[] = [];
  for (let next = Number(row) + 1; ; next++) {
    const value = valueAt(name, `${letters!}${next}`);
    if (value === undefined || value === "") return values;
    values.push(value);
  }
}

describe("milk of the latest test", () => {
  const day = latest(tests);
  const rows = tests.filter((row) => row["Date"] === day && isCount(row));

  test("tank estimate is the mean weighted by milk", () => {
    const milk = rows.reduce((sum, row) => sum + number(row["Milk kg"]), 0);
    const cells = rows.reduce((sum, row) => sum + number(row["Milk kg"]) * number(row["Count"]), 0);
    expect(valueAt("Cells", "B10")).toBeCloseTo(cells / milk, 8);
  });

  test("milk lost: 0.75 lb a doubling above 50 thousand in first lactation, 1.5 lb later, 0.45359237 kg a lb, 1.03 kg a litre", () => {
    const pounds = rows.reduce((sum, row) => {
      const doublings = Math.max(0, Math.log2(number(row["Count"]) / 50));
      return sum + doublings * (row["Lactation"] === 1 ? 0.75 : 1.5);
    }, 0);
    const litres = (pounds * 0.45359237 * 365) / 1.03;
    expect(valueAt("Cells", "B8")).toBeCloseTo(litres, 6);
    expect(valueAt("Cells", "B9")).toBeCloseTo(litres * 0.46, 6);
  });

  test("new and recovered against the test before; exactly 200 thousand is high", () => {
    const dayBefore = Math.max(...tests.map((row) => number(row["Date"])).filter((date) => date < day));
    const before = new Map(
      tests.filter((row) => row["Date"] === dayBefore && isCount(row)).map((row) => [row["Cow"], number(row["Count"])]),
    );
    const both = rows.filter((row) => before.has(row["Cow"]));
    const low = both.filter((row) => before.get(row["Cow"])! < 200);
    const high = both.filter((row) => before.get(row["Cow"])! >= 200);
    expect([valueAt("Cells", "A41"), valueAt("Cells", "B41"), valueAt("Cells", "C41")]).toEqual([
      "new",
      low.filter((row) => number(row["Count"]) >= 200).length,
      low.length,
    ]);
    expect([valueAt("Cells", "A42"), valueAt("Cells", "B42"), valueAt("Cells", "C42")]).toEqual([
      "recovered",
      high.filter((row) => number(row["Count"]) < 200).length,
      high.length,
    ]);
  });
});

describe("lists of what is due", () => {
  test("lame cows without an open finding", () => {
    const day = latest(scores);
    const open = new Set(
      findings.filter((row) => row["Lesion"] !== "none" && row["Closed on"] === undefined).map((row) => row["Cow"]),
    );
    const lame = scores.filter((row) => row["Date"] === day && typeof row["Score"] === "number" && row["Score"] >= 2);
    const wanted = lame.map((row) => row["Cow"]).filter((cow) => !open.has(cow));
    const listed = listBelow("Due", "L11");
    expect(wanted.length).toBeGreaterThan(3);
    expect(new Set(listed)).toEqual(new Set(wanted));
    expect(listed).toHaveLength(wanted.length);
  });

  test("routine trims of cows that are here, in the days ahead", () => {
    const wanted = cows.filter(
      (row) => row["Left"] === undefined && typeof row["Next trim"] === "number" && row["Next trim"] <= AS_OF + 28,
    );
    expect(wanted.length).toBeGreaterThan(5);
    expect(new Set(listBelow("Due", "G11"))).toEqual(new Set(wanted.map((row) => row["Cow"])));
    const dates = listBelow("Due", "J11").map(number);
    expect(dates).toEqual([...dates].sort((a, b) => a - b));
  });

  test("every open finding is listed or lies further ahead, and the counts above the list add up", () => {
    const days = listBelow("Due", "E11").map(number);
    expect([valueAt("Due", "E4"), valueAt("Due", "E5"), valueAt("Due", "E6")]).toEqual([
      days.filter((over) => over > 0).length,
      days.filter((over) => over === 0).length,
      days.filter((over) => over < 0).length,
    ]);
    expect(days[0]).toBeGreaterThan(0);
    expect(days).toContain(0);
    const open = findings.filter((row) => row["Closed on"] === undefined).map((row) => String(row["Cow"]));
    expect(open).toEqual(expect.arrayContaining(listBelow("Due", "A11").map(String)));
  });
});

describe("claws and lame cows", () => {
  test("cow-days of the period, first and last day included", () => {
    const [from, to] = [number(valueAt("Claws", "B4")), number(valueAt("Claws", "B5"))];
    expect([from, to]).toEqual([45901, 46265]); // 2025-09-01 and 2026-08-31
    let days = 0;
    for (const cow of cows) {
      for (let day = from; day <= to; day++) {
        if (number(cow["Entered"]) <= day && (cow["Left"] === undefined || day <= number(cow["Left"]))) days++;
      }
    }
    expect(valueAt("Claws", "B7")).toBe(days);
  });

  test("the rate of all lesions is their new cases over the cow-years", () => {
    const codes = listBelow("Claws", "A32");
    const all = 33 + codes.indexOf("all");
    const newCases = number(valueAt("Claws", `C${all}`));
    const cowYears = number(valueAt("Claws", "B7")) / 365.25;
    expect(valueAt("Claws", "B9")).toBeCloseTo((100 * newCases) / cowYears, 8);
    const rows = findings.filter((row) => row["Lesion"] !== "none" && number(row["Date"]) >= 45901);
    expect(newCases + number(valueAt("Claws", `D${all}`))).toBe(rows.length);
  });

  test("the months add up to the new cases of their period", () => {
    const horn = listBelow("Claws", "N4").map(number);
    const infectious = listBelow("Claws", "O4").map(number);
    const all = listBelow("Claws", "R4").map(number);
    expect(all).toHaveLength(14);
    const others = ["P4", "Q4"].map((heading) => listBelow("Claws", heading).map(number));
    all.forEach((sum, month) => {
      expect(sum).toBe(horn[month]! + infectious[month]! + others[0]![month]! + others[1]![month]!);
    });
  });

  test("lame cows at the last scoring, and their share at each scoring", () => {
    const day = latest(scores);
    const seen = scores.filter((row) => row["Date"] === day && typeof row["Score"] === "number");
    const lame = seen.filter((row) => number(row["Score"]) >= 2);
    expect([valueAt("Lame cows", "A7"), valueAt("Lame cows", "C7")]).toEqual([seen.length, lame.length]);
    expect(valueAt("Lame cows", "B38")).toBeCloseTo(lame.length / seen.length, 12);
    expect(valueAt("Lame cows", "A38")).toBe(day);
  });
});

describe("what the summary sheets hold", () => {
  /** Cells meant to be changed, and the step numbers of nothing else: every other number comes from a formula. */
  const INPUTS: Readonly<Record<string, readonly string[]>> = {
    Due: ["B5", "B6"],
    Claws: ["B6", "N22"],
    "Where to look": [],
    "Lame cows": [],
    Costs: ["B6", "B7", "B8", "D6", "D7", "D8"],
    Cells: ["B5", "B69"],
    Trimming: ["B7", "B8", "B10", "B20", "B21", "B22", "B23", "B24", "B29"],
  };

  test.each(Object.keys(INPUTS))("%s holds no figure that was typed in", (name) => {
    const { cells } = sheet(name);
    const filled = new Set<string>();
    for (const { fills } of cells.values())
      if (fills?.includes(":")) for (const address of within(fills)) filled.add(address);
    const typed = [...cells.values()].filter(
      ({ address, formula, value }) => formula === undefined && typeof value === "number" && !filled.has(address),
    );
    expect(typed.map(({ address }) => address).sort()).toEqual([...INPUTS[name]!].sort());
    for (const { formula } of cells.values()) expect(formula ?? "A1").toMatch(/[A-Za-z]/);
  });
});

function within(area: string): string[] {
  const [, from, first, to, last] = /^([A-Z])(\d+):([A-Z])(\d+)$/.exec(area)!;
  const addresses: string[] = [];
  for (let column = from!.charCodeAt(0); column <= to!.charCodeAt(0); column++) {
    for (let row = Number(first); row <= Number(last); row++) addresses.push(String.fromCharCode(column) + row);
  }
  return addresses;
}
