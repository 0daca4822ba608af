import fc from "../../../random";
import { outcomes } from "../../../../src/core/claws/next-look";
import { recheckList } from "../../../../src/functions/claws/recheck-list";
import { evaluate } from "../../../../src/functions/evaluate";
import type { MemoryBook } from "../../../../src/workbook/memory/book";
import type { PlainCell } from "../../../../src/workbook/port";
import { Driver } from "./driver";
import { FINDINGS, insertRow, rowOf, smallBook, TODAY, typeInto, userOf } from "./small-book";

/** What a user at the screen and another one at the sheet may do. */
type Act =
  | {
      readonly kind: "press";
      readonly line: number;
      readonly outcome: (typeof outcomes)[number];
      readonly times: number;
    }
  | { readonly kind: "take back"; readonly which: number }
  | { readonly kind: "look day"; readonly daysAgo: number }
  | { readonly kind: "others type"; readonly row: number; readonly text: string }
  | { readonly kind: "others insert"; readonly at: number; readonly cow: number }
  | { readonly kind: "break off" }
  | { readonly kind: "try again" }
  | { readonly kind: "settle" };

const act: fc.Arbitrary<Act> = fc.oneof(
  { weight: 5, arbitrary: fc.record({ kind: fc.constant("press" as const), line: fc.nat(30), outcome: fc.constantFrom(...outcomes), times: fc.integer({ min: 1, max: 3 }) }) }, // oxfmt-ignore
  { weight: 2, arbitrary: fc.record({ kind: fc.constant("take back" as const), which: fc.nat(5) }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant("look day" as const), daysAgo: fc.nat(12) }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant("others type" as const), row: fc.nat(8), text: fc.string({ maxLength: 4 }) }) }, // oxfmt-ignore
  { weight: 1, arbitrary: fc.record({ kind: fc.constant("others insert" as const), at: fc.nat(6), cow: fc.integer({ min: 200, max: 205 }) }) }, // oxfmt-ignore
  { weight: 1, arbitrary: fc.record({ kind: fc.constant("break off" as const) }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant("try again" as const) }) },
  { weight: 4, arbitrary: fc.record({ kind: fc.constant("settle" as const) }) },
);

async function perform(doing: Act, driver: Driver, book: MemoryBook, pressed: string[]): Promise<void> {
  switch (doing.kind) {
    case "press": {
      const lines = driver.lines.filter(({ finding }) => finding !== undefined);
      const line = lines[doing.line % Math.max(1, lines.length)];
      if (line !== undefined) pressed.push(driver.press(line, doing.outcome, doing.times));
      return;
    }
    case "take back": {
      const save = driver.state.handled[doing.which];
      if (save !== undefined) driver.pressed({ type: "take back pressed", id: save.id });
      return;
    }
    case "look day":
      return driver.send({ type: "look day chosen", seenOn: TODAY - doing.daysAgo });
    case "others type":
      if (doing.row < book.table("Findings").rows.length)
        typeInto(book, "Findings", doing.row, "Note", doing.text === "" ? null : doing.text);
      return;
    case "others insert":
      return insertRow(book, "Findings", doing.at, [
        TODAY - 7,
        doing.cow,
        "LF",
        null,
        "DD",
        null,
        null,
        null,
        null,
        null,
        null,
      ]);
    case "break off": {
      let breaks = true;
      book.beforeStep = async (step) => {
        if (step !== "answer" || !breaks) return;
        breaks = false;
        throw new Error("the line broke");
      };
      return;
    }
    case "try again":
      return driver.send({ type: "save tried again" });
    case "settle":
      return driver.settle();
  }
}

/** Rows of the findings without the cells that an outcome or another user's note may change. */
function core(book: MemoryBook): string[] {
  const { rows } = book.table("Findings");
  return rows.map((_, index) => {
    const { Date, Cow, Foot, Lesion, Treatment } = rowOf(book, "Findings", index);
    return JSON.stringify([Date, Cow, Foot, Lesion, Treatment]);
  });
}

const column = (book: MemoryBook, heading: (typeof FINDINGS)[number]): PlainCell[][] =>
  book.table("Findings").rows.map((_, index) => [rowOf(book, "Findings", index)[heading] ?? null]);

function functionRows(book: MemoryBook): unknown[][] {
  const of = (heading: (typeof FINDINGS)[number]) => column(book, heading);
  const result = evaluate(recheckList, [
    of("Cow"),
    of("Foot"),
    of("Lesion"),
    of("Date"),
    of("Treatment"),
    of("Closed on"),
    TODAY,
    null,
    7,
    of("Seen again"),
    of("Next look"),
  ]).value as unknown[][];
  return result.slice(1).filter(([cow]) => cow !== "");
}

test("whatever users do, each outcome is written once or not at all, no treatment changes, and the list is the function's", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(act, { maxLength: 25 }), async (acts) => {
      const book = smallBook();
      const driver = new Driver(userOf(book), TODAY);
      const pressed: string[] = [];
      await driver.settle();
      for (const doing of acts) await perform(doing, driver, book, pressed);
      await driver.settle();
      for (let tries = 0; driver.state.pending !== undefined && tries < 3; tries++) {
        driver.send({ type: "save tried again" });
        await driver.settle();
      }
      const inserted = acts.flatMap((doing) => (doing.kind === "others insert" ? [JSON.stringify([TODAY - 7, doing.cow, "LF", "DD", null])] : [])); // oxfmt-ignore
      expect([...core(book)].sort()).toEqual([...core(smallBook()), ...inserted].sort());

      const saves = driver.port.pastSaves().map(({ id }) => id);
      expect(new Set(saves).size).toBe(saves.length);
      expect(pressed).toEqual(expect.arrayContaining(saves));
      expect(saves).toEqual(expect.arrayContaining(driver.state.handled.map(({ id }) => id)));

      const lines = driver.lines.filter(({ finding }) => finding !== undefined);
      const shown = lines.map(({ cow, finding, what, due }) => [cow, finding!.foot, what, due, TODAY - due]);
      expect(shown).toEqual(functionRows(book));
    }),
    { numRuns: 150 },
  );
});

test("taking everything back, the last first, leaves the workbook as it was", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(fc.nat(30), fc.constantFrom(...outcomes)), { maxLength: 6 }),
      async (presses) => {
        const book = smallBook();
        const driver = new Driver(userOf(book), TODAY);
        await driver.settle();
        for (const [at, outcome] of presses) {
          const lines = driver.lines.filter(({ finding }) => finding !== undefined);
          if (lines.length > 0) driver.press(lines[at % lines.length]!, outcome);
          await driver.settle();
        }
        for (const { id } of [...driver.state.handled].reverse()) {
          driver.pressed({ type: "take back pressed", id });
          await driver.settle();
        }
        expect(book.table("Findings").rows).toEqual(smallBook().table("Findings").rows);
        expect(book.table("Cows").rows).toEqual(smallBook().table("Cows").rows);
      },
    ),
    { numRuns: 60 },
  );
});
