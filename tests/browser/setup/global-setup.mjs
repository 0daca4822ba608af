import { spawn } from "node:child_process";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { launchBrowser } from "./browser.mjs";
import { buildPages } from "./build-pages.mjs";

const ROOT = fileURLToPath(new URL("../../..", import.meta.url));

/**
 * Builds and serves the trial page with the command that users type, builds the pages of the tests' own, and starts a
 * browser for each of the runner's workers.
 */
export default async function setUp({ maxWorkers }) {
  const launching = Array.from({ length: maxWorkers }, launchBrowser);
  const [trial, browsers] = await Promise.all([startTrial(), Promise.all(launching), buildPages()]);
  process.env.TRIAL_ADDRESS = trial.address;
  process.env.BROWSERS = browsers.map(({ address }) => address).join();
  globalThis.stopBrowserTests = async () => {
    await Promise.all(browsers.map(({ browser }) => browser.close()));
    trial.process.kill();
  };
}

async function startTrial() {
  const child = spawn(process.execPath, ["--import", "tsx", "src/entries/start.ts", "--no-open"], {
    cwd: ROOT,
    env: { ...process.env, PORT: "0" },
    stdio: ["ignore", "pipe", "inherit"],
  });
  for await (const line of createInterface({ input: child.stdout })) {
    const address = /http:\/\/\S+/.exec(line)?.[0];
    if (address) return { address, process: child };
  }
  throw new Error("the trial page did not start");
}
