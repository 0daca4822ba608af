import { today as dayOfComputer } from "../../../../src/taskpane/today";
import { referencesOf } from "../../../../src/taskpane/parts/put-in-sheet/workbook-references";
import { MemoryPort } from "../../../../src/workbook/memory/port";
import { memoryBook, portsOn } from "../set-up/memory-book";

const ports = { ...portsOn(memoryBook({ sheets: [] })), port: new MemoryPort() };

describe("the day that written formulas count from", () => {
  test("is the workbook's cell also where it holds today's date: tomorrow the two differ", async () => {
    const workbook = { ...ports, today: dayOfComputer, holdsItsDay: () => Promise.resolve(true) };
    expect((await referencesOf(workbook)).asOf).toBe("AsOf");
  });

  test("is the computer's where no cell has that name, whatever day the pane counts from", async () => {
    const workbook = { ...ports, today: () => 45_000, holdsItsDay: () => Promise.resolve(false) };
    expect((await referencesOf(workbook)).asOf).toBe("TODAY()");
    const { asOf } = await referencesOf({ ...ports, today: () => 45_000 });
    expect(asOf).toBe("TODAY()");
  });
});
