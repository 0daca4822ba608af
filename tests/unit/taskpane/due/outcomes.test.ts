import { day } from "../../../../src/core/shared/days";
import { Driver } from "./driver";
import { FINDINGS, rowOf, smallBook, TODAY, typeInto, userOf } from "./small-book";

async function opened(book = smallBook()) {
  const driver = new Driver(userOf(book), TODAY);
  await driver.settle();
  return { book, driver };
}

describe("an outcome writes", () => {
  test("healed: the day, the outcome and the closing, in one save", async () => {
    const { book, driver } = await opened();
    const before = rowOf(book, "Findings", 0);
    const id = driver.press(driver.line(101, "second recheck"), "healed");
    await driver.settle();
    expect(rowOf(book, "Findings", 0)).toEqual({
      ...before,
      "Seen again": TODAY,
      Outcome: "healed",
      "Closed on": TODAY,
    });
    expect(driver.port.pastSaves()).toEqual([{ id, title: "Cow 101 LH SU healed" }]);
    expect(driver.state.notice).toEqual({
      kind: "caution",
      text: "Cow 101 LH SU: healed on 2024-03-20, closed. The block counts as taken off: if it is still on, take it off now.",
    });
    expect(driver.lines.some(({ finding }) => finding?.index === 0)).toBe(false);
  });

  test("better: the day, the outcome and the rule's next recheck; what the look did is gone from the list", async () => {
    const { book, driver } = await opened();
    driver.press(driver.line(101, "take the block off"), "better");
    await driver.settle();
    // Treated 2024-02-20: third recheck after 35 days.
    expect(rowOf(book, "Findings", 0)).toMatchObject({
      "Seen again": TODAY,
      Outcome: "better",
      "Next look": day("2024-03-26"),
      "Closed on": null,
    });
    const own = driver.lines.filter(({ finding }) => finding?.index === 0);
    expect(own.map(({ what, due }) => [what, due])).toEqual([["next look", day("2024-03-26")]]);
  });

  test("a day that the user set goes before the rule's", async () => {
    const { book, driver } = await opened();
    const line = driver.line(102, "first recheck");
    driver.send({ type: "line pressed", key: line.key });
    driver.send({ type: "next look chosen", day: TODAY + 3 });
    driver.press(line, "same");
    await driver.settle();
    expect(rowOf(book, "Findings", 1)).toMatchObject({ Outcome: "same", "Next look": TODAY + 3 });
  });

  test("worse: sooner, and a call for the veterinarian, never a treatment of ours", async () => {
    const { book, driver } = await opened();
    driver.press(driver.line(101, "second recheck"), "worse");
    await driver.settle();
    expect(rowOf(book, "Findings", 0)).toMatchObject({ Outcome: "worse", "Next look": day("2024-03-26"), Treatment: "trim, block" }); // oxfmt-ignore
    expect(driver.state.notice?.kind).toBe("caution");
    expect(driver.state.notice?.text).toContain("call the veterinarian");
  });

  test("phlegmon that is the same goes to the veterinarian too", async () => {
    const { driver } = await opened();
    driver.press(driver.line(103), "same");
    await driver.settle();
    expect(driver.state.notice?.text).toMatch(/has not answered: call the veterinarian/);
  });

  test("gone: all her open findings and the day she left, in one save", async () => {
    const { book, driver } = await opened();
    driver.press(driver.line(101, "second recheck"), "gone");
    await driver.settle();
    for (const row of [0, 5])
      expect(rowOf(book, "Findings", row)).toMatchObject({ Outcome: "gone", "Closed on": TODAY, "Seen again": null });
    expect(rowOf(book, "Cows", 0)["Left"]).toBe(TODAY);
    expect(driver.port.pastSaves()).toHaveLength(1);
    expect(driver.lines.filter(({ cow }) => cow === "101")).toEqual([]);
  });

  test("gone of a cow whose leaving is written leaves that day alone", async () => {
    const { book, driver } = await opened();
    const line = driver.line(105);
    expect(line.remarks).toEqual(["left the herd 2024-03-19: record her as gone"]);
    driver.press(line, "gone");
    await driver.settle();
    expect(rowOf(book, "Cows", 4)["Left"]).toBe(TODAY - 1);
    expect(rowOf(book, "Findings", 4)).toMatchObject({ Outcome: "gone", "Closed on": TODAY });
  });

  test("with the day on which the foot was looked at", async () => {
    const { book, driver } = await opened();
    driver.send({ type: "look day chosen", seenOn: TODAY - 1 });
    driver.press(driver.line(102, "first recheck"), "healed");
    await driver.settle();
    expect(rowOf(book, "Findings", 1)).toMatchObject({ "Seen again": TODAY - 1, "Closed on": TODAY - 1 });
  });
});

describe("a block", () => {
  const BLOCK = "The block counts as taken off: if it is still on, take it off now.";

  test("that a look settled is named, so that none is left on unseen", async () => {
    const { driver } = await opened();
    driver.press(driver.line(101, "second recheck"), "better");
    await driver.settle();
    expect(driver.state.notice?.text).toContain(BLOCK);
    expect(driver.state.handled[0]!.caution).toEqual({ short: BLOCK, full: BLOCK });
  });

  test("that stays on stays listed", async () => {
    const { driver } = await opened();
    const line = driver.line(105);
    driver.send({ type: "line pressed", key: line.key });
    driver.send({ type: "next look chosen", day: TODAY + 5 });
    driver.press(line, "better");
    await driver.settle();
    expect(driver.state.notice?.kind).toBe("done");
    driver.send({ type: "days ahead chosen", daysAhead: 28 });
    // Put on 12 days ago: off after 28 days.
    expect(driver.line(105, "take the block off").due).toBe(TODAY + 16);
  });
});

describe("an outcome is refused in plain words, and nothing is written,", () => {
  test("for a look before the treatment", async () => {
    const { book, driver } = await opened();
    driver.send({ type: "look day chosen", seenOn: TODAY - 30 });
    const before = book.state;
    driver.press(driver.line(101, "second recheck"), "healed");
    await driver.settle();
    expect(driver.state.notice?.text).toBe(
      "The day of the look must be 2024-02-20, the day of treatment, or later; got 2024-02-19.",
    );
    expect(book.state).toBe(before);
  });

  test("for a next look that is not after this one", async () => {
    const { driver } = await opened();
    const line = driver.line(102, "first recheck");
    driver.send({ type: "line pressed", key: line.key });
    driver.send({ type: "next look chosen", day: TODAY });
    driver.press(line, "same");
    expect(driver.state.pending).toBeUndefined();
    expect(driver.state.notice?.text).toMatch(/must be after 2024-03-20.*got 2024-03-20/);
  });

  test("without a rule until a day is set", async () => {
    const { book, driver } = await opened();
    const line = driver.line(105);
    driver.press(line, "better");
    expect(driver.state.notice?.text).toMatch(/no recheck for TU: set the day of the next look/);
    driver.send({ type: "next look chosen", day: TODAY + 5 });
    driver.press(line, "better");
    await driver.settle();
    expect(rowOf(book, "Findings", 4)).toMatchObject({ Outcome: "better", "Next look": TODAY + 5 });
  });

  test("where the table has no column for it", async () => {
    const headings: readonly string[] = FINDINGS.filter((heading) => !["Seen again", "Next look"].includes(heading));
    const rows = smallBook().table("Findings").rows;
    const kept = FINDINGS.flatMap((heading, column) => (headings.includes(heading) ? [column] : []));
    const { driver } = await opened(
      smallBook(
        rows.map((row) => kept.map((column) => row[column]!)),
        headings,
      ),
    );
    const line = driver.line(101, "second recheck");
    driver.press(line, "better");
    expect(driver.state.notice?.text).toBe(
      'Nothing was saved: table Findings has no columns "Seen again", "Next look" to type in. Add what is missing.',
    );
    driver.press(line, "healed");
    await driver.settle();
    expect(driver.state.notice?.text).toMatch(/healed on 2024-03-20, closed/);
  });

  test("when someone changed the row meanwhile", async () => {
    const { book, driver } = await opened();
    driver.press(driver.line(102, "first recheck"), "healed");
    typeInto(book, "Findings", 1, "Note", "seen by the vet");
    await driver.settle();
    expect(rowOf(book, "Findings", 1)).toMatchObject({ Outcome: null, "Closed on": null, Note: "seen by the vet" });
    expect(driver.state.notice?.text).toMatch(/changed table Findings meanwhile.*Nothing was written/);
    expect(driver.state.handled).toEqual([]);
  });
});

describe("pressing", () => {
  test("twice writes once", async () => {
    const { driver } = await opened();
    driver.press(driver.line(102, "first recheck"), "better", 2);
    await driver.settle();
    expect(driver.port.pastSaves()).toHaveLength(1);
  });

  test("a line that was settled does nothing", async () => {
    const { driver } = await opened();
    const line = driver.line(102, "first recheck");
    driver.press(line, "better");
    await driver.settle();
    driver.press(line, "worse");
    await driver.settle();
    expect(driver.port.pastSaves()).toHaveLength(1);
  });
});

describe("taking back", () => {
  test("gives the row back as it was, and the line comes back", async () => {
    const { book, driver } = await opened();
    const before = rowOf(book, "Findings", 0);
    const id = driver.press(driver.line(101, "second recheck"), "better");
    await driver.settle();
    driver.pressed({ type: "take back pressed", id });
    await driver.settle();
    expect(rowOf(book, "Findings", 0)).toEqual(before);
    expect(driver.line(101, "second recheck")).toBeDefined();
    expect(driver.state.handled).toEqual([]);
  });

  test("is refused where someone changed the row since", async () => {
    const { book, driver } = await opened();
    const id = driver.press(driver.line(101, "second recheck"), "better");
    await driver.settle();
    typeInto(book, "Findings", 0, "Note", "lost the block");
    driver.pressed({ type: "take back pressed", id });
    await driver.settle();
    expect(rowOf(book, "Findings", 0)).toMatchObject({ Outcome: "better", Note: "lost the block" });
    expect(driver.state.notice?.text).toMatch(/^Not taken back\. Someone changed/);
    expect(driver.state.handled).toHaveLength(1);
  });
});

test("after three outcomes of one foot on one day, each can be taken back, the last first", async () => {
  const { book, driver } = await opened();
  for (const outcome of ["better", "same", "better"] as const) {
    driver.press(driver.line(102, "topical treatment 3 of 3"), outcome);
    await driver.settle();
  }
  for (const outcome of ["same", "better", null]) {
    driver.pressed({ type: "take back pressed", id: driver.state.handled.at(-1)!.id });
    await driver.settle();
    expect(rowOf(book, "Findings", 1)["Outcome"]).toBe(outcome);
  }
});

test("a save that broke off is completed under its own id, once", async () => {
  const { book, driver } = await opened();
  let fail = true;
  book.beforeStep = async (step) => {
    if (step === "answer" && fail) throw new Error("the line broke");
  };
  driver.press(driver.line(102, "first recheck"), "better");
  await driver.settle();
  expect(driver.state.pending?.brokenOff).toBe(true);
  fail = false;
  driver.send({ type: "save tried again" });
  await driver.settle();
  expect(driver.state.pending).toBeUndefined();
  expect(rowOf(book, "Findings", 1)).toMatchObject({ Outcome: "better", "Seen again": TODAY });
  expect(driver.port.pastSaves()).toHaveLength(1);
});
