import type { Frame, Page } from "playwright-core";
import { formatNumber } from "../../src/taskpane/format";
import { recomputed, trialForAllTests } from "./trial-page";

// Each test puts blocks of its own into the sheet.
const trial = trialForAllTests();

/** Opens a screen of the pane and waits until its figures are there. */
async function show(name: "Cells" | "Costs" | "Report"): Promise<Frame> {
  const { pane } = trial;
  await pane.getByRole("tab", { name, exact: true }).click();
  const ready = {
    Cells: ".cells[aria-busy=false] .cells-first",
    Costs: ".costs[aria-busy=false] .costs-bills",
    Report: ".report-things",
  };
  await pane.locator(ready[name]).waitFor();
  return pane;
}

/** Puts the block of a section into the sheet and gives the values of its sheet, row by row. */
async function put(pane: Frame, section: string, title: string): Promise<readonly (readonly unknown[])[]> {
  const heading = pane.getByRole("button", { name: section, exact: true });
  if ((await heading.getAttribute("aria-expanded")) === "false") await heading.click();
  await pane.getByRole("button", { name: `Put in the sheet: ${title}` }).click();
  const told = pane
    .getByRole("region", { name: section, exact: true })
    .first()
    .getByText(/^It stands on the sheet /);
  // A long title is cut to what the name of a sheet has room for.
  const [, sheet = ""] = /^It stands on the sheet (.+), from A1/.exec((await told.textContent()) ?? "") ?? [];
  await recomputed(trial.page);
  return valuesOf(trial.page, sheet);
}

/** Numbers as they are; what another cell fills in as the sheet shows it, numbers read back from there. */
async function valuesOf(page: Page, sheet: string): Promise<readonly (readonly unknown[])[]> {
  const rows = await page.evaluate(
    ([name, lastRow]) => {
      const worksheet = window.trialSession!.grid!.api.getActiveWorkbook()!.getSheetByName(name)!;
      const cells = worksheet.getRange(0, 0, lastRow, 10);
      const shown = cells.getDisplayValues() as string[][];
      return (cells.getRawValues() as unknown[][]).map((row, at) =>
        row.map((value, column) => (typeof value === "number" ? value : shown[at]![column])),
      );
    },
    [sheet, LAST_ROW] as const,
  );
  return rows.map((row) => row.map((value) => (typeof value === "string" ? readBack(value) : value)));
}

/** "9,999" and "34%" as numbers; a text that is none as it is. */
function readBack(shown: string): string | number {
  if (!/^-?[\d,]+(\.\d+)?%?$/.test(shown)) return shown;
  const number = Number(shown.replace(/[,%]/g, ""));
  return shown.endsWith("%") ? number / 100 : number;
}

/** The longest sheet here ends above it. */
const LAST_ROW = 200;

/** The value beside a label. */
function beside(rows: readonly (readonly unknown[])[], label: string): number {
  const row = rows.find(([first]) => first === label);
  if (row === undefined) throw new Error(`no row ${label}`);
  expect(typeof row[1]).toBe("number");
  return Number(row[1]);
}

const whole = (value: number): string => formatNumber(value, "#,##0");
const share = (value: number): string => formatNumber(value, "0%");

async function textOf(pane: Frame, section: string): Promise<string> {
  const text = await pane.getByRole("region", { name: section, exact: true }).first().textContent();
  return text ?? "";
}

test("the farmer finds the five cows to deal with first and what they cost one step after opening the pane", async () => {
  const pane = await show("Cells");
  const answer = pane.getByText(/^5 cows \(\d+(, \d+){4}\): \d+\.?\d* USD in 30 days/);
  await answer.waitFor();
  const { y, height } = (await answer.boundingBox())!;
  expect(y + height).toBeLessThan(860);
});

test("the bill in the sheet is the bill in the pane", async () => {
  const pane = await show("Cells");
  const rows = await put(pane, "What it costs", "Milk and money behind high counts");
  const [litres, money] = [beside(rows, "Milk lost over those days, litres"), beside(rows, "Its price")];
  expect(await pane.locator(".cells-first").textContent()).toBe(
    `About ${whole(money)} USD: ${whole(litres)} litres in 365 days.`,
  );
  const text = await textOf(pane, "What it costs");
  for (const level of ["low", "central", "high"]) {
    expect(text).toContain(whole(beside(rows, `milk lost, ${level}`)));
    expect(text).toContain(`${whole(beside(rows, `money lost, ${level}`))} USD`);
  }
  for (const part of ["of it first lactation", "of it later lactations"])
    expect(text).toContain(whole(beside(rows, part)));
});

test("the title of a block has room in its row", async () => {
  const height = await trial.page.evaluate(() =>
    window.trialSession!.grid!.api.getActiveWorkbook()!.getActiveSheet().getSheet().getRowHeight(0),
  );
  // 18 points are 24 pixels for the letters alone.
  expect(height).toBeGreaterThan(28);
});

test("the cows in the sheet are the cows in the pane, figure by figure", async () => {
  const pane = await show("Cells");
  const rows = await put(pane, "The cows behind most of it", "The cows behind most of it");
  const top = rows.findIndex(([first]) => first === "cow");
  const listed = rows.slice(top + 1, top + 6);
  const shown = await pane
    .locator(".cells .numbers tbody tr")
    .evaluateAll((trs) => trs.slice(0, 5).map((tr) => [...tr.children].map((cell) => cell.textContent)));
  expect(shown).toEqual(
    listed.map(([cow, count, loss, money, , tankShare, without]) => [
      String(cow),
      whole(Number(count)),
      formatNumber(Number(loss), "0.0"),
      whole(Number(money)),
      share(Number(tankShare)),
      whole(Number(without)),
    ]),
  );
  const without = rows.find(([label]) => String(label).startsWith("Tank without the milk of all"))!;
  expect(await textOf(pane, "The cows behind most of it")).toContain(
    `Without the milk of all 5 the tank would hold ${whole(Number(without[1]))} thousand/mL.`,
  );
});

test("what if, typed in the pane, is what if in the sheet", async () => {
  const pane = await show("Cells");
  await pane.getByRole("button", { name: "What if", exact: true }).click();
  await pane.getByLabel("Highest cows cured").fill("3");
  await pane.getByText("If the 3 highest cows").waitFor();
  const rows = await put(pane, "What if", "What if");
  const text = await textOf(pane, "What if");
  expect(text).toContain(`(${whole(beside(rows, "Litres lost with those cured"))} litres) would be left`);
  expect(text).toContain(`(${whole(beside(rows, "Litres lost with no cow above the count"))} litres) would be left`);
});

test("tank, changes, dry period, lame cows and limit in the sheet are those in the pane", async () => {
  const pane = await show("Cells");
  const tank = await put(pane, "The tank against the cows", "The tank against the average cow");
  const tankText = await textOf(pane, "The tank against the cows");
  for (const label of [
    "Tank as the cows foretell it, thousand cells/mL",
    "Plain mean of the cows",
    "Geometric mean: the usual cow",
  ])
    expect(tankText).toContain(`${whole(beside(tank, label))} thousand/mL`);

  for (const [section, title, names] of [
    ["Since the test before", "New, recovered and lasting cases", ["new", "recovered", "lasting", "high now"]],
    ["Over the dry period", "Over the dry period", ["new", "cured", "high both times", "first calvers high"]],
  ] as const) {
    const rows = await put(pane, section, title);
    const text = await textOf(pane, section);
    for (const name of names) {
      const [, cows, of, part, low, high] = rows.find(([first]) => first === name)!.map(Number);
      expect(text).toContain(`${cows} of ${of} `);
      expect(text).toContain(share(part!));
      expect(text).toContain(`${share(low!)} to ${share(high!)}`);
    }
  }

  const link = await put(pane, "Lame cows and high counts", "Lame cows and high counts");
  const linkText = await textOf(pane, "Lame cows and high counts");
  const lame = link.find(([first]) => first === "lame")!;
  expect(linkText).toContain(`Of ${Number(lame[3])} lame cows ${share(Number(lame[4]))} have a high count`);

  const limit = await put(pane, "The legal limit", "The rolling mean of three months");
  expect(await textOf(pane, "The legal limit")).toContain(
    `Rolling mean ${whole(beside(limit, "Rolling geometric mean, thousand cells/mL"))} thousand/mL`,
  );
});

test("where a block stands is told on, though the figures changed since and its part was closed", async () => {
  const pane = await show("Cells");
  await put(pane, "The tank against the cows", "The tank against the average cow");
  const part = pane.getByRole("region", { name: "The tank against the cows", exact: true }).first();
  await pane.getByLabel("Days like it").fill("100");
  await pane.getByText(/ litres in 100 days\./).waitFor();
  expect(await part.getByText(/^It stands on the sheet /).count()).toBe(1);
  const heading = part.getByRole("button", { name: "The tank against the cows", exact: true });
  await heading.click();
  expect(await part.getByText(/^It stands on the sheet /).isVisible()).toBe(false);
  await heading.click();
  expect(await part.getByText(/^It stands on the sheet /).isVisible()).toBe(true);
  await pane.getByLabel("Days like it").fill("365");
});

test("costs in the sheet are the costs in the pane", async () => {
  const pane = await show("Costs");
  const rows = await put(pane, "Lameness and cell counts side by side", "Lameness and cell counts side by side");
  const text = await textOf(pane, "Lameness and cell counts side by side");
  expect(text).toContain(`${whole(beside(rows, "Claw lesions: cost of the new cases of the period"))} USD`);
  expect(text).toContain(`${whole(beside(rows, "Milk behind high counts, over the days above"))} USD`);
  const table = await put(pane, "Claw lesions by cost", "What claw lesions cost");
  const byLesion = await textOf(pane, "Claw lesions by cost");
  const top = table.findIndex(([first]) => first === "Code");
  const priced = table.slice(top + 1).filter((row) => typeof row[4] === "number");
  expect(top).toBeGreaterThanOrEqual(0);
  expect(priced.length).toBeGreaterThan(0);
  for (const [, name, cases, perCase, cost] of priced) {
    expect(byLesion).toContain(`${String(name)}${whole(Number(cost))}`);
    expect(byLesion).toContain(`${Number(cases)} × ${Number(perCase)}`);
  }
});

test("the report in the sheet holds its figures as formulas, and they are those of the pane", async () => {
  const pane = await show("Report");
  await pane.getByRole("button", { name: "Write as a sheet" }).click();
  await pane.getByText("The report stands on sheet Visit 2026-09-01.").first().waitFor();
  await recomputed(trial.page);
  const rows = await valuesOf(trial.page, "Visit 2026-09-01");
  expect(rows[0]![0]).toBe("Visit report 2026-09-01");
  const value = (label: string): number => beside(rows, label);
  const text = await textOf(pane, "What was found, and what changed");
  expect(text).toContain(
    `Now ${whole(value("Tank estimate, since the visit before"))}; before ${whole(value("Tank estimate, before that"))}`,
  );
  const lameShare = value("of these lame, since the visit before") / value("Cows scored, since the visit before");
  expect(text).toContain(`Now ${share(lameShare)}`);
});
