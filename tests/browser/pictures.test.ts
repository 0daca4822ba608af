import type { Page } from "playwright-core";
import { TestPage } from "./test-page";
import { axeFindings, overhang } from "./well-made";

/** The build may take long on a small machine. */
const SLOW = 180_000;
const SHOTS = process.env["SHOTS"];

let pages: TestPage;
beforeAll(async () => {
  pages = await TestPage.start({ name: "pictures-page", today: new Date("2026-09-01T07:00:00") });
}, SLOW);
afterAll(() => pages.close());

/** Texts of pictures that lie on each other or run out of the page. */
function collisions(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const texts = [...document.querySelectorAll("svg text")].filter((text) => text.checkVisibility());
    const boxes = texts.map((text) => ({ text: text.textContent, box: text.getBoundingClientRect() }));
    return boxes.flatMap(({ text, box }, index) => {
      const out = box.left < 0 || box.right > window.innerWidth ? [`${text} runs out`] : [];
      const hit = boxes.slice(index + 1).filter(({ box: other }) => {
        return box.left < other.right && other.left < box.right && box.top < other.bottom && other.top < box.bottom;
      });
      return [...out, ...hit.map((other) => `${text} lies on ${other.text}`)];
    });
  });
}

test.each([
  ["light", 350],
  ["dark", 350],
  ["light", 320],
  // 350 pixels at a zoom of 200 %.
  ["dark", 175],
] as const)(
  "in %s at %d px pictures are legible and open to all",
  async (colorScheme, width) => {
    const { page, errors } = await pages.open("", { colorScheme, viewport: { width, height: 900 }, bypassCSP: true });
    await page.locator("figure").last().waitFor();
    if (SHOTS !== undefined)
      await page.screenshot({ path: `${SHOTS}/pictures-${colorScheme}-${width}.png`, fullPage: true });
    expect(await collisions(page)).toEqual([]);
    for (const details of await page.getByText("Show the numbers").all()) await details.click();
    expect(await axeFindings(page)).toEqual([]);
    expect(await overhang(page)).toBe(0);
    expect(errors).toEqual([]);
    await page.context().close();
  },
  SLOW,
);

test(
  "the policy of the page refuses nothing, and each picture has its text and its numbers",
  async () => {
    const { page, errors } = await pages.open();
    await page.locator("figure").last().waitFor();
    const figure = page.getByRole("figure", { name: "Lesions against targets" });
    expect(await figure.textContent()).toContain("Highest: Digital dermatitis, 34.1 new cases per 100 cow-years");
    await figure.getByText("Show the numbers").click();
    const cells = await figure.getByRole("row", { name: /White line/ }).allInnerTexts();
    expect(cells.map((text) => text.split(/\s*\t\s*/))).toEqual([
      ["White line disease", "11.4", "7.9", "15.8", "12.7"],
    ]);
    expect(errors).toEqual([]);
    await page.context().close();
  },
  SLOW,
);
