import { day } from "../../../../src/core/shared/days";
import { checkBook } from "../../../../src/herd/check/check-book";
import { storedMapping } from "../../../../src/herd/mapping/stored-mapping";
import { checkedIn } from "../../../../src/taskpane/screens/set-up/check-model";
import { readOldBook } from "../../../../src/taskpane/screens/set-up/copy-effects";
import { findLists } from "../../../../src/taskpane/screens/set-up/found-lists";
import { foundText } from "../../../../src/taskpane/screens/set-up/doubts";
import { newTaskId } from "../../../../src/taskpane/screens/set-up/task";
import { sectionState } from "../../../../src/taskpane/screens/set-up/summaries";
import { canBeTable } from "../../../../src/taskpane/screens/set-up/lists";
import { mappingTable } from "../../../../src/workbook/mapping-table";
import type { PlainBook } from "../../../../src/workbook/plain-book";
import type { PlainCell } from "../../../../src/workbook/port";
import { book, type Rows, sheet } from "../../herd/plain-sheet";
import { badBooks } from "./bad-books";
import { Driver } from "./driver";
import { memoryBook, portsOn } from "./memory-book";

const TODAY = day("2026-09-01");
const FIRST = day("2026-06-01");

async function opened(plain: PlainBook): Promise<Driver> {
  const driver = new Driver(portsOn(memoryBook(plain)), TODAY);
  await driver.settle();
  return driver;
}

function mapping(...rows: readonly (readonly PlainCell[])[]) {
  const headings = mappingTable.columns.map(({ heading }) => heading);
  return sheet("Mapping", [headings, ...rows.map((row) => headings.map((_, at) => row[at] ?? null))], { table: "Mapping" }); // oxfmt-ignore
}

/** Counts in cells, of which the mapping does not say so. */
const MILK: Rows = [
  ["Cow", "Test date", "Milk kg", "Cells"],
  ...Array.from({ length: 12 }, (_, row) => [100 + row, FIRST, 25, 90_000 + 1000 * row]),
];
const milk = sheet("Milk", MILK, { days: [1], table: "Milk" });
const MILK_ROWS = [
  ["Tests", "Cow", "Milk", "Milk", "Cow"],
  ["Tests", "Date", "Milk", "Milk", "Test date"],
  ["Tests", "Count", "Milk", "Milk", "Cells"],
];

describe("what is kept is shown as it is read", () => {
  test("a blank unit is that of our own table, whatever the numbers look like", async () => {
    const driver = await opened(book(milk, mapping(...MILK_ROWS)));
    expect(driver.column("Milk", "Cells")).toMatchObject({ key: "count", unit: "thousand cells/mL" });
  });

  test("dates that are text have no order until it is said", async () => {
    const visits = Array.from({ length: 12 }, (_, row) => [100 + row, `${13 + row}/03/2026`, "DD"]);
    const feet = sheet("Feet", [["Cow", "Visit", "Found"], ...visits], { table: "Feet" });
    const driver = await opened(book(feet, mapping(["Findings", "Cow", "Feet", "Feet", "Cow"], ["Findings", "Date", "Feet", "Feet", "Visit"], ["Findings", "Lesion", "Feet", "Feet", "Found"]))); // oxfmt-ignore
    expect(driver.column("Feet", "Visit")).toMatchObject({ key: "date", unit: undefined });
  });

  test("a landmark that is not known stays so", async () => {
    const rows = Array.from({ length: 12 }, (_, row) => [100 + row, FIRST, "SU", 80 + row]);
    const driver = await opened(book(sheet("Feet", [["Cow", "Visit", "Lesion", "Toe mm"], ...rows], { days: [1] })));
    await driver.press({ type: "landmark chosen", list: driver.list("Feet").id, landmark: "not known" });
    await driver.press({ type: "keep lists pressed", id: driver.newId() });
    expect(driver.state.notice?.kind).toBe("done");
    expect(driver.list("Feet")).toMatchObject({ kept: true, landmark: "not known" });
    expect(sectionState(driver.state, "lists")).toBe("1 list, kept");
  });

  test("a note of the farm's own stays when the lists are kept anew", async () => {
    const driver = await opened(book(milk, mapping(["Tests", "Cow", "Milk", "Milk", "Cow", null, null, null, "ask Ann"], ...MILK_ROWS.slice(1)))); // oxfmt-ignore
    const { column } = driver.column("Milk", "Milk kg");
    await driver.press({ type: "column read as", list: driver.list("Milk").id, column, key: "" });
    await driver.press({ type: "unit chosen", list: driver.list("Milk").id, column: 3, unit: "cells/mL" });
    await driver.press({ type: "keep lists pressed", id: driver.newId() });
    const { rows } = await driver.ports.tables.readTable("Mapping");
    expect(rows.map((row) => [row[1], row[7], row[8]])).toEqual([
      ["Cow", null, "ask Ann"],
      ["Date", null, expect.any(String)],
      ["Count", "cells/mL", expect.any(String)],
    ]);
  });
});

describe("two lists of one kind in plain cells of one sheet", () => {
  const walk = Array.from({ length: 8 }, (_, row) => [FIRST + row, 100 + row, row % 4]);
  const later = Array.from({ length: 8 }, (_, row) => [FIRST + 30 + row, 100 + row, row % 4]);
  const headings = ["Date", "Cow", "Mobility score"];
  const blanks = Array.from({ length: 20 }, () => []);
  const rows = [headings, ...walk, ...blanks, headings, ...later];

  test("are not kept: no row of the mapping could tell them apart", async () => {
    const driver = await opened(book(sheet("Walking", rows, { days: [0] })));
    expect(driver.state.lists.filter(({ readAs }) => readAs === "Scores")).toHaveLength(2);
    await driver.press({ type: "keep lists pressed", id: driver.newId() });
    expect(driver.state.notice).toEqual({
      kind: "error",
      text: "Not kept yet. Walking: 2 lists in plain cells are both read as mobility scores: make one of them a table, or leave one unread.",
    });
    expect(await driver.ports.tables.listTables()).toEqual([]);
  });

  test("are each read as the nearest to where it stood", async () => {
    const driver = await opened(book(sheet("Walking", rows, { days: [0] })));
    await driver.press({ type: "check pressed" });
    expect(checkedIn(driver.state)).toMatchObject({ rows: 16, groups: [] });
  });
});

describe("making a table", () => {
  test("waits until what was said of the list is kept", async () => {
    const driver = await opened(book(sheet("Milk", MILK, { days: [1] })));
    const list = driver.list("Milk").id;
    await driver.press({ type: "column read as", list, column: 2, key: "" });
    await driver.press({ type: "make table pressed", list, id: driver.newId() });
    expect(driver.state.notice).toMatchObject({ kind: "error" });
    expect(driver.list("Milk").source).toBeUndefined();
    await driver.press({ type: "keep lists pressed", id: driver.newId() });
    await driver.press({ type: "make table pressed", list, id: driver.newId() });
    expect(driver.list("Milk")).toMatchObject({ source: "Milk", readAs: "Tests" });
    expect(driver.column("Milk", "Milk kg").key).toBe("");
  });

  test("is not offered where the headings stand in two rows", async () => {
    const driver = await opened(badBooks["two rows"]!());
    const list = driver.state.lists.find(({ readAs }) => readAs !== "")!;
    expect(canBeTable(list)).toBe(false);
    expect(canBeTable({ ...list, oneHeadingRow: true })).toBe(true);
  });
});

describe("done here", () => {
  test("lists what this screen wrote, the latest first whichever way it was written", async () => {
    const driver = await opened(book(sheet("Milk", MILK, { days: [1] })));
    const at = (second: number): string => newTaskId(new Date(Date.UTC(2026, 8, 1, 9, 0, second)), "x");
    await driver.press({ type: "keep lists pressed", id: at(1) });
    await driver.press({ type: "make table pressed", list: driver.list("Milk").id, id: at(2) });
    await driver.press({ type: "column read as", list: driver.list("Milk").id, column: 2, key: "" });
    await driver.press({ type: "keep lists pressed", id: at(3) });
    const cells = [{ sheet: "Milk", address: "A20", was: null, set: "x" }];
    await driver.ports.book.changeCells({ id: "rows of record 7", title: "half a save", cells });
    await driver.press({ type: "reading asked" });
    const { reading } = driver.state;
    expect(reading.kind === "read" && reading.past.map(({ id }) => id)).toEqual([at(3), at(2), at(1)]);
  });
});

describe("the check", () => {
  test("goes by a guess where the rows of the mapping were all taken out", async () => {
    const driver = await opened(book(milk, mapping([])));
    await driver.press({ type: "check pressed" });
    expect(checkedIn(driver.state)).toMatchObject({ tables: ["Tests on the table Milk"] });
  });

  test("calls nothing right where it looked at nothing, and nothing doubtful that is only worth knowing", async () => {
    const driver = await opened(
      book(
        sheet("Notes", [
          ["Milk price", "Day"],
          [0.45, "Monday"],
        ]),
      ),
    );
    await driver.press({ type: "check pressed" });
    expect(checkedIn(driver.state)?.tables).toEqual([]);
    expect(sectionState(driver.state, "check")).toBe("no list was checked");
    const group = { check: "capped count", title: "", level: "note", doubts: [], cells: 3, doubtful: 0, repairable: [], repairs: [] } as const; // oxfmt-ignore
    expect(foundText([group], ["Tests on Milk"])).toBe("nothing doubtful, 3 to know");
    expect(foundText([{ ...group, cells: 5, doubtful: 2 }], ["Tests on Milk"])).toBe("2 doubtful cells of 1 kind, 3 to know"); // oxfmt-ignore
  });
});

test("a preview of a copy holds until anything is written or someone changes the workbook", async () => {
  const shown = async (): Promise<Driver> => {
    const driver = await opened(book(sheet("Milk", MILK, { days: [1] })));
    const old = { name: "old.xlsx", book: book(), lists: [], problems: [], known: [], unknown: [], codes: {} };
    const preview = { counts: [], rows: [], left: [], notRead: [], problems: [] };
    driver.send({ type: "old book chosen", name: "old.xlsx", turn: 1 });
    driver.send({ type: "old book read", turn: 1, old });
    driver.send({ type: "preview pressed", turn: 2 });
    driver.send({ type: "preview drawn up", turn: 2, preview });
    expect(driver.state.copy).toMatchObject({ preview: { kind: "shown" } });
    return driver;
  };
  const kept = await shown();
  await kept.press({ type: "keep lists pressed", id: kept.newId() });
  expect(kept.state.copy).toMatchObject({ preview: { kind: "not yet" } });
  const changed = await shown();
  changed.send({ type: "workbook changed" });
  expect(changed.state.copy).toMatchObject({ preview: { kind: "not yet" } });
});

test("what could not be read is told as a sentence, and never as something that was not written", async () => {
  const memory = memoryBook(book(milk));
  const driver = new Driver(portsOn(memory), TODAY);
  driver.ports.book.readBook = () => Promise.reject(new Error("the line broke.."));
  await driver.settle();
  expect(driver.state.reading).toEqual({ kind: "failed", message: "The line broke." });
});

describe("a book that counts its days from 1904", () => {
  test("is not copied from", async () => {
    const old = { ...book(milk, mapping(...MILK_ROWS)), from1904: true };
    const event = await readOldBook(() => Promise.resolve(old), "old.xlsx", [], 1);
    expect(event).toMatchObject({ type: "old book refused", message: expect.stringContaining("1904") as string });
  });

  test("is told of also where the lists are mapped", () => {
    const old = { ...book(milk, mapping(...MILK_ROWS)), from1904: true };
    expect(findLists(old, storedMapping(old)).problems.join(" ")).toContain("1904");
    expect(checkBook(old, TODAY).remarks.join(" ")).toContain("1904");
  });
});
