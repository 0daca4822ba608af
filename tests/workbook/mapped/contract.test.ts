import { tablesWhenMapped } from "../../../src/herd/mapped-port/when-mapped";
import { mappingTable } from "../../../src/workbook/mapping-table";
import { MemoryBookHost } from "../../../src/workbook/memory/book-host";
import { openBook } from "../../../src/workbook/saving/open-book";
import { largeContract } from "../contract/large";
import { makingContract } from "../contract/making";
import { savingContract } from "../contract/saving";
import { takingBackContract } from "../contract/taking-back";
import { togetherContract } from "../contract/together";
import { valuesContract } from "../contract/values";
import { openMemoryBook } from "../contract/memory-book";
import type { TablePort } from "../../../src/workbook/table-port";
import { TableError } from "../../../src/workbook/table-error";
import type { OtherUser, StartTable, TestBook, TestHost } from "../contract/test-book";

/** How an invented farm calls its tables of findings and scores, and their columns. */
const FARM: Readonly<Record<string, { readonly name: string; readonly headings: Readonly<Record<string, string>> }>> = {
  Findings: {
    name: "Klauenliste",
    headings: { Date: "Datum", Cow: "Kuh", Lesion: "Befund", Treatment: "Behandlung", Note: "Bemerkung" },
  },
  Scores: { name: "Gangbild", headings: { Date: "Tag", Cow: "Tier", Score: "Note" } },
};

function farmName(table: string): string {
  return FARM[table]?.name ?? table;
}

function farmHeading(table: string, heading: string): string {
  return FARM[table]?.headings[heading] ?? heading;
}

/** The table under the farm's name and headings. */
function farmTable(table: StartTable): StartTable {
  const { name, headings, days, calculated } = table;
  return {
    ...table,
    name: farmName(name),
    headings: headings.map((heading) => farmHeading(name, heading)),
    ...(days === undefined ? {} : { days: days.map((heading) => farmHeading(name, heading)) }),
    ...(calculated === undefined ? {} : { calculated: { ...calculated, from: farmHeading(name, calculated.from) } }),
  };
}

/** The Mapping table for those of the tables that the farm calls otherwise. */
function mappingOf(tables: readonly StartTable[]): StartTable {
  const rows = tables.flatMap(
    ({ name, sheet }) =>
    Object.entries(FARM[name]?.headings ?? {}).map(([ours, theirs]) => [name, ours, sheet, farmName(name), theirs, null, null, null, null]), // oxfmt-ignore
  );
  return { name: "Mapping", sheet: "Mapping", address: "A1", headings: mappingTable.columns.map(({ heading }) => heading), rows }; // oxfmt-ignore
}

function farmUser(other: OtherUser): OtherUser {
  return {
    ...other,
    setCell: (table, row, heading, value) => other.setCell(farmName(table), row, farmHeading(table, heading), value),
    deleteRow: (table, row) => other.deleteRow(farmName(table), row),
    insertRow: (table, row, cells) => other.insertRow(farmName(table), row, cells),
    renameTable: (from, to) => other.renameTable(farmName(from), to),
    deleteTable: (table) => other.deleteTable(farmName(table)),
    renameColumn: (table, from, to) => other.renameColumn(farmName(table), farmHeading(table, from), to),
    filter: (table) => other.filter(farmName(table)),
    typeBelow: (table, rows) => other.typeBelow(farmName(table), rows),
  };
}

/** The port without the mapping itself, and with what it says in the words in which the contract asks. */
function inOurWords(port: TablePort): TablePort {
  const told = async <T>(work: Promise<T>): Promise<T> => {
    try {
      return await work;
    } catch (error) {
      throw error instanceof TableError ? new TableError(error.kind, ourWords(error.message)) : error;
    }
  };
  return {
    ...port,
    listTables: async () => (await port.listTables()).filter(({ name }) => name !== mappingTable.name),
    save: (save) => told(port.save(save)),
    takeBack: (id) => told(port.takeBack(id)),
  };
}

function ourWords(message: string): string {
  return Object.entries(FARM).reduce(
    (text, [name, farm]) =>
      Object.entries(farm.headings).reduce(
        (words, [ours, theirs]) => words.replaceAll(`"${theirs}"`, `"${ours}"`),
        text.replaceAll(farm.name, name),
      ),
    message,
  );
}

async function openBookOfFarm(tables: readonly StartTable[]): Promise<TestBook> {
  const { test, memory } = await openMemoryBook([...tables.map(farmTable), mappingOf(tables)]);
  return {
    ...test,
    user: (log) => inOurWords(tablesWhenMapped(test.user(log), openBook(new MemoryBookHost(memory)))),
    other: farmUser(test.other),
    cell: (table, row, heading) => test.cell(farmName(table), row, farmHeading(table, heading)),
    bodyRows: (table) => test.bodyRows(farmName(table)),
  };
}

const host: TestHost = { name: "a farm's own headings", open: openBookOfFarm };

// What a mapping refuses in words of its own is tested beside this.
describe("a farm's own headings: saving", () => savingContract(host));
describe("a farm's own headings: taking back", () => takingBackContract(host));
describe("a farm's own headings: values", () => valuesContract(host));
describe("a farm's own headings: several users", () => togetherContract(host, 20));
describe("a farm's own headings: making tables and blocks", () => makingContract(host));
describe("a farm's own headings: large tables", () => largeContract(host));
