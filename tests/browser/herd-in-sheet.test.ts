import type { Frame, Page } from "playwright-core";
import { recomputed, type SharedTrial, trialForAllTests } from "./trial-page";

const SHOTS = process.env["SHOTS"];

/** One workbook serves all: blocks stand on sheets of their own, and hold in it whatever findings there are. */
const trial = trialForAllTests();
beforeEach(() => trial.startPaneAnew());

async function openHerd(pane: Frame): Promise<void> {
  await pane.getByRole("tab", { name: "Herd", exact: true }).click();
  await pane.locator('.herd[aria-busy="false"] section').last().waitFor();
}

/** Wider and longer than any block here. The grid's own last cell leaves out what formulas fill. */
const AREA = { rows: 80, columns: 14 } as const;

/** What a sheet shows, row by row, without blank cells; nothing where there is no such sheet. */
function shownRows(page: Page, sheet: string): Promise<string[][]> {
  return page.evaluate(
    ([name, { rows, columns }]) => {
      const worksheet = window.trialSession!.grid!.api.getActiveWorkbook()!.getSheetByName(name);
      const values = worksheet?.getRange(0, 0, rows, columns).getDisplayValues() ?? [];
      return values.map((row) => row.map(String).filter((text) => text !== ""));
    },
    [sheet, AREA] as const,
  );
}

/** The same once a formula has filled rows as wide as this; the grid draws what spills a little later. */
async function filledRows(page: Page, sheet: string, columns: number): Promise<string[][]> {
  for (;;) {
    const rows = await shownRows(page, sheet);
    if (rows.filter((row) => row.length >= columns).length > 1) return rows;
    await page.waitForTimeout(AGAIN_MS);
  }
}

const AGAIN_MS = 200;

/** Opens a section and writes its block on a new sheet, whose name it gives back. */
async function putInSheet({ page, pane }: SharedTrial, title: string): Promise<string> {
  const section = pane.getByRole("region", { name: title });
  const fold = section.getByRole("button", { name: title, exact: true });
  if ((await fold.getAttribute("aria-expanded")) === "false") await fold.click();
  await section.getByRole("button", { name: `Put in the sheet: ${title}` }).click();
  const told = section.getByText(/^It stands on the sheet /);
  await told.waitFor();
  await recomputed(page);
  return /on the sheet (.+), from/.exec((await told.textContent())!)![1]!;
}

/** The numbers of a section as the pane shows them. */
async function numbersIn(pane: Frame, title: string): Promise<string[][]> {
  const section = pane.getByRole("region", { name: title });
  for (const summary of await section.getByText("Show the numbers", { exact: true }).all()) await summary.click();
  const rows = await section.locator("tbody tr").all();
  return Promise.all(rows.map((row) => row.locator("th, td").allTextContents()));
}

test("the rates of the pane are what the formulas in the sheet show, cell by cell", async () => {
  const { page, pane } = trial;
  const title = "Lesions: new cases and rates";
  await openHerd(pane);
  if (SHOTS !== undefined) await page.screenshot({ path: `${SHOTS}/herd-trial.png` });
  const shown = await numbersIn(pane, title);
  const sheet = await putInSheet(trial, title);
  const written = await filledRows(page, sheet, 9);
  expect(shown.length).toBeGreaterThan(8);
  for (const [name, newCases, repeats, cows, rate, low, high, target] of shown) {
    const row = written.find((cells) => cells[1] === name);
    // Code, lesion, new cases, repeats, cows, rate, low, high; a target where there is one.
    const figures = [newCases, repeats, cows, rate, low, high, ...(target === "–" ? [] : [target])];
    expect([name, row?.slice(2, 2 + figures.length)]).toEqual([name, figures]);
  }
  const cowDays = written.find(([label]) => label === "Cow-days at risk")![1];
  expect(await pane.getByRole("region", { name: title }).locator("dd b").first().textContent()).toBe(cowDays);
  if (SHOTS !== undefined) await page.screenshot({ path: `${SHOTS}/herd-in-sheet.png` });
});

test("what was put is taken back, and the workbook is as it was", async () => {
  const { page, pane } = trial;
  const title = "New cases by month";
  await openHerd(pane);
  const sheet = await putInSheet(trial, title);
  const written = await filledRows(page, sheet, 6);
  const shown = await numbersIn(pane, title);
  expect(shown.length).toBe(14);
  // The sheet has all columns: month, horn, infectious, shape, other, all.
  const totals = (rows: string[][]): (string | undefined)[] => rows.map((row) => row.at(-1));
  const first = written.findIndex(([heading]) => heading === "Month from") + 1;
  expect(totals(shown)).toEqual(totals(written.slice(first, first + shown.length)));
  await pane.getByRole("button", { name: `Take back: ${title}` }).click();
  await pane.getByText("Taken back.").first().waitFor();
  await recomputed(page);
  expect((await shownRows(page, sheet)).flat()).toEqual([]);
});

test("a finding typed into the sheet shows in the pane", async () => {
  const { page, pane } = trial;
  await openHerd(pane);
  const first = pane.locator(".herd-first");
  const before = await first.textContent();
  await page.evaluate(() => {
    const workbook = window.trialSession!.grid!.api.getActiveWorkbook()!;
    const worksheet = workbook.getSheetByName("Findings")!;
    const { range } = worksheet.getSubTableInfos().find(({ name }) => name === "Findings")!;
    const lesion = worksheet.getRange(range.startRow, range.startColumn, 1, 12).getValues()[0]!.indexOf("Lesion");
    // The last rows are of the latest days; each becomes foul in the foot.
    for (let row = range.endRow - 30; row <= range.endRow; row++)
      worksheet.getRange(row, range.startColumn + lesion).setValue("IP");
  });
  await pane.waitForFunction((text) => document.querySelector(".herd-first")?.textContent !== text, before);
});
