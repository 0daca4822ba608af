import { readFileSync } from "node:fs";
import { unzipSync } from "fflate";
import { registry } from "../../src/functions/registry";
import { readWorkbook } from "../../src/xlsx/read";
import { readTable } from "./sample";
import { computed, recomputed, shown, typeInto, trialForAllTests } from "./trial-page";

const ids = registry.map(({ id }) => id);

const trial = trialForAllTests();

/** Saves with the button and gives the bytes of the file that goes to the downloads. */
async function save(): Promise<Buffer> {
  const [download] = await Promise.all([trial.page.waitForEvent("download"), trial.page.click("#save")]);
  expect(download.suggestedFilename()).toBe("herd-workbook.xlsx");
  const pieces: Buffer[] = [];
  for await (const piece of await download.createReadStream()) pieces.push(piece as Buffer);
  return Buffer.concat(pieces);
}

async function open(name: string, buffer: Buffer): Promise<void> {
  await trial.page.setInputFiles("#file-input", { name, mimeType: "application/octet-stream", buffer });
}

/** Both leave the workbook as it was opened, so that they share it. */
describe("without an edit", () => {
  beforeAll(() => trial.startAnew());

  test("a copy saved without an edit keeps every part that holds no computed value, byte by byte", async () => {
    const original = unzipSync(readFileSync("sample-workbooks/herd-workbook.xlsx"));
    const saved = unzipSync(await save());
    expect(Object.keys(saved).sort()).toEqual(Object.keys(original).sort());
    const changed = Object.keys(saved).filter((path) => !Buffer.from(saved[path]!).equals(original[path]!));
    expect(changed.filter((path) => !path.startsWith("xl/worksheets/sheet"))).toEqual([]);
  });

  test("a file that is no workbook gets a clear message, and the open one stays", async () => {
    const { page } = trial;
    await open("notes.xlsx", Buffer.from("not a workbook"));
    await page.getByText("notes.xlsx could not be opened: it is not an .xlsx workbook").waitFor();
    expect(await page.textContent("#file-name")).toBe("herd-workbook.xlsx");
    expect(await shown(page, "Start", "A1")).not.toBe("");
  });
});

describe("with edits", () => {
  beforeAll(() => trial.startAnew());

  test("what was typed is there again when the saved copy is opened", async () => {
    const { page } = trial;
    const before = await readTable(page, "Findings", "Findings");
    const row = before.lastRow + 1;
    const at = (heading: string): string => `${before.columns[heading]!}${row}`;
    await typeInto(page, "Findings", at("Date"), "2026-09-01");
    await typeInto(page, "Findings", at("Cow"), "318");
    await typeInto(page, "Findings", at("Lesion"), "DD");
    await typeInto(page, "Start", "F30", "=HERD.CELL.SCORE(400)");
    await typeInto(page, "Start", "F31", "2026-10-05");
    await typeInto(page, "Start", "F32", "a < b & c");
    await recomputed(page);
    const copy = await save();

    const model = readWorkbook(copy, ids);
    const findings = model.sheets.find(({ name }) => name === "Findings")!;
    expect(findings.tables[0]!.area.lastRow + 1).toBe(row);
    const recheck = findings.cells.find((cell) => cell.row + 1 === row && cell.formula?.includes("HERD.RECHECK.DATE"));
    // 8 September 2026, seven days after the finding; 46266 is 1 September 2026 by the JS Date.
    expect(Date.UTC(1899, 11, 30) + 46_266 * 86_400_000).toBe(Date.UTC(2026, 8, 1));
    expect(recheck).toMatchObject({ value: 46_273 });

    await open("copy.xlsx", copy);
    await page.getByText("copy.xlsx").waitFor();
    await computed(page);
    expect(await shown(page, "Findings", at("Date"))).toBe("2026-09-01");
    expect(await shown(page, "Findings", at("Recheck"))).toBe("2026-09-08");
    expect((await readTable(page, "Findings", "Findings")).lastRow).toBe(row);
    expect(await shown(page, "Start", "F30")).toBe("5");
    expect(await shown(page, "Start", "F31")).toBe("2026-10-05");
    expect(await shown(page, "Start", "F32")).toBe("a < b & c");
    expect(await page.isVisible("#sample-note")).toBe(false);
  });
});
