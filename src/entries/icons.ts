import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Browser, chromium } from "playwright-core";

/** `npm run icons` draws the icon at the sizes that Excel asks for; run it after a change of icon.svg. */
const ICONS = join(__dirname, "../../manifest/icons");
const SIZES = [16, 20, 24, 32, 40, 48, 64, 80, 96, 128];

async function main(): Promise<void> {
  const drawing = readFileSync(join(ICONS, "icon.svg"), "utf8");
  const browser = await openBrowser();
  const page = await browser.newPage();
  for (const size of SIZES) {
    await page.setViewportSize({ width: size, height: size });
    await page.setContent(`<style>html,body{margin:0}svg{display:block;width:${size}px}</style>${drawing}`);
    await page.screenshot({ path: join(ICONS, `icon-${size}.png`), omitBackground: true });
  }
  await browser.close();
  // A test compares this with the drawing, so that a changed drawing is not forgotten.
  writeFileSync(join(ICONS, "drawn-from.sha256"), `${createHash("sha256").update(drawing).digest("hex")}\n`);
}

/** The browser of the npm package on Linux, the installed one elsewhere. */
async function openBrowser(): Promise<Browser> {
  if (process.platform !== "linux") return chromium.launch({ channel: "chrome" });
  const { default: packaged } = await import("@sparticuz/chromium");
  return chromium.launch({ executablePath: await packaged.executablePath(), args: packaged.args });
}

void main();
