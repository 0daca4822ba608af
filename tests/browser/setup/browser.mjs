import { createServer } from "node:net";
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
  // Room for objects that live a moment, as the tests' own processes have it: the grid makes many.
  "--js-flags=--max-semi-space-size=64",
];

/**
 * Switches of the package that suit a cloud function, not a test: one process for all, no walls between sites, and a
 * graphics card played by the processor, which works half a second on each picture of the grid.
 */
const UNSUITED =
  /^--(single-process|no-zygote|in-process-gpu|ignore-gpu-blocklist|disable-web-security|allow-running-insecure-content|disable-site-isolation-trials|headless)/;

/**
 * A headless browser: from the npm package on Linux, the installed Chrome or Edge elsewhere. Tests speak with it at the
 * address, without a process in between that would read every message a second time.
 */
export async function launchBrowser() {
  const port = await freePort();
  return { browser: await launch([...QUIET, `--remote-debugging-port=${port}`]), address: `http://127.0.0.1:${port}` };
}

async function launch(wanted) {
  if (process.platform === "linux") {
    const { default: packaged } = await import("@sparticuz/chromium");
    packaged.setGraphicsMode = false;
    const executablePath = await packaged.executablePath();
    const args = packaged.args.filter((argument) => !UNSUITED.test(argument));
    return chromium.launch({ executablePath, args: [...args, ...wanted] });
  }
  return chromium
    .launch({ channel: "chrome", args: wanted })
    .catch(() => chromium.launch({ channel: "msedge", args: wanted }));
}

function freePort() {
  const server = createServer();
  return new Promise((resolve) => {
    server.listen(0, "127.0.0.1", () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}
