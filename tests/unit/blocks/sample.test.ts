import { BlockData } from "../../../src/blocks/data";
import type { WorkbookModel } from "../../../src/xlsx/model";
import { bothSides, type BothSides, figure } from "./both-sides";
import { dataOnly, tablesOf } from "./sheet-side";

jest.setTimeout(180_000);

const SHEETS = ["Start", "Cows", "Findings", "Scores", "Tests", "Targets", "Prices", "Costs"];

/** Lists of the sample as plain objects, for counting again by hand. */
function rowsOf(model: WorkbookModel, table: string): Readonly<Record<string, unknown>>[] {
  const { columns, rows } = tablesOf(model).get(table)!;
  return rows.map((row) => Object.fromEntries(columns.map(({ heading }, index) => [heading, row[index]])));
}

describe("the sample workbook", () => {
  let model: WorkbookModel;
  let asOf: number;
  let sides: BothSides;
  beforeAll(async () => {
    model = dataOnly("sample-workbooks/herd-workbook.xlsx", SHEETS);
    const start = model.sheets.find(({ name }) => name === "Start")!;
    asOf = start.cells.find(({ row, column }) => row === 4 && column === 1)!.value as number;
    sides = await bothSides(model, asOf);
  });

  test("every figure of the pane is the figure of the sheet, cell by cell", () => {
    expect(sides.differences).toEqual([]);
  });

  test("every part can be told and stands in the sheet", () => {
    const refused = [...sides.computed.values()].flatMap(({ block, parts }) =>
      parts.flatMap((part) => (part.kind === "refused" ? [`${block.id} ${part.part.id}: ${part.sentence}`] : [])),
    );
    // The sample has no heifer among its findings: their blocks say so, and nothing else.
    const [ofHeifers, others] = [true, false].map((are) =>
      refused.filter((line) => /^\S+-heifers /.test(line) === are),
    );
    expect(others).toEqual([]);
    for (const line of ofHeifers!) expect(line).toMatch(/ holds no (?:findings?|sound cow|lesion)/);
    expect([...sides.laidOut.values()].flatMap(({ refusals }) => refusals)).toEqual([]);
  });

  test("milk cows examined, counted again", () => {
    const from = asOf - 365;
    const milking = rowsOf(model, "Cows").filter((cow) => {
      const [calved, left, dryOff] = [cow["Calved"], cow["Left"], cow["Dry-off"]];
      const here = typeof left !== "number" || left > asOf - 1;
      const dry = typeof dryOff === "number" && dryOff <= asOf - 1 && dryOff > Number(calved);
      return typeof calved === "number" && calved <= asOf - 1 && here && !dry;
    });
    const examined = new Set(
      rowsOf(model, "Findings")
        .filter(({ Date: day }) => Number(day) >= from && Number(day) <= asOf - 1)
        .map(({ Cow: cow }) => cow),
    );
    expect(figure(sides, "coverage", "milking")).toBe(milking.length);
    expect(figure(sides, "coverage", "examined")).toBe(milking.filter(({ Cow: cow }) => examined.has(cow)).length);
  });

  test("milk behind high counts, added up again", () => {
    const tests = rowsOf(model, "Tests");
    const last = Math.max(...tests.map(({ Date: day }) => Number(day)).filter((day) => day <= asOf));
    let pounds = 0;
    for (const { Date: day, Count: count, Lactation: lactation } of tests) {
      if (day !== last || typeof count !== "number" || count <= 50) continue;
      pounds += Math.log2(count / 50) * (lactation === 1 ? 0.75 : 1.5);
    }
    // 0.45359237 kg a pound, 1.03 kg a litre.
    const litres = (pounds * 365 * 0.45359237) / 1.03;
    expect(figure(sides, "yearly-bill", "milk")).toBeCloseTo(litres, 6);
    expect(figure(sides, "yearly-bill", "money")).toBeCloseTo(litres * 0.46, 6);
  });

  test("new cases and repeats, counted again", () => {
    const lastSeen = new Map<string, number>();
    let [fresh, repeats] = [0, 0];
    const parents: Record<string, string> = {
      SU: "U",
      BU: "U",
      TU: "U",
      TN: "U",
      WLF: "WL",
      WLA: "WL",
      SHD: "SH",
      SHC: "SH",
    };
    const rows = rowsOf(model, "Findings").filter(({ Lesion: lesion }) => lesion !== "none" && lesion !== null);
    rows.sort((a, b) => Number(a["Date"]) - Number(b["Date"]));
    for (const { Cow: cow, Foot: foot, Lesion: lesion, Date: day } of rows) {
      const key = [cow, foot, parents[String(lesion)] ?? lesion].join("/");
      const isNew = !lastSeen.has(key) || Number(day) - lastSeen.get(key)! > 28;
      lastSeen.set(key, Number(day));
      if (Number(day) < asOf - 365 || Number(day) > asOf - 1) continue;
      if (isNew) fresh++;
      else repeats++;
    }
    expect(figure(sides, "new-and-repeat", "new")).toBe(fresh);
    expect(figure(sides, "new-and-repeat", "repeats")).toBe(repeats);
  });

  test("cows lame at the last scoring, counted again", () => {
    const scores = rowsOf(model, "Scores");
    const last = Math.max(...scores.map(({ Date: day }) => Number(day)).filter((day) => day <= asOf));
    const scored = scores.filter(({ Date: day, Score: score }) => day === last && typeof score === "number");
    const lame = scored.filter(({ Score: score }) => Number(score) >= 2).length;
    const [, row] = figure(sides, "lame-share", "summary") as unknown[][];
    expect([row![0], row![2]]).toEqual([scored.length, lame]);
  });

  test("a column has a row also where the list is blank", () => {
    const columns = [{ heading: "Cow", calculated: false }];
    const tables = new Map([["Cows", { name: "Cows", sheet: "Cows", columns, rowCount: 0, rows: [] }]]);
    const data = new BlockData({ tables, asOf, scale: "0-3" });
    expect(data.column("Cows", "cow")).toEqual([[null]]);
    expect(data.column("Cows", "calved")).toBeUndefined();
  });
});
