import { readFileSync } from "node:fs";
import { generateCertificates } from "office-addin-dev-certs";
import { serveToExcel } from "../../src/entries/excel-build/serve";

/** The command as a user runs it, with a certificate that is made here and that no system has to trust. */
const [folder, authority, certificate, key] = process.argv.slice(2) as [string, string, string, string];
const terminal = { say: (line: string) => console.log(line), complain: (line: string) => console.error(line) };
async function credentials(): Promise<object> {
  await generateCertificates(authority, certificate, key, 1);
  return { cert: readFileSync(certificate), key: readFileSync(key) };
}
void serveToExcel(["--folder", folder], credentials, terminal).then((server) => {
  if (server === undefined) process.exitCode = 1;
});
