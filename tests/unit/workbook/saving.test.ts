import { WRITES_KEPT } from "../../../src/workbook/saving/log";
import { memoryLog, type LoggedSave } from "../../../src/workbook/saving/save-log";
import { standingOf } from "../../../src/workbook/saving/standing";
import { undoBrokenOff } from "../../../src/workbook/saving/inverse";
import { openTables } from "../../../src/workbook/saving/open-tables";
import { TableError } from "../../../src/workbook/table-error";
import type { Edit, TableHost } from "../../../src/workbook/table-host";
import type { TableContent } from "../../../src/workbook/table-port";
import type { PlainCell } from "../../../src/workbook/port";

function table(rows: readonly (readonly PlainCell[])[]): TableContent {
  const columns = ["Cow", "What"].map((heading) => ({ heading, calculated: false }));
  return { name: "Care", sheet: "Care", columns, rowCount: rows.length, rows };
}

const append: Edit = {
  kind: "append",
  table: "Care",
  rows: [
    { Cow: 1, What: "block" },
    { Cow: 1, What: "block" },
    { Cow: 2, What: null },
  ],
};
const row = (index: number, Cow: PlainCell, What: PlainCell) => ({ table: "Care", index, cells: { Cow, What } });

describe("a save that broke off", () => {
  test("is missing what does not stand below the rows counted before; equal rows count one by one", () => {
    const before = [1, "block"] as const;
    const { applied, missing } = standingOf({ edits: [append], rowCounts: { Care: 1 } }, [table([before, before])]);
    expect(applied).toEqual([{ kind: "append", rows: [row(1, 1, "block")] }]);
    expect(missing).toEqual([
      {
        kind: "append",
        table: "Care",
        rows: [
          { Cow: 1, What: "block" },
          { Cow: 2, What: null },
        ],
      },
    ]);
  });

  test("is missing nothing where all stands, an update too", () => {
    const update: Edit = { kind: "set", row: row(0, 9, null), cells: { What: "healed" } };
    const rows = [
      [9, "healed"],
      [1, "block"],
      [1, "block"],
      [2, null],
    ] as const;
    const { applied, missing } = standingOf({ edits: [update, append], rowCounts: { Care: 1 } }, [table(rows)]);
    expect(missing).toEqual([]);
    expect(applied[0]).toEqual({
      kind: "set",
      before: row(0, 9, null),
      after: row(0, 9, "healed"),
      headings: ["What"],
    });
  });

  test("is given up where the row of an update holds neither what was read nor what was to be written", () => {
    const update: Edit = { kind: "set", row: row(0, 9, null), cells: { What: "healed" } };
    expect(() => standingOf({ edits: [update], rowCounts: { Care: 1 } }, [table([[9, "worse"]])])).toThrow(TableError);
  });

  test("knows a word again that the host took for TRUE before it broke off", () => {
    const edit: Edit = { kind: "append", table: "Care", rows: [{ Cow: 1, What: "sand" }] };
    expect(standingOf({ edits: [edit], rowCounts: { Care: 0 } }, [table([[1, true]])]).missing).toEqual([]);
  });

  test("is undone by taking away what it added", () => {
    const now = table([
      [5, "x"],
      [1, "block"],
    ]);
    expect(undoBrokenOff([append], { Care: 1 }, [now])).toEqual([{ kind: "remove", row: row(1, 1, "block") }]);
  });

  test("is undone by putting back what it took away; of equal rows as many as the table is shorter", () => {
    const edits: Edit[] = [0, 1, 2].map((index) => ({ kind: "remove", row: row(index, 5, "x") }));
    expect(undoBrokenOff(edits, { Care: 3 }, [table([[5, "x"]])])).toEqual(
      [1, 2].map(() => ({ kind: "append", table: "Care", rows: [{ Cow: 5, What: "x" }] })),
    );
    expect(undoBrokenOff(edits, { Care: 3 }, [table([])]).length).toBe(3);
  });
});

describe("the log of saves", () => {
  const host = (apply: TableHost["applyEdits"]): TableHost => ({
    listTables: () => Promise.resolve([]),
    readTable: () => Promise.resolve(table([])),
    applyEdits: apply,
    createTable: () => Promise.resolve(),
    writeBlock: () => Promise.reject(new Error("no block is written here")),
    readBlock: () => Promise.resolve(undefined),
    removeBlock: () => Promise.resolve(),
    watchChanges: () => () => undefined,
  });
  const save = (id: string) => ({ id, title: id, changes: [{ append: "Care", rows: [{ Cow: 1 }] }] });

  test("keeps the last saves only", async () => {
    const port = openTables(host(() => Promise.resolve([{ kind: "append", rows: [row(0, 1, null)] }])));
    for (let number = 0; number < WRITES_KEPT + 5; number++) await port.save(save(String(number)));
    expect(port.pastSaves().length).toBe(WRITES_KEPT);
    expect(port.pastSaves()[0]?.id).toBe(String(WRITES_KEPT + 4));
    await expect(port.takeBack("0")).rejects.toMatchObject({ kind: "unknown-save" });
  });

  test("says before anything is written that a save has begun, and forgets one of which nothing was written", async () => {
    const log = memoryLog();
    const seen: (readonly LoggedSave[])[] = [];
    const port = openTables(
      host((_, begin) => {
        begin({ Care: 7 });
        seen.push(log.read());
        return Promise.reject(new TableError("failed", "no"));
      }),
      log,
    );
    await expect(port.save(save("a"))).rejects.toMatchObject({ kind: "failed" });
    expect(seen).toEqual([[expect.objectContaining({ id: "a", state: "begun", rowCounts: { Care: 7 } })]]);
    expect(log.read()).toEqual([]);
  });

  test("an error that the host did not foresee is told in plain words, and the port goes on working", async () => {
    let fails = true;
    const port = openTables(
      host(() => (fails ? Promise.reject(new Error("boom.")) : Promise.resolve([{ kind: "append", rows: [] }]))),
    );
    await expect(port.save(save("a"))).rejects.toMatchObject({
      kind: "failed",
      message: "Nothing was saved: boom. What you typed is kept; try again.",
    });
    fails = false;
    await port.save(save("b"));
    expect(port.pastSaves().map(({ id }) => id)).toEqual(["b"]);
  });

  test("a taking back whose answer got lost is settled by looking at the workbook", async () => {
    let calls = 0;
    const port = openTables(
      host(() => {
        calls += 1;
        if (calls > 1) return Promise.reject(new TableError("uncertain", "lost"));
        return Promise.resolve([{ kind: "append", rows: [row(0, 1, null)] }]);
      }),
    );
    await port.save(save("a"));
    await port.takeBack("a");
    expect(port.pastSaves()).toEqual([]);
  });
});
