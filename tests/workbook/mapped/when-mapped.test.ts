import { tablesWhenMapped } from "../../../src/herd/mapped-port/when-mapped";
import { mappingTable } from "../../../src/workbook/mapping-table";
import { MemoryBook } from "../../../src/workbook/memory/book";
import { MemoryBookHost } from "../../../src/workbook/memory/book-host";
import { MemoryHost } from "../../../src/workbook/memory/table-host";
import { openBook } from "../../../src/workbook/saving/open-book";
import { openTables } from "../../../src/workbook/saving/open-tables";
import type { TablePort, WorkbookChange } from "../../../src/workbook/table-port";

/** A farm's list of findings under its own headings, in a workbook without a mapping. */
async function farmBook(): Promise<{ readonly own: TablePort; readonly port: TablePort }> {
  const book = new MemoryBook();
  const own = openTables(new MemoryHost(book));
  await own.createTable({
    name: "Klauenliste",
    sheet: "Klauen",
    columns: ["Datum", "Kuh", "Befund"].map((heading) => ({ heading })),
    rows: [{ Datum: { day: 46_000 }, Kuh: 12, Befund: "DD" }],
  });
  return { own, port: tablesWhenMapped(own, openBook(new MemoryBookHost(book))) };
}

async function keepMapping(port: TablePort): Promise<void> {
  const columns = { Date: "Datum", Cow: "Kuh", Lesion: "Befund" };
  await port.createTable({
    name: mappingTable.name,
    sheet: "Mapping",
    columns: mappingTable.columns.map(({ heading }) => ({ heading })),
    rows: Object.entries(columns).map(([value, heading]) => ({
      Table: "Findings",
      Value: value,
      Sheet: "Klauen",
      Source: "Klauenliste",
      Heading: heading,
    })),
  });
}

async function names(port: TablePort): Promise<readonly string[]> {
  return (await port.listTables()).map(({ name }) => name);
}

test("without a mapping the workbook is as it is", async () => {
  const { port } = await farmBook();
  expect(await names(port)).toEqual(["Klauenliste"]);
  await expect(port.readTable("Findings")).rejects.toThrow("Findings");
});

test("once a mapping is kept the farm's list is read and written as ours, without opening anything anew", async () => {
  const { own, port } = await farmBook();
  expect(await names(port)).toEqual(["Klauenliste"]);
  await keepMapping(port);
  expect(await names(port)).toContain("Findings");
  const { rows } = await port.readTable("Findings");
  expect(rows).toHaveLength(1);
  await port.save({
    id: "one",
    title: "Cow 13",
    changes: [{ append: "Findings", rows: [{ Date: { day: 46_001 }, Cow: 13, Lesion: "SU" }] }],
  });
  expect((await own.readTable("Klauenliste")).rows[1]).toEqual([46_001, 13, "SU"]);
  expect(port.pastSaves().map(({ title }) => title)).toContain("Cow 13");
  await port.takeBack("one");
  expect((await own.readTable("Klauenliste")).rowCount).toBe(1);
});

test("who watched before the mapping was kept is told under our names after it, and once", async () => {
  const { own, port } = await farmBook();
  const seen: WorkbookChange[] = [];
  const unwatch = port.watchChanges((change) => seen.push(change));
  await keepMapping(port);
  await port.readTable("Findings");
  seen.length = 0;
  await own.save({
    id: "two",
    title: "typed in the sheet",
    changes: [{ append: "Klauenliste", rows: [{ Datum: { day: 46_002 }, Kuh: 14, Befund: "WL" }] }],
  });
  expect(seen.filter(({ table }) => table === "Findings")).toHaveLength(1);
  expect(seen.some(({ table }) => table === "Klauenliste")).toBe(false);
  unwatch();
  seen.length = 0;
  await own.takeBack("two");
  expect(seen).toEqual([]);
});
