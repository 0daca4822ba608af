import { type Browser, chromium } from "playwright-core";

/** The browser of the runner's worker that this test runs in. */
export function ownBrowser(): Promise<Browser> {
  const addresses = process.env["BROWSERS"]!.split(",");
  return chromium.connectOverCDP(addresses[Number(process.env["JEST_WORKER_ID"]) - 1]!);
}
