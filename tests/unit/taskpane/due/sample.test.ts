import { recheckList } from "../../../../src/functions/claws/recheck-list";
import { evaluate } from "../../../../src/functions/evaluate";
import { readBook } from "../../../../src/taskpane/screens/due/book";
import { type Listing, listingOf } from "../../../../src/taskpane/screens/due/listing";
import { MemoryHost } from "../../../../src/workbook/memory/table-host";
import type { PlainCell } from "../../../../src/workbook/port";
import { openTables } from "../../../../src/workbook/saving/open-tables";
import type { TableContent, TablePort } from "../../../../src/workbook/table-port";
import { AS_OF, sampleBook, valuesOf } from "./sample-book";

const port: TablePort = openTables(new MemoryHost(sampleBook()));
const due = valuesOf("Due");

/** Rows of the stored sheet Due from its first list row, until the first blank in the first column. */
function storedRows(firstColumn: number, width: number): PlainCell[][] {
  const FIRST_ROW = 11;
  const rows: PlainCell[][] = [];
  for (let row = FIRST_ROW; due(row, firstColumn) !== null; row++)
    rows.push(Array.from({ length: width }, (_, right) => due(row, firstColumn + right)));
  return rows;
}

async function listing(day: number, daysAhead: number): Promise<Listing> {
  return listingOf(await readBook(port), day, daysAhead);
}

function findingRows({ lines, day }: Listing): unknown[][] {
  return lines.flatMap(({ cow, finding, what, due }) =>
    finding === undefined ? [] : [[cow, finding.foot, what, due, day - due]],
  );
}

function column({ columns, rows }: TableContent, heading: string): PlainCell[][] {
  const at = columns.findIndex((known) => known.heading === heading);
  return rows.map((row) => [row[at] ?? null]);
}

async function functionRows(day: number, daysAhead: number): Promise<unknown[][]> {
  const [findings, rules] = await Promise.all([port.readTable("Findings"), port.readTable("Rules")]);
  const of = (heading: string) => column(findings, heading);
  const result = evaluate(recheckList, [
    ...["Cow", "Foot", "Lesion", "Date", "Treatment", "Closed on"].map(of),
    day,
    [rules.columns.map(({ heading }) => heading), ...rules.rows],
    daysAhead,
    of("Seen again"),
    of("Next look"),
  ]).value as unknown[][];
  return result.slice(1).filter(([cow]) => cow !== "");
}

describe("on the sample herd the list has", () => {
  test("the rows and dates that HERD.RECHECK.LIST gives, in its order", async () => {
    for (const daysAhead of [0, 7, 28]) {
      const rows = findingRows(await listing(AS_OF, daysAhead));
      expect(rows.length).toBeGreaterThan(5);
      expect(rows).toEqual(await functionRows(AS_OF, daysAhead));
    }
  });

  test("the rows that stand on the stored sheet", async () => {
    const stored = storedRows(0, 5).filter(([, foot]) => foot !== null);
    const rows = findingRows(await listing(AS_OF, 7));
    expect(rows).toEqual(stored.map(([cow, ...more]) => [String(cow), ...more]));
  });

  test("the routine trims of the stored sheet, which looks 28 days ahead", async () => {
    const { lines } = await listing(AS_OF, 28);
    const trims = lines.filter(({ work }) => work === "trim").map(({ cow, place, due }) => [cow, place, due]);
    const stored = storedRows(6, 4).map(([cow, group, , next]) => [String(cow), group, next]);
    expect(trims.length).toBeGreaterThan(5);
    expect(new Set(trims.map(String))).toEqual(new Set(stored.map(String)));
  });

  test("the lame cows of the stored sheet but for those whose feet were lifted since", async () => {
    const { lines } = await listing(AS_OF, 7);
    const lame = lines.filter(({ work }) => work === "lame").map(({ cow }) => cow);
    const stored = storedRows(11, 2).map(([cow]) => String(cow));
    expect(lame.length).toBeGreaterThan(3);
    expect(stored).toEqual(expect.arrayContaining(lame));
    const findings = await port.readTable("Findings");
    const scored = Math.max(...column(await port.readTable("Scores"), "Date").map(([date]) => Number(date)));
    const dates = column(findings, "Date");
    const lifted = column(findings, "Cow").flatMap(([cow], row) =>
      Number(dates[row]![0]) >= scored ? [String(cow)] : [],
    );
    expect(new Set(lame)).toEqual(new Set(stored.filter((cow) => !lifted.includes(cow))));
  });

  test("nothing left out unsaid: each open finding without a rule is counted", async () => {
    const { remarks } = await listing(AS_OF, 7);
    const stored = storedRows(2, 1).filter(([what]) => String(what).includes("without a recheck"));
    expect(remarks.filter((remark) => remark.includes("without a recheck"))).toHaveLength(stored.length);
  });
});
