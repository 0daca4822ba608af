import { chromium } from "playwright-core";

/** What keeps the browser from calling home and lets it run as root in a container. */
const QUIET = [
  "--no-sandbox",
  "--disable-quic",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--no-first-run",
];

/** A headless browser that tests can connect to: from the npm package on Linux, the installed Chrome or Edge elsewhere. */
export async function launchBrowser() {
  if (process.platform === "linux") {
    const { default: packaged } = await import("@sparticuz/chromium");
    const executablePath = await packaged.executablePath();
    return chromium.launchServer({ executablePath, args: [...packaged.args, ...QUIET] });
  }
  return chromium
    .launchServer({ channel: "chrome", args: QUIET })
    .catch(() => chromium.launchServer({ channel: "msedge", args: QUIET }));
}
