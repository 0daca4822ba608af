import { certaintyOf, openPoints } from "../../../../src/taskpane/screens/set-up/lists";
import { checkedIn } from "../../../../src/taskpane/screens/set-up/check-model";
import { plantedMistakes } from "../../../../src/samples/own-headings";
import { cellPosition } from "../../../../src/workbook/cell-address";
import { cellAt } from "../../../../src/workbook/plain-book";
import { Driver } from "./driver";
import { memoryBook, portsOn } from "./memory-book";
import { sampleBook, TODAY } from "./own-book";

/** The sample is large, and the machine may be at other work. */
jest.setTimeout(60_000);

const own = sampleBook("own-headings.xlsx");

async function opened(): Promise<Driver> {
  const driver = new Driver(portsOn(memoryBook(own)), TODAY);
  await driver.settle();
  return driver;
}

async function valueOf(driver: Driver, sheetName: string, address: string) {
  const { row, column } = cellPosition(address);
  return cellAt(await driver.ports.book.readSheet(sheetName), row, column);
}

describe("the secretary's own book", () => {
  test("four lists are found, nothing has to be asked, and nothing is written before she says so", async () => {
    const driver = await opened();
    const lists = driver.state.lists.filter(({ readAs }) => readAs !== "");
    expect(lists.map(({ sheet, source, readAs }) => [sheet, source, readAs])).toEqual([
      ["Herd", "HerdList", "Cows"],
      ["Feet 2026", undefined, "Findings"],
      ["Milk recording", undefined, "Tests"],
      ["Walking", undefined, "Scores"],
    ]);
    expect(lists.flatMap(openPoints)).toEqual([]);
    expect(driver.column("Milk recording", "Cells/ml")).toMatchObject({ key: "count", unit: "cells/mL" });
    expect(driver.column("Feet 2026", "Visit")).toMatchObject({ key: "date", unit: "day first" });
    expect(driver.column("Milk recording", "Butterfat").key).toBe("");
    // Days are shown as the sheet shows them, not as serial numbers.
    expect(driver.column("Herd", "DOB").examples[0]).toMatch(/^20\d\d-\d\d-\d\d$/);
    expect((await driver.ports.book.readBook()).sheets.map(({ name }) => name)).toEqual(
      own.sheets.map(({ name }) => name),
    );
  });

  test("kept, the mapping stands on a sheet of its own and nothing is asked again; taken back, it is gone", async () => {
    const driver = await opened();
    await driver.press({ type: "keep lists pressed", id: driver.newId() });
    expect(driver.state.notice).toMatchObject({
      kind: "done",
      text: "What is read from 4 lists now stands on the sheet Mapping.",
    });
    const content = await driver.ports.tables.readTable("Mapping");
    expect(content.rowCount).toBe(8 + 13 + 6 + 3);
    expect(driver.state.lists.filter(({ kept }) => kept)).toHaveLength(4);
    expect(driver.column("Feet 2026", "Toe cm")).toMatchObject({ key: "toeMm", unit: "cm", certainty: 1 });
    await driver.press({ type: "take back pressed", id: driver.state.notice!.back! });
    expect((await driver.ports.tables.readTable("Mapping")).rowCount).toBe(0);
    expect(driver.state.lists.filter(({ kept }) => kept)).toEqual([]);
    expect(driver.column("Feet 2026", "Toe cm").key).toBe("toeMm");
  });

  test("what she says of a column is kept, not what was guessed", async () => {
    const driver = await opened();
    const list = driver.list("Milk recording").id;
    await driver.press({
      type: "column read as",
      list,
      column: driver.column("Milk recording", "DIM").column,
      key: "",
    });
    await driver.press({
      type: "unit chosen",
      list,
      column: driver.column("Milk recording", "Litres").column,
      unit: "kg",
    });
    await driver.press({ type: "keep lists pressed", id: driver.newId() });
    expect(driver.column("Milk recording", "DIM").key).toBe("");
    expect(driver.column("Milk recording", "Litres").unit).toBe("kg");
  });

  test("two columns with one meaning, and a list without cows, are not kept", async () => {
    const driver = await opened();
    const list = driver.list("Walking").id;
    const { column } = driver.column("Walking", "Tag");
    await driver.press({ type: "column read as", list, column, key: "date" });
    expect(openPoints(driver.list("Walking"))).toEqual([
      '"Scored on" (column A) and "Tag" (column B) are both read as Date: choose one.',
      "No column is read as Cow: without it no row can be told apart.",
    ]);
    await driver.press({ type: "keep lists pressed", id: driver.newId() });
    expect(driver.state.notice).toMatchObject({ kind: "error" });
    expect((await driver.ports.tables.listTables()).map(({ name }) => name)).toEqual(["HerdList"]);
  });

  test("a column that someone measured from two places has its landmark; without the column it is asked for", async () => {
    const driver = await opened();
    const list = driver.list("Feet 2026").id;
    const { column } = driver.column("Feet 2026", "Measured from");
    await driver.press({ type: "column read as", list, column, key: "" });
    expect(openPoints(driver.list("Feet 2026"))).toEqual(["Say where the toes were measured from."]);
    await driver.press({ type: "landmark chosen", list, landmark: "hard horn" });
    await driver.press({ type: "keep lists pressed", id: driver.newId() });
    expect(driver.list("Feet 2026").landmark).toBe("hard horn");
  });

  test("her words are proposed, counted only when kept, and the one that nobody knows waits", async () => {
    const driver = await opened();
    await driver.press({ type: "keep lists pressed", id: driver.newId() });
    const { unknown } = driver.state.words;
    const proposed = Object.fromEntries(unknown.map(({ word, proposed }) => [word, proposed]));
    expect(proposed).toMatchObject({ digi: "DD", "hairy wart": "DD", clean: "none", "bad un": "" });
    await driver.press({ type: "keep words pressed", id: driver.newId() });
    expect(driver.state.words.unknown.filter(({ proposed }) => proposed === "")).not.toHaveLength(0);
    expect(driver.state.words.unknown.map(({ word }) => word)).toContain("bad un");
    expect(driver.state.words.known).toContainEqual({ word: "digi", code: "DD", name: "Digital dermatitis" });
    await driver.press({ type: "code chosen", word: "bad un", code: "SU" });
    await driver.press({ type: "keep words pressed", id: driver.newId() });
    expect(driver.state.words.known).toContainEqual({ word: "bad un", code: "SU", name: "Sole ulcer" });
  });

  test("the check finds every planted mistake once the lists and words are kept", async () => {
    const driver = await opened();
    await driver.press({ type: "keep lists pressed", id: driver.newId() });
    await driver.press({ type: "keep words pressed", id: driver.newId() });
    await driver.press({ type: "check pressed" });
    const found = new Set(checkedIn(driver.state)!.groups.flatMap(({ doubts }) => doubts.map(({ check, sheet, address }) => `${check}: ${sheet}!${address}`))); // oxfmt-ignore
    for (const { check, sheet, address } of plantedMistakes()) expect(found).toContain(`${check}: ${sheet}!${address}`);
  });

  test("one repair writes one cell, is checked again, and is taken back", async () => {
    const driver = await opened();
    await driver.press({ type: "keep lists pressed", id: driver.newId() });
    await driver.press({ type: "check pressed" });
    const before = checkedIn(driver.state)!.groups.find(({ check }) => check === "text number")!;
    const doubt = before.doubts.find(({ sheet }) => sheet === "Milk recording")!;
    await driver.press({ type: "repair pressed", doubt, id: driver.newId() });
    expect(await valueOf(driver, doubt.sheet, doubt.address)).toBe(185_000);
    const after = checkedIn(driver.state)!.groups.find(({ check }) => check === "text number")!;
    expect(after.doubts).toHaveLength(before.doubts.length - 1);
    await driver.press({ type: "take back pressed", id: driver.state.notice!.back! });
    expect(await valueOf(driver, doubt.sheet, doubt.address)).toBe("185000");
    expect(checkedIn(driver.state)!.groups.find(({ check }) => check === "text number")!.doubts).toHaveLength(
      before.doubts.length,
    );
  });

  test("all repairs of a kind are shown first, then made and taken back together", async () => {
    const driver = await opened();
    await driver.press({ type: "keep lists pressed", id: driver.newId() });
    await driver.press({ type: "check pressed" });
    await driver.press({ type: "group pressed", check: "mixed unit" });
    await driver.press({ type: "all repairs pressed", id: driver.newId() });
    expect(driver.state.work).toBeUndefined();
    expect(driver.state.notice).toBeUndefined();
    const group = checkedIn(driver.state)!.groups.find(({ check }) => check === "mixed unit")!;
    const cells = group.repairs;
    expect(cells.map(({ was, set }) => [was, set])).toEqual([
      [240, 240_000],
      [84, 8.4],
    ]);
    await driver.press({ type: "all repairs asked" });
    await driver.press({ type: "all repairs pressed", id: driver.newId() });
    for (const { sheet, address, set } of cells) expect(await valueOf(driver, sheet, address)).toBe(set);
    await driver.press({ type: "take back pressed", id: driver.state.notice!.back! });
    for (const { sheet, address, was } of cells) expect(await valueOf(driver, sheet, address)).toBe(was);
  });

  test("a repair is refused where someone changed the cell meanwhile", async () => {
    const driver = await opened();
    await driver.press({ type: "keep lists pressed", id: driver.newId() });
    await driver.press({ type: "check pressed" });
    const doubt = checkedIn(driver.state)!.groups.find(({ check }) => check === "zero count")!.doubts[0]!;
    await driver.ports.book.changeCells({ id: "else", title: "else", cells: [{ sheet: doubt.sheet, address: doubt.address, was: 0, set: 150_000 }] }); // oxfmt-ignore
    await driver.press({ type: "repair pressed", doubt, id: driver.newId() });
    expect(driver.state.notice?.kind).toBe("error");
    expect(await valueOf(driver, doubt.sheet, doubt.address)).toBe(150_000);
  });

  test("a plain list becomes a table in one step and is plain again in one", async () => {
    const driver = await opened();
    await driver.press({ type: "keep lists pressed", id: driver.newId() });
    await driver.press({ type: "make table pressed", list: driver.list("Walking").id, id: driver.newId() });
    expect(driver.state.notice?.text).toBe("The list is now the table Walking.");
    expect(driver.list("Walking")).toMatchObject({ source: "Walking", readAs: "Scores", kept: true });
    await driver.press({ type: "take back pressed", id: driver.state.notice!.back! });
    expect(driver.list("Walking")).toMatchObject({ source: undefined, readAs: "Scores", kept: true });
  });
});

test("certainty is said in words", async () => {
  const driver = await opened();
  const words = driver
    .list("Feet 2026")
    .columns.filter(({ key }) => key !== "")
    .map(certaintyOf);
  expect(words.filter((word) => word === "please say")).toEqual([]);
  expect(words).toContain("sure");
  expect(certaintyOf({ ...driver.column("Feet 2026", "Leg"), certainty: 0.4 })).toBe("please say");
  expect(certaintyOf({ ...driver.column("Feet 2026", "Leg"), certainty: 0.6 })).toBe("likely");
  expect(certaintyOf({ ...driver.column("Feet 2026", "Leg"), certainty: 0.9 })).toBe("sure");
});
