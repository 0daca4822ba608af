import type { RunExcel } from "../../../src/workbook/office/tables/run";
import type { TableDefinition } from "../../../src/workbook/table-definition";
import { cowsTable, findingsTable, scoresTable } from "../../../src/workbook/tables";
import type { FakeDocument } from "../../fakes/office/document";
import { columnOf, startDocument, tableOf } from "../../fakes/office/start-document";
import { deleteTableRow, insertTableRows } from "../../fakes/office/table-rows";
import { fakeRun } from "../../fakes/office/workbook";
import { USUAL_HABITS } from "../../fakes/office/document";
import { COWS, type Row } from "../../unit/taskpane/record/herd";
import type { StartTable } from "../../workbook/contract/test-book";

/** The invented herd in a strict stand-in for Excel, and the other people who have it open. */
export class OpenWorkbook {
  readonly document: FakeDocument = startDocument(
    [startTable(cowsTable, COWS), startTable(findingsTable, []), startTable(scoresTable, [])],
    USUAL_HABITS,
  );
  /** What the pane that is open now waits for; what a closed one asked is never answered. */
  private running = new Set<unknown>();

  /** Excel as one opening of the pane has it. */
  open(): RunExcel {
    const run = fakeRun(this.document, {});
    const running = (this.running = new Set());
    return async (work) => {
      running.add(work);
      try {
        return await run(work);
      } finally {
        running.delete(work);
      }
    };
  }

  get isBusy(): boolean {
    return this.running.size > 0;
  }

  /** Notes of the findings, one a row, without what the pane adds to them. */
  notes(): readonly string[] {
    const table = tableOf(this.document, "Findings");
    const note = columnOf(table, "Note");
    const rows = Array.from(
      { length: table.bodyRows },
      (_, down) => table.sheet.cell(table.row + 1 + down, note).value,
    );
    return rows.map((note) => String(note).replace(/;.*/, ""));
  }

  othersAdd(note: string): void {
    const table = tableOf(this.document, "Findings");
    insertTableRows(this.document, table, table.bodyRows, 1);
    const row = table.row + table.bodyRows;
    table.sheet.put(row, columnOf(table, "Cow"), { value: 12, numberFormat: "General" });
    table.sheet.put(row, columnOf(table, "Note"), { value: note, numberFormat: "General" });
    this.tell();
  }

  othersChange(row: number): void {
    const table = tableOf(this.document, "Findings");
    if (row >= table.bodyRows) return;
    table.sheet.put(table.row + 1 + row, columnOf(table, "Severity"), { value: 3, numberFormat: "General" });
    this.tell();
  }

  /** The note of the row that is gone. */
  othersDelete(row: number): string | undefined {
    const table = tableOf(this.document, "Findings");
    const note = this.notes()[row];
    if (note === undefined) return undefined;
    deleteTableRow(this.document, table, row);
    this.tell();
    return note;
  }

  private tell(): void {
    this.document.emit({ type: "changed", table: tableOf(this.document, "Findings") }, "others");
  }
}

function startTable({ name, columns }: TableDefinition, rows: readonly Row[]): StartTable {
  const inputs = columns.filter(({ formula }) => formula === undefined);
  return {
    name,
    sheet: name,
    address: "A1",
    headings: inputs.map(({ heading }) => heading),
    days: inputs.filter(({ holds }) => holds === "day").map(({ heading }) => heading),
    rows: rows.length === 0 ? [inputs.map(() => null)] : rows.map((row) => inputs.map(({ key }) => row[key] ?? null)),
  };
}
