import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { Socket } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { runRecalc } from "../../../src/entries/recalc/run";
import { cellAddress } from "../../../src/workbook/cell-address";
import { readWorkbook } from "../../../src/xlsx/read";
import { RANDOM_SEED } from "../../random";
import { handMade } from "../hand-made";
import { everything, formulas, hostileBooks, REACHING_OUT, tableParts } from "./books";
import { type Draw, damagedBytes, damagedParts, damagedText, drawFrom, packed, withDamagedText } from "./damage";
import { openSafely } from "./expect-safe";

/** A machine at other work may take long. */
jest.setTimeout(120_000);

const OWN_HEADINGS = readFileSync(join(__dirname, "../../../sample-workbooks/own-headings.xlsx"));
const SMALL = handMade(everything());

/** Files of each kind of damage: with the books made by hand they are more than 500. */
const EACH = 23;

let opened = 0;
let refused = 0;
let slowest = { milliseconds: 0, what: "" };

function openAll(what: string, make: (draw: Draw, original: Uint8Array) => Uint8Array): void {
  for (let number = 0; number < EACH; number++) {
    const original = number % 3 === 0 ? new Uint8Array(OWN_HEADINGS) : SMALL;
    tryOne(`${what}, number ${number}`, make(drawFrom(RANDOM_SEED + number * 7919), original));
  }
}

function tryOne(what: string, bytes: Uint8Array): string | undefined {
  const started = performance.now();
  try {
    const refusal = openSafely(bytes);
    if (refusal === undefined) opened++;
    else refused++;
    return refusal;
  } catch (error) {
    throw new Error(`${what}: ${(error as Error).stack}`, { cause: error });
  } finally {
    const milliseconds = performance.now() - started;
    if (milliseconds > slowest.milliseconds) slowest = { milliseconds, what };
  }
}

afterAll(() => {
  if (process.env["SHOW_DAMAGE"] !== undefined) console.log({ opened, refused, slowest });
});

test("the originals open", () => {
  expect([openSafely(SMALL), openSafely(new Uint8Array(OWN_HEADINGS))]).toEqual([undefined, undefined]);
});

test.each(Object.entries(damagedBytes))("a file with %s", (what, damage) => {
  openAll(what, (draw, original) => damage(original, draw));
});

test.each(Object.entries(damagedText))("a part's text with %s", (what, damage) => {
  openAll(what, (draw, original) => withDamagedText(original, damage, draw));
});

test.each(Object.entries(damagedParts))("a file with %s", (what, damage) => {
  openAll(what, (draw, original) => packed(damage(unzipSync(original), draw)));
});

/** What of the books made by hand must be refused, and with which words; the others must open. */
const REFUSED: Readonly<Record<string, RegExp>> = {
  "nothing at all": /the file is empty/,
  "an old workbook renamed": /old \.xls workbook/,
  "a workbook under a password": /protected by a password/,
  "a zip file of pictures": /holds no workbook/,
  "a text document": /another kind/,
  "an empty zip file": /not an \.xlsx workbook/,
  "a sheet of 16 MB of one letter": /does not begin with a tag/,
  "a text of 4 MB": /A1 holds more text than a cell can/,
  "nine million tags outside the cells": /too large to be read/,
  "two thousand rows that reach to the last column": /far more cells than a list of a herd/,
  "entities that unfold": /undefined entity/,
  "an entity that reads a file": /undefined entity/,
  "elements ten thousand deep": /nesting depth/,
  "ten thousand deep outside the cells": /nesting depth/,
  "a workbook that is its own sheet": /two of its sheets are the same one/,
  "one sheet a thousand times": /two of its sheets are the same one/,
  "relationships that leave the file": /its part etc\/passwd is missing/,
  "a main part called constructor": /holds no workbook/,
  "a sheet called __proto__ inside the zip": /its part __proto__ is missing/,
  "links to other workbooks": /has no worksheet/,
  "a table over the whole sheet": /names 1 of its 16384 columns/,
  "a table without columns": /names 0 of its 3 columns/,
  "a cell in row 9,999,999": /no sheet has a cell in row 9999999/,
  "a row numbered 1e9": /no sheet has a cell in row 1000000000/,
  "a row that has no number": /a row without a number/,
  "a column beyond the last": /no sheet has a cell ZZZ1/,
  "a table whose part is missing": /its part xl\/tables\/none\.xml is missing/,
};

test.each(Object.entries(hostileBooks))("%s", (what, make) => {
  const refusal = tryOne(what, make());
  if (REFUSED[what] === undefined) expect(refusal).toBeUndefined();
  else expect(refusal).toMatch(REFUSED[what]);
});

describe("computed and saved", () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "damaged-"));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  async function recalc(bytes: Uint8Array): Promise<{ readonly code: number; readonly said: string }> {
    writeFileSync(join(folder, "herd.xlsx"), bytes);
    const said: string[] = [];
    const say = (text: string): void => void said.push(text);
    const code = await runRecalc(["herd.xlsx", "--json", "out.json", "--save", "out.xlsx"], folder, {
      out: say,
      error: say,
    });
    expect(readFileSync(join(folder, "herd.xlsx")).equals(Buffer.from(bytes))).toBe(true);
    return { code, said: said.join("\n") };
  }

  const formulaCells = (bytes: Uint8Array): string[] =>
    readWorkbook(bytes, []).sheets.flatMap(({ name, cells }) =>
      cells.flatMap(({ row, column, formula }) =>
        formula === undefined ? [] : [`${name}!${cellAddress({ row, column })} ${formula}`],
      ),
    );

  test("formulas that reach outside the workbook ask nobody", async () => {
    const connect = jest.spyOn(Socket.prototype, "connect");
    const fetch = jest.spyOn(globalThis, "fetch");
    const bytes = handMade(everything({ sheets: { Cows: formulas(REACHING_OUT), Notes: "" } }));
    const { code, said } = await recalc(bytes);
    expect([code, said]).toEqual([0, expect.stringMatching(/computed/)]);
    expect(connect).not.toHaveBeenCalled();
    expect(fetch).not.toHaveBeenCalled();
    // What is computed goes back as a value: no cell gains a formula that it did not have.
    const saved = new Uint8Array(readFileSync(join(folder, "out.xlsx")));
    expect(openSafely(saved)).toBeUndefined();
    const before = formulaCells(bytes);
    expect(before.length).toBeGreaterThan(0);
    expect(formulaCells(saved)).toEqual(before);
  });

  test.each(["__proto__", "constructor", "toString"])(
    "sheet, table, heading and name may be called %s",
    async (name) => {
      const { code } = await recalc(
        handMade(
          everything({
            sheets: { [`${name}`]: '<row r="1"><c r="A1" t="inlineStr"><is><t>' + name + '</t></is></c></row><row r="2"><c r="A2"><v>7</v></c><c r="C2"><f>A2+1</f></c></row>', Other: "" }, // oxfmt-ignore
            parts: tableParts(name, [name], "A1:A2"),
            workbook: `<definedNames><definedName name="${name}">'${name}'!$A$2</definedName></definedNames>`,
          }),
        ),
      );
      expect(code).toBe(0);
      const values = JSON.parse(readFileSync(join(folder, "out.json"), "utf8")) as Record<
        string,
        Record<string, unknown>
      >;
      expect(Object.getOwnPropertyDescriptor(values, name)?.value).toMatchObject({ A2: 7, C2: 8 });
      expect(({} as Record<string, unknown>)["A2"]).toBeUndefined();
    },
  );
});
