import { readFileSync } from "node:fs";
import type { AxeResults } from "axe-core";
import type { Frame, Page } from "playwright-core";

const AXE = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
/** The rules of WCAG 2.2 at levels A and AA, and axe's own good practice. */
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
/** The smallest target of a finger, in pixels. Source: WCAG 2.2, 2.5.5 Target Size (Enhanced). */
export const TARGET_PX = 44;
/** Heights are whole pixels of the screen, which may be half a pixel of the page. */
const ROUNDING_PX = 0.5;

declare global {
  interface Window {
    axe: { run(context: Document, options: object): Promise<AxeResults> };
  }
}

/** What axe finds in a page, in short. The page must let a script in from outside, which the pane's own policy refuses. */
export async function axeFindings(page: Page | Frame): Promise<string[]> {
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(AXE);
  return page.evaluate(async (runOnly) => {
    // All rules are looked at; what passes them, and by which selector an element is found, nobody asks.
    const { violations } = await window.axe.run(document, { runOnly, resultTypes: ["violations"], selectors: false });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
  }, RULES);
}

/** Controls in view that are too low for a finger. A box to tick is as large as its label. */
export async function smallTargets(page: Page | Frame, within: string): Promise<string[]> {
  const controls = page.locator(`${within} :is(button, input:not([type=checkbox]), select, summary)`);
  return controls.evaluateAll(
    (elements, least) =>
      elements
        .filter((element) => element.checkVisibility() && element.getBoundingClientRect().height < least)
        .map(({ outerHTML }) => outerHTML),
    TARGET_PX - ROUNDING_PX,
  );
}

/** Pixels by which a page is wider than its window. */
export async function overhang(page: Page | Frame): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}
