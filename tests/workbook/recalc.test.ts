import { spawnSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { zipSync } from "fflate";
import { runRecalc } from "../../src/entries/recalc/run";
import { readWorkbook } from "../../src/xlsx/read";
import { handMade, handMadeParts } from "./hand-made";

jest.setTimeout(120_000);

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "recalc-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const WORKBOOK = handMade({
  metadata: true,
  sheets: {
    Herd:
      '<row r="1"><c r="A1"><v>200</v></c><c r="B1"><f>_xldudf_HERD_CELL_SCORE(A1)</f><v>0</v></c><c r="C1"><f>HERD.CELL.SCORE(A1)</f></c>' +
      '<c r="D1" cm="1"><f t="array" ref="D1">_xlfn.SEQUENCE(2)</f><v>1</v></c></row>' +
      '<row r="2"><c r="A2"><v>-5</v></c><c r="B2"><f>_xldudf_HERD_CELL_SCORE(A2)</f></c><c r="C2" t="b"><v>1</v></c></row>' +
      '<row r="3"><c r="A3" t="e"><v>#N/A</v></c><c r="B3"><f>1/0</f></c><c r="C3"><f>_xldudf_HERD_NO_SUCH(1)</f></c></row>' +
      '<row r="4"><c r="B4"><f>_xldudf_HERD_CELL_SCORE(Z9)</f></c><c r="C4" t="str"><f>IF(1,"")</f></c></row>',
  },
});

function put(name: string, bytes: Uint8Array | string = WORKBOOK): string {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
}

interface Outcome {
  readonly code: number;
  readonly out: string;
  readonly error: string;
}

async function recalc(...argv: readonly string[]): Promise<Outcome> {
  const out: string[] = [];
  const errors: string[] = [];
  const code = await runRecalc(argv, folder, { out: (text) => out.push(text), error: (line) => errors.push(line) });
  return { code, out: out.join("\n"), error: errors.join("\n") };
}

describe("npm run recalc", () => {
  test("says what it computed and what went wrong", async () => {
    const { code, out, error } = await recalc(put("herd.xlsx"));
    expect([code, error]).toEqual([0, ""]);
    expect(out).toMatch(/^herd\.xlsx: 10 cells computed, 5 errors$/m);
    expect(out).toMatch(/Herd {2}10 cells computed, 5 errors/);
    expect(out).toMatch(/B2 #VALUE!: count must be .*-5/);
    expect(out).toMatch(/B3 #DIV\/0!: something is divided by zero/);
    expect(out).toMatch(/C3 #NAME\?: no such function: _xldudf_HERD_NO_SUCH/);
    expect(out).toMatch(/B4 #N\/A: count is blank: enter/);
  });

  test("a workbook without a formula computes nothing, and the script ends well", () => {
    const path = put(
      "typed.xlsx",
      handMade({ sheets: { Herd: '<row r="1"><c r="A1"><v>200</v></c><c r="B1" t="e"><v>#N/A</v></c></row>' } }),
    );
    const script = join(__dirname, "../../src/entries/recalc.ts");
    const { status, stdout, stderr } = spawnSync(process.execPath, ["--import", "tsx", script, path], {
      encoding: "utf8",
    });
    expect([status, stderr]).toEqual([0, ""]);
    expect(stdout).toMatch(/^typed\.xlsx: 0 cells computed, 1 error$/m);
  });

  test("writes every cell that is not empty as JSON, the filled ones too", async () => {
    await recalc(put("herd.xlsx"), "--json", "values.json");
    const { Herd: cells } = JSON.parse(readFileSync(join(folder, "values.json"), "utf8")) as Record<
      string,
      Record<string, unknown>
    >;
    // The score of 200 thousand is 4 (Ali & Shook 1980).
    expect(cells).toMatchObject({ A1: 200, B1: 4, C1: 4, D1: 1, D2: 2, A2: -5, C2: true, C4: "" });
    expect(cells?.["A3"]).toMatchObject({ error: "#N/A" });
    expect(cells?.["B2"]).toEqual({ error: "#VALUE!", message: expect.stringContaining("got -5") });
    expect(cells?.["B3"]).toEqual({ error: "#DIV/0!", message: expect.any(String) });
    expect(Object.keys(cells ?? {}).sort()).toEqual([
      "A1",
      "A2",
      "A3",
      "B1",
      "B2",
      "B3",
      "B4",
      "C1",
      "C2",
      "C3",
      "C4",
      "D1",
      "D2",
    ]);
  });

  test("saves the workbook with fresh values beside the original", async () => {
    const original = put("herd.xlsx");
    const { code } = await recalc("herd.xlsx", "--save", "fresh.xlsx");
    expect(code).toBe(0);
    expect(readFileSync(original).equals(WORKBOOK)).toBe(true);
    const cells = readWorkbook(readFileSync(join(folder, "fresh.xlsx")), ["CELL.SCORE"]).sheets[0]!.cells;
    expect(cells.find(({ row, column }) => row === 0 && column === 1)?.value).toBe(4);
    expect(cells.find(({ row, column }) => row === 1 && column === 3)?.value).toBe(2);
    expect(readdirSync(folder).sort()).toEqual(["fresh.xlsx", "herd.xlsx"]);
  });
});

describe("writing over the workbook itself", () => {
  test("only where it is asked for", async () => {
    const original = put("herd.xlsx");
    symlinkSync(original, join(folder, "link.xlsx"));
    linkSync(original, join(folder, "hard.xlsx"));
    for (const target of ["herd.xlsx", "./herd.xlsx", "link.xlsx", "hard.xlsx"]) {
      const { code, error } = await recalc("herd.xlsx", "--save", target);
      expect([code, error]).toEqual([1, expect.stringContaining("add --replace")]);
    }
    expect(readFileSync(original).equals(WORKBOOK)).toBe(true);
  });

  test("keeps the file's rights, and a link a link", async () => {
    const original = put("herd.xlsx");
    chmodSync(original, 0o640);
    symlinkSync(original, join(folder, "link.xlsx"));
    const { code } = await recalc("link.xlsx", "--save", "link.xlsx", "--replace");
    expect(code).toBe(0);
    expect(statSync(original).mode & 0o777).toBe(0o640);
    expect(readFileSync(original).equals(WORKBOOK)).toBe(false);
    expect(readdirSync(folder).sort()).toEqual(["herd.xlsx", "link.xlsx"]);
  });

  test("not while a spreadsheet program has it open", async () => {
    const original = put("herd.xlsx");
    put("~$herd.xlsx", "");
    const { code, error } = await recalc("herd.xlsx", "--save", "herd.xlsx", "--replace");
    expect([code, error]).toEqual([1, expect.stringContaining("has it open")]);
    expect(readFileSync(original).equals(WORKBOOK)).toBe(true);
  });
});

/** First bytes of an OLE compound file, in which .xls workbooks and encrypted ones are kept ([MS-CFB] 2.2). */
const COMPOUND = Buffer.from("d0cf11e0a1b11ae1", "hex");

/** A workbook with one wrong digit in a cell that is packed as it stands, which only its checksum tells. */
function flipped(): Uint8Array {
  const plain = zipSync(handMadeParts({ sheets: { A: '<row r="1"><c r="A1"><v>4711</v></c></row>' } }), { level: 0 });
  const at = Buffer.from(plain).indexOf("4711");
  plain[at] = "9".charCodeAt(0);
  return plain;
}

describe("files that cannot be computed", () => {
  const cases: readonly (readonly [what: string, name: string, content: () => Uint8Array | string, says: RegExp])[] = [
    ["an empty file", "empty.xlsx", () => "", /the file is empty/],
    ["text", "text.xlsx", () => "Cow,Lesion\n1,DD\n", /not an \.xlsx workbook/],
    [
      "an old workbook with the new ending",
      "old.xlsx",
      () => Buffer.concat([COMPOUND, Buffer.alloc(600)]),
      /old \.xls workbook/,
    ],
    [
      "a workbook under a password",
      "secret.xlsx",
      () => Buffer.concat([COMPOUND, Buffer.alloc(600), Buffer.from("EncryptedPackage", "utf16le")]),
      /protected by a password/,
    ],
    ["half a file", "half.xlsx", () => WORKBOOK.slice(0, WORKBOOK.length >> 1), /damaged/],
    ["a file of which one byte has changed", "flipped.xlsx", flipped, /damaged/],
    [
      "a zip file of other things",
      "other.xlsx",
      () => handMade({ sheets: { A: "" }, parts: { "_rels/.rels": "<Relationships/>" } }),
      /holds no workbook/,
    ],
    [
      "a sheet whose XML is broken",
      "broken.xlsx",
      () => handMade({ sheets: { A: '<row r="1"><c r="A1"><v>1</c></row>' } }),
      /worksheets\/sheet1\.xml is damaged/,
    ],
    [
      "a workbook part that is broken",
      "broken2.xlsx",
      () => handMade({ sheets: { A: "" }, parts: { "xl/workbook.xml": "<workbook><sheets>" } }),
      /workbook\.xml is damaged/,
    ],
    [
      "a missing sheet",
      "missing.xlsx",
      () => handMade({ sheets: { A: "" }, parts: { "xl/workbook.xml": '<workbook xmlns:r="r"><sheets/></workbook>' } }),
      /no worksheet/,
    ],
    [
      "days counted from 1904",
      "mac.xlsx",
      () => handMade({ sheets: { A: "" }, workbook: '<workbookPr date1904="1"/>' }),
      /counts its days from 1904/,
    ],
  ];

  test.each(cases)("%s", async (_, name, content, says) => {
    const bytes = content();
    const path = put(name, bytes);
    const outcome = await recalc(name, "--json", "out.json", "--save", "out.xlsx");
    expect(outcome.code).toBe(1);
    expect(outcome.out).toBe("");
    expect(outcome.error).toMatch(says);
    expect(outcome.error.startsWith(`recalc: ${path}: `)).toBe(true);
    expect(outcome.error).not.toContain("\n");
    expect(readFileSync(path).equals(Buffer.from(bytes))).toBe(true);
    expect(readdirSync(folder)).toEqual([name]);
  });

  test("a file that is not there, and a folder", async () => {
    expect(await recalc("nowhere.xlsx")).toMatchObject({
      code: 1,
      error: expect.stringMatching(/nowhere\.xlsx: there is no such file$/),
    });
    mkdirSync(join(folder, "folder.xlsx"));
    expect(await recalc("folder.xlsx")).toMatchObject({ code: 1, error: expect.stringMatching(/it is a folder/) });
  });
});

describe("places that cannot be written", () => {
  test.each([
    ["--save", "nowhere/out.xlsx", /its folder does not exist/],
    ["--save", ".", /it is a folder/],
    ["--json", "nowhere/out.json", /its folder does not exist/],
  ])("%s %s", async (option, target, says) => {
    const original = put("herd.xlsx");
    const { code, error, out } = await recalc("herd.xlsx", option, target);
    expect([code, error, out]).toEqual([1, expect.stringMatching(says), ""]);
    expect(error).not.toContain("\n");
    expect(readFileSync(original).equals(WORKBOOK)).toBe(true);
    expect(readdirSync(folder)).toEqual(["herd.xlsx"]);
  });
});

describe("the command line", () => {
  test.each([
    [[], /no workbook named/],
    [["a.xlsx", "b.xlsx"], /one workbook at a time/],
    [["a.xlsx", "--bogus"], /--bogus/],
    [["a.xlsx", "--json"], /--json/],
    [["a.xlsx", "--save", ""], /--save must be the path of a file/],
    [["a.xlsx", "--json", "a.xlsx"], /--json must be a file of its own/],
    [["a.xlsx", "--json", "b", "--save", "b"], /--json must be a file of its own/],
  ])("%j", async (argv, says) => {
    const { code, error } = await recalc(...argv);
    expect(code).toBe(1);
    expect(error).toMatch(says);
    expect(error).not.toContain("\n");
  });

  test("the script itself ends with the exit code", () => {
    const script = join(__dirname, "../../src/entries/recalc.ts");
    const run = (...argv: readonly string[]): ReturnType<typeof spawnSync> =>
      spawnSync(process.execPath, ["--import", "tsx", script, ...argv], {
        encoding: "utf8",
        cwd: join(__dirname, "../.."),
        env: { ...process.env, INIT_CWD: folder },
      });
    const good = run(put("herd.xlsx"));
    expect([good.status, good.stderr]).toEqual([0, ""]);
    expect(good.stdout).toMatch(/10 cells computed/);
    const bad = run(put("empty.xlsx", ""));
    expect([bad.status, bad.stdout]).toEqual([1, ""]);
    expect(bad.stderr).toMatch(/^recalc: .*empty\.xlsx: the file is empty\n$/);
    expect(existsSync(join(folder, "herd.xlsx"))).toBe(true);
  });
});
