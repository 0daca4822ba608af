import { filtered, grouped, noFilter, placesOf } from "../../../../src/taskpane/screens/due/grouping";
import { summary } from "../../../../src/taskpane/screens/due/model";
import { rowsByPlace } from "../../../../src/taskpane/screens/due/print-rows";
import { writtenList } from "../../../../src/taskpane/screens/due/written-list";
import { Driver } from "./driver";
import { FINDINGS, insertRow, smallBook, table, TODAY, typeInto, userOf } from "./small-book";

async function opened(book = smallBook()) {
  const driver = new Driver(userOf(book), TODAY);
  await driver.settle();
  return { book, driver };
}

const shown = ({ cow, what, due }: { cow: string; what: string; due: number }) => [cow, what, due - TODAY];

describe("the list", () => {
  test("has the feet by the rules", async () => {
    const { driver } = await opened();
    const feet = driver.lines.filter(({ finding }) => finding !== undefined);
    // SU of 29 days: second recheck and block off at 28, third recheck at 35. DD of 8 days: first recheck and second
    // topical treatment at 7. IP of 3 days: recheck at 3. Block of 12 days: looked at on day 14.
    expect(feet.map(shown)).toEqual([
      ["101", "second recheck", -1],
      ["101", "take the block off", -1],
      ["102", "first recheck", -1],
      ["102", "topical treatment 2 of 3", -1],
      ["101", "first recheck", -1],
      ["101", "topical treatment 2 of 3", -1],
      ["103", "first recheck", 0],
      ["105", "look at the block", 2],
      ["101", "third recheck", 6],
      ["102", "second recheck", 6],
      ["102", "topical treatment 3 of 3", 6],
      ["101", "second recheck", 6],
      ["101", "topical treatment 3 of 3", 6],
    ]);
  });

  test("has routine trims of cows that are here: 117 days in milk, unless trimmed since or within 60 days", async () => {
    const { driver } = await opened();
    // 101 reaches 117 days today but was trimmed 29 days ago; 104 was trimmed on day 110; 106 reached 117 days 8 days ago.
    expect(driver.lines.filter(({ work }) => work === "trim").map(shown)).toEqual([["106", "routine trim", -8]]);
  });

  test("has cows lame at the last scoring, without those that are treated, have left or walk sound now", async () => {
    const { driver } = await opened();
    const lame = driver.lines.filter(({ work }) => work === "lame");
    expect(lame.map(shown)).toEqual([["104", "severely lame: treat today", -9]]);
    expect(lame[0]!.remarks).toContain("if she bears no weight, call the veterinarian today");
  });

  test("has them by the scale that the workbook says: on 1 to 5 a cow is lame from 3, severely from 4", async () => {
    const book = smallBook();
    const mapping = table("Mapping", ["Table", "Value", "Sheet", "Source", "Heading", "Unit"], [
      ["Scores", "Score", "Scores", "Scores", "Score", "1-5"],
    ]); // oxfmt-ignore
    book.replace({ ...book.state, tables: [...book.state.tables, mapping] }, "other", ["Mapping"]);
    typeInto(book, "Scores", 4, "Score", 3.5);
    const { driver } = await opened(book);
    const lame = driver.lines.filter(({ work }) => work === "lame");
    expect(lame.map(({ cow, what }) => [cow, what])).toEqual([["104", "lame: lift and treat"], ["106", "lame: lift and treat"]]); // oxfmt-ignore
    typeInto(book, "Scores", 2, "Score", 4);
    await driver.settle();
    expect(driver.lines.find(({ work }) => work === "lame")!.what).toBe("severely lame: treat today");
  });

  test("a cow scored at the chute takes no other off the list, comes onto it herself, and is no scoring of the herd", async () => {
    const book = smallBook();
    const { rows } = book.table("Scores");
    const chute = [TODAY, 106, 2];
    const tables = book.state.tables.map((one) => (one.name === "Scores" ? { ...one, rows: [...rows, chute] } : one));
    book.replace({ ...book.state, tables }, "other", ["Scores"]);
    const { driver } = await opened(book);
    const lame = driver.lines.filter(({ work }) => work === "lame");
    expect(lame.map(shown)).toEqual([
      ["104", "severely lame: treat today", -9],
      ["106", "lame: lift and treat", 0],
    ]);
    expect(driver.lines.filter(({ work }) => work === "score").map(shown)).toEqual([["", "score the herd walking", 5]]);
  });

  test("has the next scoring two weeks after the last", async () => {
    const { driver } = await opened();
    expect(driver.lines.filter(({ work }) => work === "score").map(shown)).toEqual([["", "score the herd walking", 5]]);
  });

  test("names rows that contradict themselves instead of guessing or failing", async () => {
    const rows = [
      [TODAY + 1, 1, "LH", null, "DD"],
      [TODAY - 9, 2, "LH", null, "DD", null, null, null, null, TODAY - 10],
      [TODAY - 9, 3, "LH", null, "mud"],
      ["9 March", 4, "LH", null, "DD"],
      [TODAY - 9, 5, "left hind", null, "Digital dermatitis"],
    ];
    const { driver } = await opened(smallBook(rows, FINDINGS));
    const feet = driver.lines.filter(({ finding }) => finding !== undefined);
    expect(new Set(feet.map(({ cow, finding }) => `${cow} ${finding!.foot} ${finding!.lesion}`))).toEqual(
      new Set(["5 LH DD"]),
    );
    const { reading } = driver.state;
    expect(reading.kind === "read" && reading.listing.remarks.slice(1)).toEqual([
      'Findings, row 4 ("9 March") below the headings: Date is not a date.',
      "Findings, row 1 below the headings: left out: Date is after 2024-03-20.",
      "Findings, row 2 below the headings: left out: Closed on is before Date.",
      'Findings, row 3 ("mud") below the headings: left out: Lesion is no code of the claw disorder key.',
      "1 open finding without a date.",
    ]);
  });

  test("says so where there is no table of findings", async () => {
    const book = smallBook();
    const tables = book.state.tables.filter(({ name }) => name !== "Findings");
    book.replace({ ...book.state, tables }, "other", [undefined]);
    const { driver } = await opened(book);
    const { reading } = driver.state;
    expect(reading.kind === "read" && reading.listing.remarks).toContain(
      "The workbook has no table Findings: no foot is listed.",
    );
  });
});

describe("what is shown", () => {
  test("by cow, lesion, foot, kind of work and group", async () => {
    const { driver } = await opened();
    const cows = (filter: Partial<typeof noFilter>) => [
      ...new Set(filtered(driver.lines, { ...noFilter, ...filter }).map(({ cow }) => cow)),
    ];
    expect(cows({ text: "10" })).toEqual(["104", "106", "101", "102", "103", "105"]);
    expect(cows({ text: "102" })).toEqual(["102"]);
    expect(cows({ text: "sole ulcer" })).toEqual(["101"]);
    expect(cows({ text: "dd rh" })).toEqual(["102", "101"]);
    expect(cows({ work: "block" })).toEqual(["101", "105"]);
    expect(cows({ place: "fresh" })).toEqual(["102", "105"]);
    expect(cows({ place: "not known" })).toEqual(["104"]);
    expect(cows({ text: "nowhere" })).toEqual([]);
  });

  test("in three parts, by work or by place, the rest counted", async () => {
    const { driver } = await opened();
    const names = (by: "work" | "place", most = 99) =>
      grouped(driver.lines, TODAY, by, most).map(({ bucket, count, shown, groups }) => [
        bucket,
        count,
        shown,
        groups.map(({ name, lines }) => `${name} ${lines.length}`),
      ]);
    expect(names("work")).toEqual([
      ["overdue", 8, 8, ["Lame, not treated yet 1", "Feet to see again 3", "Blocks 1", "Topical treatment to repeat 2", "Routine trims 1"]], // oxfmt-ignore
      ["today", 1, 1, ["Feet to see again 1"]],
      ["ahead", 7, 7, ["Feet to see again 3", "Blocks 1", "Topical treatment to repeat 2", "Mobility scoring 1"]],
    ]);
    expect(names("place")[0]).toEqual(["overdue", 8, 8, ["fresh 2", "high 4", "low 1", "not known 1"]]);
    expect(names("work", 3)[0]).toEqual(["overdue", 8, 3, ["Lame, not treated yet 1", "Feet to see again 2"]]);
  });

  test("summed up in a sentence", async () => {
    const { driver } = await opened();
    expect(summary(driver.state)).toBe("8 overdue, 1 on 2024-03-20, 7 in the 7 days after");
    driver.send({ type: "filtered", filter: { text: "103" } });
    expect(summary(driver.state)).toBe("0 overdue, 1 on 2024-03-20, 0 in the 7 days after");
  });
});

describe("on paper and in the workbook", () => {
  test("one row a cow, place by place, the longest overdue first", async () => {
    const { driver } = await opened();
    const places = rowsByPlace(driver.lines, placesOf(driver.lines));
    expect(
      places.map(({ place, rows }) => [
        place,
        rows.map(({ cow, feet }) => `${cow}: ${feet.map((lines) => lines.length).join("+")}`),
      ]),
    ).toEqual([
      ["fresh", ["102: 4", "105: 1"]],
      ["high", ["101: 3+4", "103: 1"]],
      ["low", ["106: 1"]],
      ["not known", ["104: 1"]],
      ["whole herd", [": 1"]],
    ]);
  });

  test("the list is written on a sheet of its own, under the next free name, over nothing", async () => {
    const { book, driver } = await opened();
    for (const sheet of ["Due 2024-03-20", "Due 2024-03-20 2"]) {
      driver.pressed({ type: "write pressed" });
      await driver.settle();
      expect(driver.state.notice).toEqual({ kind: "done", text: `The list stands on sheet ${sheet}.` });
      expect(book.state.sheets.find(({ name }) => name === sheet)?.cells["A2"]?.value).toMatch(/licensed veterinarian/);
    }
    const { columns, rows } = book.table("Due_2024_03_20");
    expect(columns.map(({ heading }) => heading).slice(0, 7)).toEqual([
      "Cow",
      "Group",
      "Foot",
      "Lesion",
      "What to do",
      "Due",
      "Days over",
    ]);
    expect(rows).toHaveLength(16);
    expect(rows.find((row) => row[4] === "take the block off")!.slice(0, 7)).toEqual([
      101,
      "high",
      "LH",
      "SU",
      "take the block off",
      TODAY - 1,
      1,
    ]);
  });

  test("text from a cell stays text on the written sheet", () => {
    const line = { key: "", work: "lame", what: "=1+1", due: TODAY, cow: "007", place: "", remarks: [] } as const;
    expect(writtenList([line], TODAY, 0).table.rows[0]).toMatchObject({ Cow: "007", "What to do": "=1+1" });
  });
});

test("an opened line whose row someone changes is closed, and the user told", async () => {
  const { book, driver } = await opened();
  const line = driver.line(102, "first recheck");
  driver.send({ type: "line pressed", key: line.key });
  insertRow(book, "Findings", 0, [TODAY - 7, 900, "LF", null, "DD"]);
  await driver.settle();
  expect(driver.state.open).toBe(line.key);
  expect(driver.line(102, "first recheck").finding!.index).toBe(2);
  typeInto(book, "Findings", 2, "Lesion", "SU");
  await driver.settle();
  expect(driver.state.open).toBeUndefined();
  expect(driver.state.notice?.text).toBe(
    "The opened line changed in the workbook and was closed. Nothing was written.",
  );
});
