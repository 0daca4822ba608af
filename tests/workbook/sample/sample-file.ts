import { readFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";

/** The committed sample workbook, read from its parts without any of the project's own code. */
export const SAMPLE_PATH = join(__dirname, "../../../sample-workbooks/herd-workbook.xlsx");

export const parts: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(unzipSync(new Uint8Array(readFileSync(SAMPLE_PATH)))).map(([path, data]) => [path, strFromU8(data)]),
);

export interface FileCell {
  readonly address: string;
  readonly row: number;
  /** Column counted from 1. */
  readonly column: number;
  readonly type: string;
  readonly value: number | string | undefined;
  readonly formula: string | undefined;
  /** Cells that an array formula filled. */
  readonly fills: string | undefined;
  /** Marked as a dynamic array. */
  readonly dynamic: boolean;
  readonly style: number;
}

export interface FileSheet {
  readonly name: string;
  readonly xml: string;
  readonly cells: ReadonlyMap<string, FileCell>;
}

function attribute(tag: string, name: string): string | undefined {
  const found = new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1];
  return found === undefined ? undefined : unescaped(found);
}

export function unescaped(text: string): string {
  return text
    .replace(/&quot;/g, '"')
    .replace(/&apos;/g, "'")
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&amp;/g, "&");
}

const strings = [...parts["xl/sharedStrings.xml"]!.matchAll(/<si>(.*?)<\/si>/gs)].map(([, item]) =>
  [...item!.matchAll(/<t[^>]*>(.*?)<\/t>/gs)].map(([, text]) => unescaped(text!)).join(""),
);

export function columnNumber(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
}

function cellOf(tag: string, inner: string): FileCell {
  const address = attribute(tag, "r")!;
  const type = attribute(tag, "t") ?? "n";
  const raw = /<v>(.*?)<\/v>/s.exec(inner)?.[1];
  const formula = /<f([^>]*)>(.*?)<\/f>/s.exec(inner);
  const plain = raw === undefined ? undefined : unescaped(raw);
  return {
    address,
    row: Number(/\d+$/.exec(address)![0]),
    column: columnNumber(/^[A-Z]+/.exec(address)![0]),
    type,
    value:
      plain === undefined ? undefined : type === "s" ? strings[Number(plain)] : type === "n" ? Number(plain) : plain,
    formula: formula === null ? undefined : unescaped(formula[2]!),
    fills: formula === null ? undefined : attribute(formula[1]!, "ref"),
    dynamic: attribute(tag, "cm") === "1",
    style: Number(attribute(tag, "s") ?? 0),
  };
}

function readSheet(name: string, xml: string): FileSheet {
  const cells = new Map<string, FileCell>();
  for (const [, tag, inner = ""] of xml.matchAll(/<c(\s[^>]*?)(?:\/>|>(.*?)<\/c>)/gs)) {
    const cell = cellOf(tag!, inner);
    cells.set(cell.address, cell);
  }
  return { name, xml, cells };
}

const relationships = new Map(
  [...parts["xl/_rels/workbook.xml.rels"]!.matchAll(/<Relationship [^>]*>/g)].map(([tag]) => [
    attribute(tag, "Id")!,
    attribute(tag, "Target")!,
  ]),
);

export const sheets: readonly FileSheet[] = [...parts["xl/workbook.xml"]!.matchAll(/<sheet [^>]*>/g)].map(([tag]) =>
  readSheet(attribute(tag, "name")!, parts[`xl/${relationships.get(attribute(tag, "r:id")!)!}`]!),
);

export function sheet(name: string): FileSheet {
  const found = sheets.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no sheet ${name}`);
  return found;
}

export function valueAt(name: string, address: string): number | string | undefined {
  return sheet(name).cells.get(address)?.value;
}

export interface FileTable {
  readonly name: string;
  readonly area: string;
  readonly columns: readonly { readonly name: string; readonly formula?: string; readonly isArray: boolean }[];
}

export const tables: readonly FileTable[] = Object.entries(parts)
  .filter(([path]) => path.startsWith("xl/tables/"))
  .map(([, xml]) => ({
    name: attribute(/<table [^>]*>/.exec(xml)![0], "name")!,
    area: attribute(/<table [^>]*>/.exec(xml)![0], "ref")!,
    columns: [...xml.matchAll(/<tableColumn (?:[^>]*\/>|.*?<\/tableColumn>)/gs)].map(([text]) => {
      const formula = /<calculatedColumnFormula([^>]*)>(.*?)<\/calculatedColumnFormula>/s.exec(text);
      return {
        name: attribute(text, "name")!,
        isArray: formula?.[1]?.includes('array="1"') ?? false,
        ...(formula === null ? {} : { formula: unescaped(formula[2]!) }),
      };
    }),
  }));

/** Rows of a table of the same-named sheet, by heading. */
export function tableRows(name: string): Record<string, number | string | undefined>[] {
  const table = tables.find((one) => one.name === name)!;
  const [, firstColumn, firstRow, , lastRow] = /^([A-Z]+)(\d+):([A-Z]+)(\d+)$/.exec(table.area)!;
  const rows: Record<string, number | string | undefined>[] = [];
  const at = new Map([...sheet(name).cells.values()].map((cell) => [cell.row * 1000 + cell.column, cell.value]));
  for (let row = Number(firstRow) + 1; row <= Number(lastRow); row++) {
    const entries = table.columns.map(({ name: heading }, index) => {
      const value = at.get(row * 1000 + columnNumber(firstColumn!) + index);
      return [heading, value === "" ? undefined : value] as const;
    });
    rows.push(Object.fromEntries(entries));
  }
  return rows;
}
