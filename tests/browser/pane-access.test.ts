import { cellWhere, readTable } from "./sample";
import { openTrial, recomputed, select, type TrialPage, typeInto } from "./trial-page";
import { axeFindings, overhang, TARGET_PX } from "./well-made";

/** The pane gives way in width only when its frame does. */
async function setPaneWidth({ page }: TrialPage, width: number): Promise<void> {
  await page.evaluate((pixels) => {
    document.getElementById("pane")!.style.inlineSize = `${pixels}px`;
  }, width);
}

/** What the pane shows, the sheet and cell that make it show it, and a text to wait for. */
const CASES: readonly (readonly [name: string, sheet: string, cell: string | undefined, text: string])[] = [
  ["nothing to explain", "Start", "A1", "Select a cell with a HERD function"],
  ["a date", "Findings", undefined, "HERD.RECHECK.DATE"],
  ["a filled cell", "Due", "C12", "HERD.RECHECK.LIST"],
  ["an error", "Start", "F30", "No result"],
  ["a choice of functions", "Start", "F31", "This formula uses 2 HERD functions"],
];

let trial: TrialPage;
let dateCell: string;

beforeAll(async () => {
  // axe is put into the page from outside, which the page's own policy would refuse.
  trial = await openTrial({ bypassCSP: true });
  await typeInto(trial.page, "Start", "F30", '=HERD.RECHECK.DATE("SX",DATE(2026,9,1))');
  await typeInto(trial.page, "Start", "F31", "=HERD.CELL.SCORE(400)-HERD.CELL.SCORE(100)");
  await recomputed(trial.page);
  const findings = await readTable(trial.page, "Findings", "Findings");
  dateCell = cellWhere(findings, "Recheck", (row) => row["Lesion"] === "SU");
});

afterAll(async () => {
  await trial.close();
});

describe.each(["light", "dark"] as const)("the pane in %s", (colorScheme) => {
  beforeAll(() => trial.page.emulateMedia({ colorScheme }));

  describe.each([350, 320])("%d px wide", (width) => {
    beforeAll(() => setPaneWidth(trial, width));

    test.each(CASES)("is open to all: %s", async (_, sheet, cell, text) => {
      await select(trial.page, sheet, cell ?? dateCell);
      await trial.pane.getByText(text).first().waitFor();
      expect(await axeFindings(trial.pane)).toEqual([]);
      expect(await overhang(trial.pane)).toBe(0);
    });
  });

  test("has targets that a finger can hit", async () => {
    await select(trial.page, "Start", "F31");
    await trial.pane.getByRole("radio").first().waitFor();
    const labels = trial.pane.locator("label:visible, button:visible");
    for (const box of await Promise.all((await labels.all()).map((label) => label.boundingBox())))
      expect(box!.height).toBeGreaterThanOrEqual(TARGET_PX);
  });

  test("at twice the size of text nothing is cut off", async () => {
    await trial.pane.evaluate(() => (document.documentElement.style.fontSize = "200%"));
    await select(trial.page, "Due", "C12");
    await trial.pane.getByText("HERD.RECHECK.LIST").first().waitFor();
    const { scrollWidth, clientWidth } = await trial.pane.evaluate(() => document.documentElement);
    expect(scrollWidth).toBe(clientWidth);
    await trial.pane.evaluate(() => (document.documentElement.style.fontSize = ""));
  });

  test("nothing stands in the top right corner, where the host draws a button", async () => {
    const covered = await trial.pane.evaluate(() => {
      const width = document.documentElement.clientWidth;
      return [...document.querySelectorAll("header :not(:has(*))")].some((element) => {
        const { right, top } = element.getBoundingClientRect();
        return right > width - 34 && top < 32;
      });
    });
    expect(covered).toBe(false);
  });
});
