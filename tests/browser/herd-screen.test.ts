import type { Page } from "playwright-core";
import type { FiguresPage } from "./figures-page/entry";
import { TestPage } from "./test-page";
import { axeFindings, overhang, smallTargets } from "./well-made";

declare global {
  interface Window {
    figures: FiguresPage;
  }
}

/** The build may take long on a small machine. */
const SLOW = 240_000;
const SHOTS = process.env["SHOTS"];

let pages: TestPage;
beforeAll(async () => {
  pages = await TestPage.start({ name: "figures-page", today: new Date("2026-09-01T07:00:00") });
}, SLOW);
afterAll(() => pages.close());

async function openScreen(page: Page): Promise<void> {
  await page.waitForFunction(() => "figures" in window);
  await page.evaluate(() => window.figures.open("herd"));
  await page.locator('.herd[aria-busy="false"] section').last().waitFor();
}

async function openSections(page: Page): Promise<void> {
  const closed = page.locator('.herd h2 button[aria-expanded="false"]');
  while ((await closed.count()) > 0) await closed.first().click();
}

describe.each([
  ["light", 350],
  ["dark", 350],
  ["light", 320],
  // 350 pixels at a zoom of 200 %.
  ["dark", 175],
] as const)("in %s at %d px", (colorScheme, width) => {
  test(
    "axe finds nothing in any section, targets are large enough and nothing runs out at the side",
    async () => {
      const { page, errors } = await pages.open("", {
        colorScheme,
        viewport: { width, height: 900 },
        bypassCSP: true,
      });
      await openScreen(page);
      await openSections(page);
      if (SHOTS !== undefined)
        await page.screenshot({ path: `${SHOTS}/herd-${colorScheme}-${width}.png`, fullPage: true });
      expect(await axeFindings(page)).toEqual([]);
      expect(await smallTargets(page, ".herd")).toEqual([]);
      expect(await overhang(page)).toBe(0);
      expect(errors).toEqual([]);
      await page.context().close();
    },
    SLOW,
  );
});

test(
  "by keyboard: choose a time, open a section, show its numbers",
  async () => {
    const { page, errors } = await pages.open();
    await openScreen(page);
    await page.keyboard.press("Tab");
    expect(await page.locator(":focus").evaluate((element) => element.tagName)).toBe("SELECT");
    await page.keyboard.press("ArrowDown");
    await page.getByText("2026-01-01 to 2026-08-31, both days included.").waitFor();
    // Past the choice of cows to the first section.
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    const coverage = page.getByRole("region", { name: /How many cows were looked at/ });
    await coverage.getByText("Milking cows on the last day").waitFor();
    for (let pressed = 0; pressed < 4; pressed++) {
      await page.keyboard.press("Tab");
      if ((await page.locator(":focus").textContent()) === "Show the numbers") break;
    }
    await page.keyboard.press("Enter");
    await page.getByRole("table", { name: /new cases by lesion/ }).waitFor();
    expect(errors).toEqual([]);
    await page.context().close();
  },
  SLOW,
);

test(
  "own dates that are no time are told at their place, and mended bring the figures back",
  async () => {
    const { page } = await pages.open();
    await openScreen(page);
    await page.getByLabel("Time", { exact: true }).selectOption("own dates");
    await page.getByLabel("First day").fill("2026-09-20");
    await page.getByText("The first day, 2026-09-20, lies after the last, 2026-08-31.").waitFor();
    await page.getByLabel("First day").fill("2026-06-01");
    await page.getByText("2026-06-01 to 2026-08-31, both days included.").waitFor();
    await page.locator(".herd-first").waitFor();
    await page.context().close();
  },
  SLOW,
);
