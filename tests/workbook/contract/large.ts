import { rowAsRead } from "../../../src/workbook/table-port";
import { finding, findings, MARCH_1, refusedAs, saveOf } from "./start";
import type { TestHost } from "./test-book";

const MANY = 50_000;
/** A file of that size takes seconds to read and to save. */
const PATIENCE_MS = 120_000;

export function largeContract(host: TestHost): void {
  test(
    "50,000 rows are read, added to, updated and taken back",
    async () => {
      const rows = Array.from({ length: MANY }, (_, row) => [
        MARCH_1 + (row % 300),
        row,
        "DD",
        "topical",
        `note ${row}`,
      ]);
      const book = await host.open([{ ...findings, rows }]);
      const port = book.user();
      const content = await port.readTable("Findings");
      expect([content.rowCount, content.rows.length]).toEqual([MANY, MANY]);
      for (const at of [0, 12_345, MANY - 1]) expect(content.rows[at]?.slice(0, 5)).toEqual(rows[at]);
      await book.other.deleteRow("Findings", 20);
      const save = saveOf(
        { append: "Findings", rows: [finding(90_001), finding(90_002)] },
        { update: rowAsRead(content, 30_000), set: { Note: "found again" } },
      );
      await port.save(save);
      const saved = await port.readTable("Findings");
      expect(saved.rowCount).toBe(MANY + 1);
      expect(saved.rows[29_999]?.slice(1, 5)).toEqual([30_000, "DD", "topical", "found again"]);
      expect(saved.rows.slice(-2).map((row) => row[1])).toEqual([90_001, 90_002]);
      await port.takeBack(save.id);
      expect((await port.readTable("Findings")).rowCount).toBe(MANY - 1);
      await refusedAs(port.takeBack(save.id), "unknown-save");
    },
    PATIENCE_MS,
  );
}
