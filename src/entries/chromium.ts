import { type Browser, chromium } from "playwright-core";

/** A headless browser: the one from the npm package on Linux, the installed Chrome or Edge elsewhere. */
export async function openChromium(): Promise<Browser> {
  if (process.platform !== "linux") return openInstalled();
  const { default: packaged } = await import("@sparticuz/chromium");
  return chromium.launch({ executablePath: await packaged.executablePath(), args: packaged.args });
}

async function openInstalled(): Promise<Browser> {
  return chromium.launch({ channel: "chrome" }).catch(() => chromium.launch({ channel: "msedge" }));
}
