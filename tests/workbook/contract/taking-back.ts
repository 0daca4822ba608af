import { memoryLog } from "../../../src/workbook/saving/save-log";
import { rowAsRead } from "../../../src/workbook/table-port";
import { finding, MARCH_1, refusal, refusedAs, saveOf, startTables, typedRows, wholeBook } from "./start";
import type { TestHost } from "./test-book";

export function takingBackContract(host: TestHost): void {
  test("the last saves are taken back one by one, latest first", async () => {
    const book = await host.open(startTables);
    const port = book.user();
    const states = [await wholeBook(port)];
    const saves = [
      saveOf({ append: "Findings", rows: [finding(103), finding(104, "SU")] }),
      saveOf(
        { append: "Findings", rows: [finding(105)] },
        { append: "Scores", rows: [{ Date: { day: MARCH_1 }, Cow: 105, Score: 3 }] },
      ),
      saveOf({ update: rowAsRead(await port.readTable("Care"), 1), set: { Done: "same", What: "look again" } }),
    ];
    for (const save of saves) {
      await port.save(save);
      states.push(await wholeBook(port));
    }
    expect(port.pastSaves().map(({ id }) => id)).toEqual([...saves].reverse().map(({ id }) => id));
    for (const save of [...saves].reverse()) {
      states.pop();
      await port.takeBack(save.id);
      expect(await wholeBook(port)).toEqual(states[states.length - 1]);
    }
    expect(port.pastSaves()).toEqual([]);
  });

  test("a save below which others wrote is taken back without their rows", async () => {
    const book = await host.open(startTables);
    const port = book.user();
    const save = saveOf({ append: "Findings", rows: [finding(103), finding(104)] });
    await port.save(save);
    await book.user().save(saveOf({ append: "Findings", rows: [finding(200, "WL")] }));
    await port.takeBack(save.id);
    expect((await typedRows(port, "Findings")).map((row) => row[1])).toEqual([101, 102, "B7", 200]);
    expect((await book.cell("Findings", 3, "Due")).hasFormula).toBe(true);
  });

  test("equal rows of one save are all taken back, and the table is as long as before", async () => {
    const book = await host.open(startTables);
    const port = book.user();
    const save = saveOf({ append: "Findings", rows: [finding(7), finding(7), finding(8), finding(7)] });
    await port.save(save);
    expect(await book.bodyRows("Findings")).toBe(7);
    await port.takeBack(save.id);
    expect((await typedRows(port, "Findings")).map((row) => row[1])).toEqual([101, 102, "B7"]);
    expect(await book.bodyRows("Findings")).toBe(3);
  });

  test("only one of two equal rows is taken back", async () => {
    const book = await host.open(startTables);
    const port = book.user();
    const twice = [
      saveOf({ append: "Findings", rows: [finding(7)] }),
      saveOf({ append: "Findings", rows: [finding(7)] }),
    ];
    for (const save of twice) await port.save(save);
    await port.takeBack(twice[0]!.id);
    expect((await typedRows(port, "Findings")).map((row) => row[1])).toEqual([101, 102, "B7", 7]);
  });

  test("taking back is refused whole once someone changed a row, and says which cell", async () => {
    const book = await host.open(startTables);
    const port = book.user();
    const save = saveOf(
      { append: "Findings", rows: [finding(103), finding(104)] },
      { append: "Care", rows: [{ Cow: 103, What: "block off" }] },
    );
    await port.save(save);
    await book.other.setCell("Findings", 4, "Lesion", "WL");
    const now = await wholeBook(port);
    const message = await refusedAs(port.takeBack(save.id), "changed");
    expect(message).toMatch(/Findings.*row 5.*"Lesion".*"DD".*"WL"/);
    expect(await wholeBook(port)).toEqual(now);
    expect(port.pastSaves().map(({ id }) => id)).toEqual([save.id]);
    await book.other.setCell("Findings", 4, "Lesion", "DD");
    await port.takeBack(save.id);
    expect(await wholeBook(port)).toEqual(await wholeBook((await host.open(startTables)).user()));
  });

  test("taking back an outcome is refused once the row says something else", async () => {
    const book = await host.open(startTables);
    const port = book.user();
    const save = saveOf({ update: rowAsRead(await port.readTable("Care"), 0), set: { Done: "better" } });
    await port.save(save);
    await book.other.setCell("Care", 0, "Done", "healed");
    await refusedAs(port.takeBack(save.id), "changed");
    expect((await typedRows(port, "Care"))[0]).toEqual([101, "bandage off", MARCH_1 + 3, "healed"]);
  });

  test("a deleted row is not taken back", async () => {
    const book = await host.open(startTables);
    const port = book.user();
    const save = saveOf({ append: "Findings", rows: [finding(103)] });
    await port.save(save);
    await book.other.deleteRow("Findings", 3);
    expect(await refusedAs(port.takeBack(save.id), "changed")).toMatch(/deleted/);
  });

  test("a save is taken back once, also by a port opened anew", async () => {
    const book = await host.open(startTables);
    const log = memoryLog();
    const save = saveOf({ append: "Findings", rows: [finding(103)] });
    await book.user(log).save(save);
    const later = book.user(log);
    await later.takeBack(save.id);
    expect((await typedRows(later, "Findings")).length).toBe(3);
    await refusedAs(later.takeBack(save.id), "unknown-save");
  });

  test("whichever step of taking back fails, all of the save stands or none of it", async () => {
    const open = async () => {
      const book = await host.open(startTables);
      const port = book.user();
      const before = await wholeBook(port);
      const save = saveOf(
        { append: "Findings", rows: [finding(103), finding(104)] },
        { update: rowAsRead(await port.readTable("Care"), 0), set: { Done: "better" } },
      );
      await port.save(save);
      return { book, port, before, save };
    };
    const first = await open();
    const from = first.book.steps();
    await first.port.takeBack(first.save.id);
    const steps = first.book.steps() - from;
    for (let after = 0; after <= steps; after++) {
      const { book, port, before, save } = await open();
      const saved = await wholeBook(port);
      book.failSteps(after, 1);
      const outcome = await port.takeBack(save.id).then(
        () => "taken back",
        (error: unknown) => error,
      );
      book.failSteps(0, 0);
      const now = await wholeBook(port);
      if (outcome === "taken back") expect(now).toEqual(before);
      else {
        const { kind } = await refusal(Promise.reject(outcome as Error));
        expect(["failed", "closed", "uncertain"]).toContain(kind);
        if (kind === "uncertain") expect([saved, before]).toContainEqual(now);
        else expect(now).toEqual(saved);
      }
    }
  });
}
