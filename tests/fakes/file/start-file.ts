import { strToU8, type Zippable, zipSync } from "fflate";
import { cellAddress, cellPosition } from "../../../src/workbook/cell-address";
import type { PlainCell } from "../../../src/workbook/port";
import type { StartTable } from "../../workbook/contract/test-book";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONSHIPS = "http://schemas.openxmlformats.org/package/2006/relationships";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";
/** How hard the file is packed: large ones should not take long. */
const QUICK = 1;
/** Number of the style that the styles part gives to days. */
const DAY_STYLE = 1;

/** The bytes of a small workbook file, written by hand so that nothing of the project has a part in it. */
export function startFile(tables: readonly StartTable[]): Uint8Array {
  const sheets = [...new Set(tables.map(({ sheet }) => sheet))];
  const parts: Record<string, string> = {
    "[Content_Types].xml": contentTypes(sheets.length, tables.length),
    "_rels/.rels": relationships([["officeDocument", "xl/workbook.xml"]]),
    "xl/workbook.xml": `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${sheets
      .map((name, at) => `<sheet name="${quoted(name)}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`)
      .join("")}</sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": relationships([
      ...sheets.map((_, at) => ["worksheet", `worksheets/sheet${at + 1}.xml`] as const),
      ["styles", "styles.xml"],
    ]),
    "xl/styles.xml": STYLES,
  };
  sheets.forEach((name, at) => {
    const own = tables.flatMap((table, number) => (table.sheet === name ? [{ table, number: number + 1 }] : []));
    parts[`xl/worksheets/sheet${at + 1}.xml`] = sheetXml(own.map(({ table }) => table));
    parts[`xl/worksheets/_rels/sheet${at + 1}.xml.rels`] = relationships(
      own.map(({ number }) => ["table", `../tables/table${number}.xml`] as const),
    );
    for (const { table, number } of own) parts[`xl/tables/table${number}.xml`] = tableXml(table, number);
  });
  const packing = Object.entries(parts).map(([path, xml]) => [path, strToU8(xml)]);
  return zipSync(Object.fromEntries(packing) as Zippable, { level: QUICK });
}

function contentTypes(sheets: number, tables: number): string {
  const overrides = [
    ["xl/workbook.xml", "sheet.main"],
    ["xl/styles.xml", "styles"],
    ...Array.from({ length: sheets }, (_, at) => [`xl/worksheets/sheet${at + 1}.xml`, "worksheet"]),
    ...Array.from({ length: tables }, (_, at) => [`xl/tables/table${at + 1}.xml`, "table"]),
  ];
  return (
    `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">` +
    `<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
    overrides.map(([path, type]) => `<Override PartName="/${path}" ContentType="${TYPES}.${type}+xml"/>`).join("") +
    "</Types>"
  );
}

function relationships(targets: readonly (readonly [kind: string, target: string])[]): string {
  const items = targets.map(
    ([kind, target], at) => `<Relationship Id="rId${at + 1}" Type="${OFFICE}/${kind}" Target="${target}"/>`,
  );
  return `<Relationships xmlns="${RELATIONSHIPS}">${items.join("")}</Relationships>`;
}

const STYLES =
  `<styleSheet xmlns="${MAIN}"><numFmts count="1"><numFmt numFmtId="164" formatCode="dd/mm/yyyy"/></numFmts>` +
  `<fonts count="1"><font><sz val="11"/><name val="Arial"/></font></fonts>` +
  `<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>` +
  `<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>` +
  `<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>` +
  `<cellXfs count="2"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>` +
  `<xf numFmtId="164" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"><alignment horizontal="left"/></xf></cellXfs>` +
  `<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>`;

function sheetXml(tables: readonly StartTable[]): string {
  const rows = new Map<number, string[]>();
  const put = (row: number, xml: string): void => {
    const cells = rows.get(row) ?? [];
    rows.set(row, cells);
    cells.push(xml);
  };
  for (const table of tables) {
    const { row, column } = cellPosition(table.address);
    table.headings.forEach((heading, at) => put(row, cellXml(cellAddress({ row, column: column + at }), heading, 0)));
    table.rows.forEach((cells, down) =>
      table.headings.forEach((heading, at) => {
        const address = cellAddress({ row: row + 1 + down, column: column + at });
        const style = table.days?.includes(heading) === true ? DAY_STYLE : 0;
        const formula = heading === table.calculated?.heading ? formulaOf(table) : undefined;
        put(
          row + 1 + down,
          formula === undefined
            ? cellXml(address, cells[at] ?? null, style)
            : `<c r="${address}"><f>${formula}</f><v>1</v></c>`,
        );
      }),
    );
  }
  const data = [...rows].sort(([a], [b]) => a - b).map(([row, cells]) => `<row r="${row + 1}">${cells.join("")}</row>`);
  const parts = tables.map((_, at) => `<tablePart r:id="rId${at + 1}"/>`).join("");
  return (
    `<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheetData>${data.join("")}</sheetData>` +
    `<tableParts count="${tables.length}">${parts}</tableParts></worksheet>`
  );
}

function formulaOf({ name, calculated }: StartTable): string {
  return `${name}[[#This Row],[${calculated!.from}]]+${calculated!.add}`;
}

function cellXml(address: string, value: PlainCell, style: number): string {
  const start = `<c r="${address}"${style === 0 ? "" : ` s="${style}"`}`;
  if (value === null) return style === 0 ? "" : `${start}/>`;
  if (typeof value === "number") return `${start}><v>${value}</v></c>`;
  if (typeof value === "boolean") return `${start} t="b"><v>${Number(value)}</v></c>`;
  return `${start} t="inlineStr"><is><t xml:space="preserve">${quoted(value)}</t></is></c>`;
}

function tableXml(table: StartTable, id: number): string {
  const { name, address, headings, rows } = table;
  const { row, column } = cellPosition(address);
  const last = cellAddress({ row: row + rows.length, column: column + headings.length - 1 });
  const columns = headings.map((heading, at) => {
    const start = `<tableColumn id="${at + 1}" name="${quoted(heading).replaceAll("\n", "_x000a_")}"`;
    if (heading !== table.calculated?.heading) return `${start}/>`;
    return `${start}><calculatedColumnFormula>${formulaOf(table)}</calculatedColumnFormula></tableColumn>`;
  });
  return (
    `<table xmlns="${MAIN}" id="${id}" name="${name}" displayName="${name}" ref="${address}:${last}">` +
    `<autoFilter ref="${address}:${last}"/><tableColumns count="${headings.length}">${columns.join("")}</tableColumns></table>`
  );
}

function quoted(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");
}
