import { cellWhere, readTable } from "./sample";
import { recomputed, select, trialForAllTests, typeInto } from "./trial-page";

// The cells that are typed into stand apart from what the other tests explain.
const trial = trialForAllTests();

/** The section under a heading. */
function section(title: string | RegExp) {
  return trial.pane.getByRole("region", { name: title });
}

async function explain(sheet: string, address: string): Promise<void> {
  await select(trial.page, sheet, address);
  await trial.pane.getByText(`${sheet}, ${address}`, { exact: true }).waitFor();
}

test("a cell without a HERD function points to where to go", async () => {
  await explain("Start", "A1");
  await trial.pane.getByText("Select a cell with a HERD function in it.").waitFor();
  expect(await trial.pane.getByRole("region").count()).toBe(0);
});

test("a figure in a table shows inputs, working, result, sources, limits and cautions", async () => {
  const findings = await readTable(trial.page, "Findings", "Findings");
  const at = cellWhere(findings, "Recheck", (row) => row["Lesion"] === "SU");
  await explain("Findings", at);
  await section("HERD.RECHECK.DATE").waitFor();
  expect(await section("Result").textContent()).toMatch(/\d{4}-\d\d-\d\d/);
  const inputs = await section("Inputs").textContent();
  expect(inputs).toMatch(/lesionFindings\[@Lesion\]SU/);
  expect(inputs).toMatch(/treatedOnFindings\[@Date\]\d{4}-\d\d-\d\d/);
  expect(inputs).toContain("5 rows under Lesion, First recheck (days)");
  expect(inputs).toContain("left out: 1, the first recheck");
  expect(await section("Working").textContent()).toMatch(/Recheck\d{4}-\d\d-\d\d \+ 7 days/);
  expect(await section("Sources").textContent()).toMatch(/Thomas et al\. 2015.*read in the source/);
  expect(await section("Take care").textContent()).toContain("veterinarian");
  expect(await section("What it cannot tell").count()).toBe(1);
});

test("a figure over columns sums them up, with rows used and left out", async () => {
  await explain("Cells", "B8");
  await section("HERD.CELL.HERDLOSS").waitFor();
  expect(await section("Result").textContent()).toContain("litres");
  expect(await section("Inputs").textContent()).toMatch(/\d+ rows: \d+ with a value, \d+ left out \(\d+ blank/);
});

test("a filled cell says which formula fills it, and what it is in the result", async () => {
  await explain("Due", "C12");
  await section("HERD.RECHECK.LIST").waitFor();
  const result = await section("Result").textContent();
  expect(result).toContain("Filled from A11.");
  expect(result).toContain("This cell is row 1");
});

test("an error says its message and which input to mend", async () => {
  await typeInto(trial.page, "Start", "F30", '=HERD.RECHECK.DATE("SX",DATE(2026,9,1))');
  await recomputed(trial.page);
  await explain("Start", "F30");
  const error = section("No result: #N/A");
  await error.waitFor();
  expect(await error.textContent()).toContain("Mend the input lesion.");
  expect(await section("Inputs").textContent()).toContain("To mend:");
});

test("of several functions in one formula the user chooses, by keyboard too", async () => {
  await typeInto(trial.page, "Start", "F31", "=HERD.CELL.SCORE(400)-HERD.CELL.SCORE(100)");
  await recomputed(trial.page);
  await explain("Start", "F31");
  const choice = trial.pane.getByRole("radio");
  await choice.first().waitFor();
  expect(await choice.count()).toBe(2);
  // Two doublings above 100 thousand, which has the score 3.
  expect(await section("Result").textContent()).toContain("5.0");
  await choice.first().focus();
  await trial.page.keyboard.press("ArrowDown");
  await section("Result").getByText("3.0").waitFor();
});

test("the figure explained follows a recalculation", async () => {
  const { page, pane } = trial;
  await typeInto(page, "Start", "F32", "100");
  await typeInto(page, "Start", "F33", "=HERD.CELL.SCORE(F32)");
  await recomputed(page);
  await explain("Start", "F33");
  await section("Result").getByText("3.0").waitFor();
  await page.evaluate(() => {
    window.trialSession!.grid!.api.getActiveWorkbook()!.getSheetByName("Start")!.getRange("F32").setValue(200);
  });
  await section("Result").getByText("4.0").waitFor();
  expect(await pane.getByRole("status").textContent()).toBe("Start, F33: HERD.CELL.SCORE: 4.0 score");
});
