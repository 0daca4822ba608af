import { join } from "node:path";
import { plantedMistakes } from "../../src/samples/own-headings";
import { recomputed, shown, trialForEachTest } from "./trial-page";

const SHOTS = process.env["SHOTS"];

/** 1 September 2026, as sheets count days: 46,266 days after 30 December 1899. */
const TODAY = 46_266;

const trial = trialForEachTest(join(__dirname, "../../sample-workbooks/own-headings.xlsx"));

beforeEach(async () => {
  // The invented herd lives on a day of its own. The pane takes it from the page when it is loaded.
  await trial.page.evaluate((day) => (window.dayOfWorkbook = () => day), TODAY);
  await trial.startPaneAnew();
  await trial.pane.getByRole("tab", { name: "Set up" }).click();
  await trial.pane.getByText("8 columns read").waitFor();
});

const button = (name: RegExp | string) => trial.pane.getByRole("button", { name });

async function shot(name: string): Promise<void> {
  if (SHOTS !== undefined) await trial.page.screenshot({ path: `${SHOTS}/trial-${name}.png` });
}

/** Waits until what was written is told, and closes the notice. */
async function done(): Promise<void> {
  await trial.pane.getByRole("heading", { name: "Done" }).waitFor();
  await button("Close").click();
}

test("the secretary maps her own book, and its rechecks stand under Due", async () => {
  const { pane, page } = trial;
  await shot("found");
  await button("Keep this").click();
  await done();
  expect(await shown(page, "Mapping", "A1")).toBe("Table");
  await button(/^Your words/).click();
  await button(/^Keep \d+ words/).click();
  await done();
  expect(await shown(page, "Words", "A1")).toBe("Word");
  await shot("kept");
  await pane.getByRole("tab", { name: "Due" }).click();
  await pane.locator(".due-line").first().waitFor();
  await shot("due");
  expect(await pane.locator(".due-summary").textContent()).toMatch(/\d+ overdue/);
});

test("the check finds what was planted; a count is repaired in her sheet and taken back", async () => {
  const { page, pane } = trial;
  await button("Keep this").click();
  await done();
  await button(/^Check the workbook/).click();
  await button("Check now").click();
  await pane.locator(".set-up-summary").waitFor();
  const planted = plantedMistakes().filter(({ check }) => check === "mixed unit");
  await button(/^Values in another unit/).click();
  for (const { sheet, address } of planted) await button(`Go to cell: ${sheet}, ${address}`).waitFor();
  const { sheet, address } = planted.find((mistake) => mistake.sheet === "Milk recording")!;
  await button(`Go to cell: ${sheet}, ${address}`).click();
  await page.waitForFunction((wanted) => {
    const workbook = window.trialSession!.grid!.api.getActiveWorkbook()!;
    return workbook.getActiveSheet().getSheetName() === wanted;
  }, sheet);
  await button(/^Write 240000/).click();
  await done();
  await recomputed(page);
  expect(await shown(page, sheet, address)).toMatch(/^240[,.]?000$/);
  await pane.getByText(/^Done here/).click();
  await button(/^Take back: Write 240000/).click();
  await pane
    .getByText(/^Taken back/)
    .last()
    .waitFor();
  expect(await shown(page, sheet, address)).toBe("240");
  await shot("checked");
});

test("a plain list becomes a table and is plain again", async () => {
  const { page } = trial;
  const tables = (): Promise<string[]> =>
    page.evaluate(() =>
      window
        .trialSession!.grid!.api.getActiveWorkbook()!
        .getSheetByName("Walking")!
        .getSubTableInfos()
        .map(({ name }) => name),
    );
  await button("Make it a table: the list on Walking").click();
  await trial.pane.getByText("The list is now the table Walking.").last().waitFor();
  expect(await tables()).toEqual(["Walking"]);
  await shot("table");
  await button(/^Take back/)
    .first()
    .click();
  await trial.pane
    .getByText(/^Taken back/)
    .last()
    .waitFor();
  expect(await tables()).toEqual([]);
});

test("a block is put on a sheet of its own and taken back with it", async () => {
  const { pane, page } = trial;
  await button("Keep this").click();
  await done();
  await button(/^Blocks and templates/).click();
  const sheets = (): Promise<string[]> =>
    page.evaluate(() => {
      const workbook = window.trialSession!.grid!.api.getActiveWorkbook()!;
      return workbook.getSheets().map((sheet) => sheet.getSheetName());
    });
  const before = await sheets();
  await button(/^Put in the sheet: Lame cows$/).click();
  await pane.getByText(/^It stands on the sheet Lame cows, from A1 on/).waitFor();
  await recomputed(page);
  await shot("block");
  expect(await sheets()).toEqual([...before, "Lame cows"]);
  await button(/^Take back: Lame cows$/).click();
  await pane
    .getByText(/^Taken back/)
    .last()
    .waitFor();
  expect(await sheets()).toEqual(before);
});
