import { getHttpsServerOptions } from "office-addin-dev-certs";
import { serveToExcel } from "./excel-build/serve";

/**
 * `npm run excel` builds for this machine and serves it to Excel over https. With `--development` it is the edition
 * that can be installed beside a release.
 */
async function main(args: readonly string[]): Promise<void> {
  const terminal = { say: (line: string) => console.log(line), complain: (line: string) => console.error(line) };
  const server = await serveToExcel(args, () => getHttpsServerOptions(), terminal);
  if (server === undefined) process.exitCode = 1;
}

main(process.argv.slice(2)).catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
});
