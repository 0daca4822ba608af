import { buildTrial, serveTrial } from "./trial-build/bundle";
import { openBrowser } from "./trial-build/open-browser";

/**
 * `npm start`: builds the trial page, serves it to this computer alone and opens it in the browser. `--no-open` only
 * prints the address; PORT asks for a port other than 3000.
 */
const DEFAULT_PORT = 3000;

async function main(): Promise<void> {
  console.log("Building the trial page. This takes a few seconds.");
  await buildTrial();
  const { address } = await serveTrial(Number(process.env["PORT"] ?? DEFAULT_PORT));
  console.log(`The herd workbook is open at ${address}`);
  console.log("Stop with Ctrl+C.");
  if (!process.env["CI"] && !process.argv.includes("--no-open")) openBrowser(address);
}

main().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
});
