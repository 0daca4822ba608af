import { chromium } from "playwright-core";

/** What keeps the browser from calling home, lets it run as root in a container, and draws without a graphics card. */
const QUIET = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--no-first-run",
];

/**
 * Switches of the package that suit a cloud function, not a test: one process for all, no walls between sites, and a
 * graphics card played by the processor, which works half a second on each picture of the grid.
 */
const UNSUITED =
  /^--(single-process|no-zygote|in-process-gpu|ignore-gpu-blocklist|disable-web-security|allow-running-insecure-content|disable-site-isolation-trials|headless)/;

/** A headless browser that tests can connect to: from the npm package on Linux, the installed Chrome or Edge elsewhere. */
export async function launchBrowser() {
  if (process.platform === "linux") {
    const { default: packaged } = await import("@sparticuz/chromium");
    packaged.setGraphicsMode = false;
    const executablePath = await packaged.executablePath();
    const args = packaged.args.filter((argument) => !UNSUITED.test(argument));
    return chromium.launchServer({ executablePath, args: [...args, ...QUIET] });
  }
  return chromium
    .launchServer({ channel: "chrome", args: QUIET })
    .catch(() => chromium.launchServer({ channel: "msedge", args: QUIET }));
}
