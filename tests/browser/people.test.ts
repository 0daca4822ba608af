import { cellWhere, dayAfter, readTable } from "./sample";
import { recomputed, select, selected, shown, typeInto, waitUntilShown, trialForAllTests } from "./trial-page";

const trial = trialForAllTests();

const isDermatitis = (row: Readonly<Record<string, unknown>>): boolean => row["Lesion"] === "DD";

describe("who needs the rules as they are", () => {
  beforeAll(() => trial.startAnew());

  test("the secretary types a finding under the table and sees its recheck date, and her place on the list", async () => {
    const { page } = trial;
    const before = await readTable(page, "Findings", "Findings");
    const at = (heading: string): string => `${before.columns[heading]!}${before.lastRow + 1}`;
    const toCome = Number(await shown(page, "Due", "E6"));
    await select(page, "Findings", at("Date"));
    await page.keyboard.type("2026-09-01");
    await page.keyboard.press("Tab");
    await page.keyboard.type("318");
    await typeInto(page, "Findings", at("Foot"), "LH");
    await typeInto(page, "Findings", at("Lesion"), "DD");
    // Digital dermatitis is looked at again after 7 days: 1 September + 7.
    await waitUntilShown(page, "Findings", at("Recheck"), "2026-09-08");
    await waitUntilShown(page, "Findings", at("Status"), "in 7 d");
    expect(await shown(page, "Findings", at("Kind"))).toBe("infectious");
    expect((await readTable(page, "Findings", "Findings")).lastRow).toBe(before.lastRow + 1);
    expect(Number(await shown(page, "Due", "E6"))).toBe(toCome + 1);
  });
});

/** Each changes nothing, or cells that no other looks at: a rule, a price, a note. So they share one workbook. */
describe("who changes one thing", () => {
  beforeAll(() => trial.startAnew());

  test("the adviser changes a recheck interval and sees the dates move", async () => {
    const { page } = trial;
    const findings = await readTable(page, "Findings", "Findings");
    const rules = await readTable(page, "Rules", "Rules");
    const recheck = cellWhere(findings, "Recheck", isDermatitis);
    const treated = findings.rows.find(isDermatitis)!["Date"];
    expect(await shown(page, "Findings", recheck)).toBe(dayAfter(treated, 7));
    await typeInto(page, "Rules", cellWhere(rules, "First recheck (days)", isDermatitis), "5");
    await waitUntilShown(page, "Findings", recheck, dayAfter(treated, 5));
  });

  test("the farmer changes the price of milk and sees the yearly cost move with it", async () => {
    const { page } = trial;
    const prices = await readTable(page, "Prices", "Prices");
    const isMilk = (row: Readonly<Record<string, unknown>>): boolean => row["Item"] === "Milk";
    const raw = (address: string): Promise<number> =>
      page.evaluate((at) => {
        const sheet = window.trialSession!.grid!.api.getActiveWorkbook()!.getSheetByName("Cells")!;
        return Number(sheet.getRange(at).getRawValue());
      }, address);
    const litres = await raw("B8");
    expect(await raw("B9")).toBeCloseTo(litres * Number(prices.rows.find(isMilk)!["Price"]), 6);
    await typeInto(page, "Prices", cellWhere(prices, "Price", isMilk), "0.5");
    await recomputed(page);
    expect(await raw("B9")).toBeCloseTo(litres * 0.5, 6);
  });

  test("a lesion that is not on the list is refused with what to enter, and the keyboard stays with the cells", async () => {
    const { page } = trial;
    const lesion = cellWhere(await readTable(page, "Findings", "Findings"), "Lesion", isDermatitis);
    await typeInto(page, "Findings", lesion, "XX");
    const message = page.getByText("Lesion must be a code of the list");
    await message.waitFor();
    await page.getByRole("button", { name: "OK" }).click();
    await message.waitFor({ state: "detached" });
    expect(await shown(page, "Findings", lesion)).toBe("DD");
    const row = Number(lesion.slice(1));
    expect(await selected(page)).toBe(lesion);
    await page.keyboard.press("ArrowDown");
    expect(await selected(page)).toBe(`${lesion[0]!}${row + 1}`);
  });

  test("a reference to the own row can be typed as in any table", async () => {
    const { page } = trial;
    const findings = await readTable(page, "Findings", "Findings");
    const hasZone = ({ Zone }: Readonly<Record<string, unknown>>): boolean => typeof Zone === "number";
    const zone = Number(findings.rows.find(hasZone)!["Zone"]);
    const note = cellWhere(findings, "Note", hasZone);
    await typeInto(page, "Findings", note, "=[@Zone]+1");
    await waitUntilShown(page, "Findings", note, String(zone + 1));
  });

  test("what would not be saved is refused with a message", async () => {
    const { page } = trial;
    const before = await readTable(page, "Findings", "Findings");
    await page.evaluate(() => {
      window.trialSession!.grid!.api.getActiveWorkbook()!.getSheetByName("Findings")!.insertRowAfter(5);
    });
    await page.getByText("Only what cells hold can be changed here").waitFor();
    expect(await readTable(page, "Findings", "Findings")).toEqual(before);
  });
});
