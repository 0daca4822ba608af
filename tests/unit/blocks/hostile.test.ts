import { bothSides, type BothSides, figure } from "./both-sides";
import {
  AS_OF_DAY,
  SETTINGS,
  type SmallBook,
  smallBook,
  soundCows,
  soundFindings,
  soundScores,
  soundTests,
} from "./small-books";

jest.setTimeout(120_000);

const sound: SmallBook = {
  cows: soundCows,
  findings: soundFindings,
  scores: soundScores,
  tests: soundTests,
  settings: SETTINGS,
};

const books: Readonly<Record<string, SmallBook>> = {
  "a sound herd": sound,
  "empty tables": {},
  "empty tables with settings": { settings: SETTINGS },
  "one cow": {
    ...sound,
    cows: soundCows.slice(0, 1),
    findings: soundFindings.filter(({ cow }) => cow === 100),
    scores: soundScores.filter(({ cow }) => cow === 100),
    tests: soundTests.filter(({ cow }) => cow === 100),
  },
  "one row in each list": {
    ...sound,
    cows: soundCows.slice(0, 1),
    findings: soundFindings.slice(0, 1),
    scores: soundScores.slice(0, 1),
    tests: soundTests.slice(0, 1),
  },
  "one day each": {
    ...sound,
    findings: soundFindings.map((row) => ({ ...row, date: AS_OF_DAY - 20 })),
    scores: soundScores.slice(-12),
    tests: soundTests.slice(-12),
  },
  "no lactations written": {
    ...sound,
    cows: soundCows.map((row) => ({ ...row, lactation: null })),
    findings: soundFindings.map((row) => ({ ...row, lactation: null })),
    tests: soundTests.map((row) => ({ ...row, lactation: null })),
  },
  "cows without a column for their lactation": { ...sound, without: ["Cows lactation"] },
  "cows whose lactation is blank": { ...sound, cows: soundCows.map((row) => ({ ...row, lactation: null })) },
  "no columns for lactations, feet and milk": {
    ...sound,
    without: ["Cows lactation", "Findings lactation", "Findings foot", "Tests lactation", "Tests milkKg"],
  },
  "counts in mixed units": {
    ...sound,
    tests: soundTests.map((row, index) =>
      index % 5 === 1 && typeof row["count"] === "number" ? { ...row, count: row["count"] * 1000 } : row,
    ),
  },
  "counts at the cap": {
    ...sound,
    tests: soundTests.map((row) => (row["count"] === 900 ? { ...row, count: 9999 } : row)),
  },
  "findings without sound cows": { ...sound, findings: soundFindings.filter(({ lesion }) => lesion !== "none") },
  "days as text, texts for days": {
    ...sound,
    findings: soundFindings.map((row, index) => (index === 7 ? { ...row, date: "12.3.2026" } : row)),
    tests: soundTests.map((row, index) => (index === 115 ? { ...row, date: "12.3.2026" } : row)),
    cows: soundCows.map((row, index) => (index === 3 ? { ...row, left: "sold" } : row)),
  },
  "errors in cells": {
    ...sound,
    findings: soundFindings.map((row, index) => (index === 7 ? { ...row, lesion: "#N/A" } : row)),
    tests: soundTests.map((row, index) => (index === 115 ? { ...row, count: "#DIV/0!" } : row)),
    cows: soundCows.map((row, index) => (index === 3 ? { ...row, left: "#REF!" } : row)),
  },
  "all after the day of the workbook": {
    ...sound,
    findings: soundFindings.map((row) => ({ ...row, date: AS_OF_DAY + 5 })),
    tests: soundTests.map((row) => ({ ...row, date: AS_OF_DAY + 5 })),
    scores: soundScores.slice(0, 12).map((row) => ({ ...row, date: AS_OF_DAY + 5 })),
  },
  "a cow twice in a test, a lesion nobody knows": {
    ...sound,
    tests: [...soundTests, soundTests.at(-1)!],
    findings: soundFindings.map((row, index) => (index === 20 ? { ...row, lesion: "QQQ" } : row)),
  },
  "targets without a number, no prices": {
    ...sound,
    settings: { ...SETTINGS, Prices: [], Targets: [["Lesion", "Target"]] },
  },
};

/** What is said of an error whose cause nobody looked at. */
const GENERAL =
  /divided by zero|value is of the wrong kind|value that is needed is not there|cell that is needed shows/;

const results = new Map<string, BothSides>();

describe.each(Object.entries(books))("%s", (name, book) => {
  let sides: BothSides;
  beforeAll(async () => {
    sides = await bothSides(smallBook(book), AS_OF_DAY);
    results.set(name, sides);
  });

  test("the pane shows what the sheet computes, errors included", () => {
    expect(sides.differences).toEqual([]);
  });

  test("whatever cannot be told is said in a sentence", () => {
    const parts = [...sides.computed.values()].flatMap((block) => block.parts);
    const told = parts.flatMap((part) => {
      if (part.kind === "refused") return [`${part.part.id}: ${part.sentence}`];
      return part.kind === "rows" ? part.problems.map((problem) => `${part.part.id}: ${problem}`) : [];
    });
    for (const line of told) {
      // Words that name something: a bare error, or what an error means at large, helps nobody to mend it.
      expect(line).toMatch(/: ["\w][^#]*( [^ ]+){3}/);
      expect(line).not.toMatch(GENERAL);
    }
    const shown = parts.flatMap((part) => (part.kind === "rows" ? part.rows.flat() : []));
    if (told.length === 0) expect(shown.length).toBeGreaterThan(0);
  });
});

describe("what a reader is told", () => {
  const told = (book: string, block: string, part: string): unknown => figure(results.get(book)!, block, part);

  test("of empty tables", () => {
    expect(told("empty tables", "lesion-rates", "cowDays")).toMatch(/enteredOn holds no dates/);
    expect(told("empty tables", "yearly-bill", "milk")).toMatch(/counts holds no count/);
    expect(told("empty tables", "lesion-costs", "costs")).toBe("The workbook has no table Costs.");
    expect(told("empty tables", "coverage", "milking")).toBe(0);
  });

  test("without lactations the tank is told, the milk lost is not", () => {
    expect(told("no lactations written", "tank-and-cows", "tank")).toEqual(expect.any(Number));
    expect(told("no lactations written", "yearly-bill", "milk")).toMatch(/lactations/);
    expect(told("no columns for lactations, feet and milk", "yearly-bill", "milk")).toBe(
      "Tests has no column Lactation.",
    );
    expect(told("no columns for lactations, feet and milk", "tank-and-cows", "geometric")).toEqual(expect.any(Number));
  });

  test("mixed units are refused with the unit they look like", () => {
    expect(told("counts in mixed units", "yearly-bill", "milk")).toMatch(/looks like cells\/mL/);
  });

  test("without sound cows rates are told, shares are not", () => {
    expect(told("findings without sound cows", "horn-and-infectious", "rate all")).toEqual(expect.any(Number));
    expect(told("findings without sound cows", "horn-and-infectious", "share all")).toMatch(/no sound cow/);
  });

  test("an error in a list is told with its list, column and row", () => {
    const mend = (where: string): string => `${where} below the headings, shows`;
    expect(told("errors in cells", "coverage", "milking")).toContain(mend("Cows, Left, row 4"));
    expect(told("errors in cells", "what-if", "from")).toContain(mend("Tests, Count, row 116"));
  });

  test("a word in place of a day is refused: it does not tell when the cow left", () => {
    expect(told("days as text, texts for days", "coverage", "milking")).toBe(
      'Cows, Left, row 4 below the headings, must be a day or blank; got "sold".',
    );
  });

  test("a first test has none before it", () => {
    expect(told("one day each", "cell-changes", "before")).toBe("none before");
  });
});
