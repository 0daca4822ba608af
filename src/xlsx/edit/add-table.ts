import { areaAddress } from "../address";
import type { ChangingPackage } from "../change-package";
import type { Area } from "../model";
import { partText } from "../package";
import { escapeText } from "../save/cell-xml";
import { worksheetEntries } from "../sheets";
import { formulaForms } from "../stored-formula";
import { attributeOf, TagReader, withAttribute } from "../save/tags";
import { addPart, freePath, type Parts, putPart } from "./parts";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const CONTENT_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml";

/** A table to be laid over cells that already hold its headings and rows. */
export interface AddedTable {
  readonly name: string;
  readonly sheet: string;
  /** Headings and rows. */
  readonly area: Area;
  /** Headings as the cells hold them, and formulas of calculated columns as typed. */
  readonly columns: readonly { readonly heading: string; readonly formula?: string }[];
}

/** Puts one more table into a workbook. `ids` are the ids of the worksheet functions. */
export function addTable(file: ChangingPackage, table: AddedTable, ids: readonly string[]): void {
  const { parts } = file;
  const sheetPath = worksheetEntries(file).find(({ name }) => name === table.sheet)?.path;
  if (sheetPath === undefined) throw new Error(`the workbook has no sheet ${table.sheet}`);
  const folder = file.workbookPath.slice(0, file.workbookPath.lastIndexOf("/") + 1);
  const id = addPart(parts, sheetPath, {
    path: freePath(parts, `${folder}tables/table`),
    xml: tableXml(table, freeTableId(parts), ids),
    kind: "table",
    contentType: CONTENT_TYPE,
  });
  putPart(parts, sheetPath, withTablePart(partText(parts, sheetPath), id));
}

function tableXml({ name, area, columns }: AddedTable, id: number, ids: readonly string[]): string {
  const ref = areaAddress(area);
  const { stored } = formulaForms(ids);
  const xml = columns.map(({ heading, formula }, index) => {
    // A line break in a heading is spelled out in the table's own part.
    const spelled = quoted(heading).replaceAll("\n", "_x000a_");
    const start = `<tableColumn id="${index + 1}" name="${spelled}"`;
    if (formula === undefined) return `${start}/>`;
    const array = /\bHERD\./i.test(formula) ? ' array="1"' : "";
    const text = escapeText(stored(formula, { ownTable: name }));
    return `${start}><calculatedColumnFormula${array}>${text}</calculatedColumnFormula></tableColumn>`;
  });
  return (
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<table xmlns="${MAIN}" id="${id}" name="${quoted(name)}"` +
    ` displayName="${quoted(name)}" ref="${ref}" totalsRowShown="0"><autoFilter ref="${ref}"/>` +
    `<tableColumns count="${columns.length}">${xml.join("")}</tableColumns>` +
    `<tableStyleInfo name="TableStyleLight1" showFirstColumn="0" showLastColumn="0" showRowStripes="1" showColumnStripes="0"/></table>`
  );
}

function quoted(text: string): string {
  return escapeText(text).replaceAll('"', "&quot;");
}

/** Tables are numbered through the whole workbook. */
function freeTableId(parts: Parts): number {
  const used = Object.keys(parts)
    .filter((path) => /\/tables\/[^/]+\.xml$/.test(path))
    .map((path) => {
      const tags = new TagReader(partText(parts, path));
      for (let tag = tags.next(); tag !== undefined; tag = tags.next()) {
        if (tag.name === "table") return Number(attributeOf(tag.attributes, "id"));
      }
      return 0;
    });
  return Math.max(0, ...used) + 1;
}

/** The list of tables is the last element of a sheet but for an extension list. Source: ECMA-376 Part 1, 18.3.1.99. */
function withTablePart(sheet: string, id: string): string {
  const tags = new TagReader(sheet);
  let end = sheet.length;
  let prefix = "";
  let depth = 0;
  for (let tag = tags.next(); tag !== undefined; tag = tags.next()) {
    const { name, isClosing, isEmpty, start, attributes } = tag;
    if (name === "worksheet") [prefix, end] = [tag.prefix, start];
    else if (name === "tableParts" && !isEmpty) {
      const part = `<${tag.prefix}tablePart xmlns:own="${RELATIONSHIPS}" own:id="${id}"/>`;
      if (!isClosing) {
        const count = Number(attributeOf(attributes, "count") ?? 0) + 1;
        const opened = `<${tag.prefix}tableParts${withAttribute(attributes, "count", String(count))}>`;
        return sheet.slice(0, start) + opened + part + sheet.slice(tag.end);
      }
    } else if (name === "extLst" && depth === 1) {
      end = start;
      break;
    }
    if (!isEmpty) depth += isClosing ? -1 : 1;
  }
  const list = `<${prefix}tableParts count="1"><${prefix}tablePart xmlns:own="${RELATIONSHIPS}" own:id="${id}"/></${prefix}tableParts>`;
  return sheet.slice(0, end) + list + sheet.slice(end);
}
