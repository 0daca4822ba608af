import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { recalculate } from "../engine/headless";
import type { ComputedWorkbook } from "../engine/results";
import { registry } from "../functions/registry";
import { adviserTemplate } from "../samples/adviser-template";
import { cellCost } from "../samples/cell-cost";
import { herdWorkbook } from "../samples/herd-workbook";
import { ownHeadings } from "../samples/own-headings";
import { areaAddress, cellAddress } from "../xlsx/address";
import type { CellContent } from "../xlsx/model";
import { readWorkbook } from "../xlsx/read";
import { writeWorkbook } from "../xlsx/write";
import type { ComputedValues, NewWorkbook } from "../xlsx/write-model";
import { onDay } from "./on-day";

/**
 * `npm run samples` writes the sample workbooks with the values of their formulas; `npm run samples -- --check` only
 * compares and fails, naming each file that is stale.
 */
const FOLDER = join(__dirname, "../../sample-workbooks");
interface Sample {
  readonly file: string;
  readonly workbook: () => NewWorkbook;
  /** Its lists are empty, so that figures say what they lack. */
  readonly empty?: true;
}

const SAMPLES: readonly Sample[] = [
  { file: "herd-workbook.xlsx", workbook: herdWorkbook },
  { file: "own-headings.xlsx", workbook: ownHeadings },
  { file: "adviser-template.xlsx", workbook: adviserTemplate, empty: true },
  { file: "cell-cost.xlsx", workbook: cellCost },
];

const ids = registry.map(({ id }) => id);

/** The workbook is written without values, computed, and written again with them. */
async function computedBytes(book: NewWorkbook, empty = false): Promise<Uint8Array> {
  const bare = await writeWorkbook(book, ids);
  const computed = await onDay(book.made, () => recalculate(readWorkbook(bare, ids)));
  refuseErrors(computed, empty);
  return writeWorkbook(book, ids, valuesOf(computed));
}

/** A sample that shows an error shows a mistake of ours; an empty one may say what it lacks. */
function refuseErrors({ sheets }: ComputedWorkbook, empty: boolean): void {
  const errors = sheets.flatMap(({ name, cells }) =>
    cells.flatMap(({ row, column, value, formula = "", message = "" }) => {
      if (typeof value !== "object" || (empty && !MISTAKES.has(value.error))) return [];
      return [`${name}!${cellAddress(row, column)} ${value.error} ${message} =${formula}`];
    }),
  );
  if (errors.length > 0) throw new Error(`a sample computes errors:\n${errors.join("\n")}`);
}

/** What a formula shows that is written wrongly, however few rows there are. */
const MISTAKES: ReadonlySet<string> = new Set(["#NAME?", "#REF!", "#SPILL!", "#NULL!"]);

function valuesOf({ sheets }: ComputedWorkbook): ComputedValues {
  const values = new Map<string, CellContent>();
  const filled = new Map<string, string>();
  for (const { name, cells, spills } of sheets) {
    for (const { row, column, value } of cells) values.set(`${name}!${cellAddress(row, column)}`, value);
    for (const { row, column, area } of spills) filled.set(`${name}!${cellAddress(row, column)}`, areaAddress(area));
  }
  return {
    // A formula whose result is empty text shows nothing and is not among the cells.
    value: (sheet, address) => values.get(`${sheet}!${address}`) ?? "",
    filled: (sheet, address) => filled.get(`${sheet}!${address}`),
  };
}

/** Versions of Node may differ in the last digit of a logarithm; a value that differs no more than that is the same. */
const SAME_DIGITS = 12;

function sameWorkbook(one: Uint8Array, other: Uint8Array): boolean {
  const [first, second] = [textsOf(one), textsOf(other)];
  const paths = Object.keys(first);
  return paths.length === Object.keys(second).length && paths.every((path) => first[path] === second[path]);
}

function textsOf(bytes: Uint8Array): Record<string, string> {
  const texts = Object.entries(unzipSync(bytes)).map(([path, data]) => {
    const text = strFromU8(data).replace(/(?<=<(?:c:)?v>)-?\d[\d.eE+-]*(?=<)/g, (value) => {
      return Number(value).toPrecision(SAME_DIGITS);
    });
    return [path, text] as const;
  });
  return Object.fromEntries(texts);
}

async function main(check: boolean): Promise<void> {
  for (const { file, workbook, empty } of SAMPLES) {
    const path = join(FOLDER, file);
    const bytes = await computedBytes(workbook(), empty);
    if (existsSync(path) && sameWorkbook(bytes, new Uint8Array(readFileSync(path)))) continue;
    if (check) {
      console.error(`stale: ${path}; run npm run samples`);
      process.exitCode = 1;
      continue;
    }
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, bytes);
    console.log(`${file}: ${Math.round(bytes.length / 1024)} KB`);
  }
}

void main(process.argv.includes("--check"));
