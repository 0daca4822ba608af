import fc from "../../random";
import type { PlainCell } from "../../../src/workbook/port";
import { TableError } from "../../../src/workbook/table-error";
import { rowAsRead, type TablePort } from "../../../src/workbook/table-port";
import { finding, saveOf, startTables, typedRows } from "./start";
import type { TestBook, TestHost } from "./test-book";

/** Runs work of several users with their steps in any order; the scheduler picks and remembers the order. */
async function inAnyOrder(book: TestBook, scheduler: fc.Scheduler, work: () => Promise<unknown>[]): Promise<void> {
  book.setTurn(() => scheduler.schedule(Promise.resolve(), "turn"));
  await scheduler.waitFor(Promise.all(work()));
  book.setTurn(() => Promise.resolve());
}

async function cowsOf(host: TestHost, port: TablePort, table: string): Promise<PlainCell[]> {
  const rows = await typedRows(port, table);
  const filled = host.mayLeaveBlankRows === true ? rows.filter((row) => row.some((cell) => cell !== null)) : rows;
  return filled.map((row) => row[1] ?? null);
}

export function togetherContract(host: TestHost, runs: number): void {
  const parameters = { numRuns: runs, endOnFailure: true };

  test("two users saving at once both keep all their rows", async () => {
    await fc.assert(
      fc.asyncProperty(fc.scheduler(), fc.integer({ min: 1, max: 3 }), async (scheduler, size) => {
        const book = await host.open(startTables);
        const saves = [1, 2, 3].map((user) =>
          Array.from({ length: size }, (_, row) => finding(user * 1000 + row, "DD", { Note: `by ${user}` })),
        );
        await inAnyOrder(book, scheduler, () =>
          saves.map((rows) =>
            book
              .user()
              .save(saveOf({ append: "Findings", rows }, { append: "Scores", rows: [{ Cow: rows[0]!["Cow"]! }] })),
          ),
        );
        const port = book.user();
        const wanted = saves.flat().map((row) => row["Cow"]);
        expect((await cowsOf(host, port, "Findings")).slice(3).sort()).toEqual(wanted.sort());
        expect((await cowsOf(host, port, "Scores")).sort()).toEqual(saves.map((rows) => rows[0]!["Cow"]).sort());
      }),
      parameters,
    );
  });

  test("an update, a new row and a taking back at once lose nothing", async () => {
    await fc.assert(
      fc.asyncProperty(fc.scheduler(), async (scheduler) => {
        const book = await host.open(startTables);
        const [first, second, third] = [book.user(), book.user(), book.user()];
        const gone = saveOf({ append: "Findings", rows: [finding(500)] });
        await first.save(gone);
        const row = rowAsRead(await second.readTable("Findings"), 1);
        await inAnyOrder(book, scheduler, () => [
          first.takeBack(gone.id),
          second.save(saveOf({ update: row, set: { Note: "seen" } })),
          third.save(saveOf({ append: "Findings", rows: [finding(600), finding(601)] })),
        ]);
        const rows = await typedRows(third, "Findings");
        expect(rows.map((cells) => cells[1]).sort()).toEqual([101, 102, 600, 601, "B7"].sort());
        expect(rows.find((cells) => cells[1] === 102)?.[4]).toBe("seen");
      }),
      parameters,
    );
  });

  test("of those who take back at once, each takes back just what is theirs", async () => {
    await fc.assert(
      fc.asyncProperty(fc.scheduler(), async (scheduler) => {
        const book = await host.open(startTables);
        const users = [book.user(), book.user(), book.user()];
        const saves = [500, 501, 502].map((cow) => saveOf({ append: "Findings", rows: [finding(cow), finding(cow)] }));
        for (const [at, user] of users.entries()) await user.save(saves[at]!);
        await inAnyOrder(book, scheduler, () => [users[0]!.takeBack(saves[0]!.id), users[1]!.takeBack(saves[1]!.id)]);
        expect(await cowsOf(host, users[2]!, "Findings")).toEqual([101, 102, "B7", 502, 502]);
      }),
      parameters,
    );
  });

  test("of two who change the same row at once, the later one is told", async () => {
    await fc.assert(
      fc.asyncProperty(fc.scheduler(), async (scheduler) => {
        const book = await host.open(startTables);
        const users = [book.user(), book.user()];
        const row = rowAsRead(await users[0]!.readTable("Care"), 0);
        const outcomes: unknown[] = [];
        await inAnyOrder(book, scheduler, () =>
          users.map((user, index) =>
            user.save(saveOf({ update: row, set: { Done: `by ${index}` } })).then(
              () => outcomes.push(`by ${index}`),
              (error: unknown) => outcomes.push(error),
            ),
          ),
        );
        const kept = outcomes.filter((outcome) => typeof outcome === "string");
        const told = outcomes.filter((outcome) => outcome instanceof TableError && outcome.kind === "changed");
        expect([kept.length, told.length]).toEqual([1, 1]);
        expect((await typedRows(users[0]!, "Care"))[0]?.[3]).toBe(kept[0]);
      }),
      parameters,
    );
  });
}
