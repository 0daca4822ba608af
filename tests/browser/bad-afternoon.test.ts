import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { cowField, openRecord, press } from "./at-the-chute";
import { readTable } from "./sample";
import { trialForAllTests } from "./trial-page";

/** 1 September 2026, the day of the sample: by the JS Date, which the pane does not use. */
const TODAY = (Date.UTC(2026, 8, 1) - Date.UTC(1899, 11, 30)) / 86_400_000;

const trial = trialForAllTests();

/** Days after which an earlier finding is no longer asked about. */
const LONG_AGO_DAYS = 120;

/** Cows that are in the herd and have no finding of late, by which nothing asks back. */
async function quietCows(page: Page): Promise<readonly unknown[]> {
  const cows = await readTable(page, "Cows", "Cows");
  const findings = await readTable(page, "Findings", "Findings");
  const late = findings.rows.filter(({ Date: day }) => Number(day) > TODAY - LONG_AGO_DAYS);
  const known = new Set(late.map(({ Cow }) => Cow));
  const here = cows.rows.filter(({ Left }) => Left === null || Left === undefined || Left === "");
  return here.map(({ Cow }) => Cow).filter((cow) => !known.has(cow));
}

describe("a bad afternoon", () => {
  const ULCER = "2lh⏎⏎o4⏎su⏎2";
  const rowsOfFindings = async (): Promise<number> => (await readTable(trial.page, "Findings", "Findings")).rows.length;
  const said = (text: string | RegExp) => trial.pane.getByText(text).first().waitFor();
  const save = () => trial.pane.getByRole("button", { name: "Save", exact: true }).click();
  const lesion = () => trial.pane.getByRole("combobox", { name: "Disorder" }).inputValue();

  test("mistakes of typing are named and nothing is saved until they are mended", async () => {
    await trial.startAnew();
    const { page, pane } = trial;
    await openRecord(pane);
    const [cow, other] = await quietCows(page);
    const rows = await rowsOfFindings();
    await pane.locator("details.visit summary").click();
    await pane.getByRole("radio", { name: "where the horn turns hard" }).click();

    await cowField(pane).focus();
    await press(page, "99999⏎");
    await said("The table Cows has no 99999. Check the number.");
    await cowField(pane).fill(String(cow));
    await press(page, `⏎${ULCER}`);

    await pane.getByLabel("Inner toe, mm").fill("7.5");
    await save();
    await said("7.5 looks like cm. Is it 75 mm?");
    await pane.getByLabel("Inner toe, mm").fill("75");

    await pane.getByLabel("Date").fill("2026-09-05");
    await save();
    await said("Date must be no later than today, 2026-09-01; got 2026-09-05.");
    await pane.getByLabel("Date").fill("2026-09-01");
    expect(await rowsOfFindings()).toBe(rows);
    await save();
    await pane.getByRole("heading", { name: `Saved. Cow ${String(cow)}, 1 finding` }).waitFor();
    expect(await rowsOfFindings()).toBe(rows + 1);

    await cowField(pane).focus();
    await press(page, `${String(cow)}⏎`);
    await said("Already entered on this day: LH outer SU.");
    await pane.getByRole("button", { name: "Clear" }).click();

    // The pane is closed halfway and opened again.
    await cowField(pane).focus();
    await press(page, `${String(other)}⏎${ULCER}`);
    await page.evaluate(() => (document.getElementById("pane") as HTMLIFrameElement).contentWindow!.location.reload());
    await said(`You were entering cow ${String(other)}`);
    await pane.getByRole("button", { name: "Go on with it" }).click();
    expect(await lesion()).toBe("SU");
  });

  test("a protected sheet is named, and the draft is kept", async () => {
    const parts = unzipSync(readFileSync(join(__dirname, "../../sample-workbooks/herd-workbook.xlsx")));
    for (const name of Object.keys(parts).filter((part) => /worksheets\/sheet\d+\.xml$/.test(part))) {
      const guarded = strFromU8(parts[name]!).replace("</sheetData>", '</sheetData><sheetProtection sheet="1"/>');
      parts[name] = strToU8(guarded);
    }
    const buffer = Buffer.from(zipSync(parts));
    await trial.startAnew({ name: "guarded.xlsx", mimeType: "application/octet-stream", buffer });
    const { page, pane } = trial;
    await openRecord(pane);
    const [cow] = await quietCows(page);
    await cowField(pane).focus();
    await press(page, `${String(cow)}⏎2lho4⏎su⏎2`);
    await save();
    await said("Sheet Findings is protected: unprotect it under Review, then try again.");
    expect(await lesion()).toBe("SU");
  });

  test("a table that was given another name is named, and the draft is kept", async () => {
    await trial.startAnew();
    const { page, pane } = trial;
    await openRecord(pane);
    const [cow] = await quietCows(page);
    await cowField(pane).focus();
    await press(page, `${String(cow)}⏎2lho4⏎su⏎2`);
    // The grid's own command is refused in the trial, where it could not be saved; Excel lets anyone do it.
    await page.evaluate(() => {
      const { api } = window.trialSession!.grid!;
      const workbook = api.getActiveWorkbook()!;
      const sheet = workbook.getSheetByName("Findings")!;
      const { id } = sheet.getSubTableInfos().find(({ name }) => name === "Findings")!;
      return api.executeCommand("sheet.mutation.set-sheet-table", {
        unitId: workbook.getId(),
        subUnitId: sheet.getSheetId(),
        tableId: id,
        config: { name: "HoofFindings" },
      });
    });
    await save();
    await said(/^The workbook has no table Findings any more: it was deleted or renamed\./);
    expect(await lesion()).toBe("SU");
  });
});
