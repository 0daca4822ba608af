import { registry } from "../../src/functions/registry";
import { readWorkbook } from "../../src/xlsx/read";
import { dayAfter, readTable } from "./sample";
import { recomputed, trialForAllTests } from "./trial-page";

/**
 * The whole way: the pane's screens on the workbook in the grid, as in the trial page. One workbook serves all: a cow
 * recorded is taken back, the finding closed is another cow's, and the list stands on a sheet of its own.
 */
const trial = trialForAllTests();
beforeEach(() => trial.startPaneAnew());

test("a cow recorded in the pane stands in the grid with her recheck date, and is gone again when taken back", async () => {
  const { page, pane } = trial;
  const before = await readTable(page, "Findings", "Findings");
  await pane.getByRole("tab", { name: "Record" }).click();
  await pane.getByRole("combobox", { name: "Cow" }).focus();
  for (const key of ["3", "2", "1", "Enter", "2", "l", "h", "o", "4", "Enter", "s", "u", "Enter", "2", "s"]) {
    await page.keyboard.press(key);
  }
  await pane.getByRole("heading", { name: "Saved. Cow 321, 1 finding" }).waitFor();
  await recomputed(page);
  const after = await readTable(page, "Findings", "Findings");
  expect(after.rows).toHaveLength(before.rows.length + 1);
  const row = after.rows.at(-1)!;
  expect(row).toMatchObject({ Cow: 321, Foot: "LH", Claw: "outer", Zone: 4, Lesion: "SU" });
  // The visit is on the day that the workbook counts from; the Rules of the sample look at a sole ulcer after 7 days.
  expect(dayAfter(row["Date"], 0)).toBe("2026-09-01");
  expect(dayAfter(row["Recheck"], 0)).toBe("2026-09-08");

  await pane.getByRole("button", { name: "Take back: Cow 321, 1 finding" }).click();
  await pane.getByRole("heading", { name: "Last saves" }).waitFor({ state: "detached" });
  await recomputed(page);
  expect((await readTable(page, "Findings", "Findings")).rows).toEqual(before.rows);
});

test("an outcome given under Due closes the finding in the grid", async () => {
  const { page, pane } = trial;
  const open = (rows: readonly Readonly<Record<string, unknown>>[]) =>
    rows.filter((row) => row["Cow"] === 461 && row["Lesion"] === "SU" && !row["Closed on"]).length;
  const before = await readTable(page, "Findings", "Findings");
  expect(open(before.rows)).toBe(1);
  await pane.getByRole("tab", { name: "Due" }).click();
  await pane
    .getByRole("button", { name: /461.*first recheck/s })
    .first()
    .click();
  await pane.getByRole("button", { name: /^Healed/ }).click();
  await pane
    .getByRole("button", { name: /^Take back/ })
    .first()
    .waitFor();
  await recomputed(page);
  expect(open((await readTable(page, "Findings", "Findings")).rows)).toBe(0);
});

test("a list written as a sheet is in the saved copy", async () => {
  const { page, pane } = trial;
  await pane.getByRole("tab", { name: "Due" }).click();
  await pane.getByRole("button", { name: "Write as a sheet" }).click();
  await pane.getByText("The list stands on sheet Due 2026-09-01.").last().waitFor();
  const [download] = await Promise.all([page.waitForEvent("download"), page.click("#save")]);
  const pieces: Buffer[] = [];
  for await (const piece of await download.createReadStream()) pieces.push(piece as Buffer);
  const ids = registry.map(({ id }) => id);
  const sheet = readWorkbook(Buffer.concat(pieces), ids).sheets.find(({ name }) => name === "Due 2026-09-01")!;
  expect(sheet.cells.some(({ value }) => value === "first recheck")).toBe(true);
  expect(sheet.tables).toHaveLength(1);
});
