import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Cell, Workbook, type Worksheet } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { installFormulaEngine } from "@cj-tech-master/excelts/formula";

/** Another engine, that of the library for .xlsx files, computes the ordinary formulas of the sample anew. */
const SAMPLE = join(__dirname, "../../../sample-workbooks/herd-workbook.xlsx");

type Shown = string | number | boolean | undefined;

function plain(value: unknown): Shown {
  if (value instanceof Date) return Math.round((value.getTime() - Date.UTC(1899, 11, 30)) / 86_400_000);
  return typeof value === "string" || typeof value === "number" || typeof value === "boolean" ? value : undefined;
}

/**
 * What the other engine cannot judge: it gives #VALUE! for XLOOKUP with a text (the price stands on Prices), and does
 * not find arrays that LET names (the lame cows not treated).
 */
const NOT_JUDGED = ["Cells!B6", "Due!L12"];

/** The other engine refuses to spill over the values that the file keeps of a spill. */
function emptySpills(sheet: Worksheet, saved: ReadonlyMap<string, Shown>): void {
  for (const place of saved.keys()) {
    const [name, address] = place.split("!") as [string, string];
    const anchor = sheet.name === name ? sheet.getCell(address) : undefined;
    const { ref } = (anchor?.model ?? {}) as { ref?: string };
    if (anchor === undefined || !ref?.includes(":")) continue;
    const [first, last] = ref.split(":").map((corner) => sheet.getCell(corner)) as [Cell, Cell];
    for (let row = Number(first.row); row <= Number(last.row); row++)
      for (let column = Number(first.col); column <= Number(last.col); column++)
        if (sheet.getCell(row, column).address !== anchor.address) sheet.getCell(row, column).value = null;
  }
}

test("ordinary formulas of the sample have the values that another engine gives them", async () => {
  installFormulaEngine();
  installChartSupport();
  const book = new Workbook();
  await book.xlsx.load(readFileSync(SAMPLE));
  const saved = new Map<string, Shown>();
  for (const sheet of book.worksheets) {
    sheet.eachRow((row) => {
      row.eachCell((cell) => {
        const { formula, result } = cell as unknown as { formula?: string; result?: unknown };
        if (formula === undefined) return;
        if (/_xldudf_/.test(formula)) cell.value = (plain(result) ?? null) as never;
        else if (plain(result) !== undefined) saved.set(`${sheet.name}!${cell.address}`, plain(result));
      });
    });
  }
  for (const sheet of book.worksheets) emptySpills(sheet, saved);
  book.calculateFormulas();
  const differing: string[] = [];
  for (const [place, before] of saved) {
    const [sheet, address] = place.split("!") as [string, string];
    const { formula, result } = book.getWorksheet(sheet)!.getCell(address) as unknown as Record<string, unknown>;
    const after = plain(result);
    const same =
      typeof before === "number" && typeof after === "number" ? Math.abs(before - after) < 1e-9 : before === after;
    if (!same && !NOT_JUDGED.includes(place))
      differing.push(`${place} ${String(formula).slice(0, 60)}: ${String(before)} / ${String(after)}`);
  }
  expect(differing).toEqual([]);
  expect(saved.size).toBeGreaterThan(300);
}, 120_000);
