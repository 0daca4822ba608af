import { readFileSync } from "node:fs";
import { serveToExcel } from "../../src/entries/excel-build/serve";

/** The command as a user runs it, with a certificate that no system has to trust. */
const [folder, certificate, key] = process.argv.slice(2) as [string, string, string];
const credentials = (): Promise<object> => Promise.resolve({ cert: readFileSync(certificate), key: readFileSync(key) });
const terminal = { say: (line: string) => console.log(line), complain: (line: string) => console.error(line) };
void serveToExcel(["--folder", folder], credentials, terminal).then((server) => {
  if (server === undefined) process.exitCode = 1;
});
