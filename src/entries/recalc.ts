import { runRecalc } from "./recalc/run";

/**
 * `npm run recalc` computes a workbook anew without a spreadsheet program, says what it computed and what went wrong,
 * and writes the values or the workbook with them. With --check it lists the doubtful cells of many workbooks instead.
 */
async function main(): Promise<void> {
  // npm runs scripts in the project's folder and keeps the one in which they were called here.
  const folder = process.env["INIT_CWD"] ?? process.cwd();
  process.exitCode = await runRecalc(process.argv.slice(2), folder, {
    out: (text) => console.log(text),
    error: (line) => console.error(line),
  });
}

void main();
