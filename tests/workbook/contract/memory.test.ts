import { WRITES_KEPT } from "../../../src/workbook/saving/log";
import { tablePortContract } from "./contract";
import { openMemoryBook } from "./memory-book";
import { refusedAs, saveOf, startTables } from "./start";

tablePortContract({ name: "memory", open: async (tables) => (await openMemoryBook(tables)).test }, { runs: 200 });

test("an attempt that is refused costs no save that can be taken back", async () => {
  const { test: book } = await openMemoryBook(startTables);
  const port = book.user();
  for (let saved = 0; saved < WRITES_KEPT; saved++) {
    await port.save(saveOf({ append: "Scores", rows: [{ Cow: saved, Score: 1 }] }));
  }
  const before = port.pastSaves();
  expect(before).toHaveLength(WRITES_KEPT);
  const taken = { id: "taken", title: "In use", sheet: "Plan", address: "B2", cells: [[1]] };
  await refusedAs(port.writeBlock(taken), "occupied");
  await book.other.deleteTable("Care");
  await refusedAs(port.save(saveOf({ append: "Care", rows: [{ Cow: 1 }] })), "table-gone");
  expect(port.pastSaves()).toEqual(before);
  await port.writeBlock({ ...taken, address: "H20" });
  expect(port.pastSaves().slice(1)).toEqual(before.slice(0, -1));
});
