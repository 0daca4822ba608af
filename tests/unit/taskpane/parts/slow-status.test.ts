import { readHerd } from "../../../../src/herd/herd";
import { rulesInForce } from "../../../../src/taskpane/rules";
import { tellIfSlow } from "../../../../src/taskpane/parts/tell-if-slow";
import { doingOf as doingInDue } from "../../../../src/taskpane/screens/due/doing";
import { doingOf as doingInRecord } from "../../../../src/taskpane/screens/record/doing";
import { initialState, nextState } from "../../../../src/taskpane/screens/record/model";
import type { RecordEvent } from "../../../../src/taskpane/screens/record/events";
import type { TablePort } from "../../../../src/workbook/table-port";
import { Driver } from "../due/driver";
import { smallBook, TODAY as DUE_DAY, userOf } from "../due/small-book";
import { bookOf, COWS, portOn, rowsOf, TODAY } from "../record/herd";

beforeEach(() => jest.useFakeTimers());
afterEach(() => jest.useRealTimers());

/** A workbook that takes so long for each reading, save and taking back. */
function slow(port: TablePort, delayMs: number): TablePort {
  const later = <T>(work: () => Promise<T>): Promise<T> =>
    new Promise<void>((resolve) => setTimeout(resolve, delayMs)).then(work);
  return {
    listTables: () => later(() => port.listTables()),
    readTable: (name) => port.readTable(name),
    save: (save) => later(() => port.save(save)),
    takeBack: (id) => later(() => port.takeBack(id)),
    pastSaves: () => port.pastSaves(),
    createTable: (table) => later(() => port.createTable(table)),
    writeBlock: (block) => port.writeBlock(block),
    watchChanges: (listener) => port.watchChanges(listener),
  };
}

function listener() {
  const told: string[] = [];
  return { told, hear: tellIfSlow((text) => told.push(text)) };
}

test("work of a second or more is told of until it is over, shorter work never", async () => {
  const { told, hear } = listener();
  hear("Saving ...");
  await jest.advanceTimersByTimeAsync(999);
  hear(undefined);
  await jest.advanceTimersByTimeAsync(5000);
  expect(told).toEqual([]);
  hear("Saving ...");
  await jest.advanceTimersByTimeAsync(1000);
  expect(told).toEqual(["Saving ..."]);
  hear(undefined);
  expect(told).toEqual(["Saving ...", ""]);
});

test("the wait counts from the first of several works without a pause, and each is named", async () => {
  const { told, hear } = listener();
  hear("Saving ...");
  await jest.advanceTimersByTimeAsync(600);
  hear("Reading the workbook ...");
  await jest.advanceTimersByTimeAsync(400);
  hear("Saving ...");
  hear(undefined);
  expect(told).toEqual(["Reading the workbook ...", "Saving ...", ""]);
});

/** Someone records a sound cow in a workbook that takes so long; what the status said. */
async function recorded(delayMs: number): Promise<readonly string[]> {
  const book = bookOf();
  const tables = slow(portOn(book), delayMs);
  const { told, hear } = listener();
  let isReading = true;
  let state = initialState(TODAY, "id-1");
  const send = (event: RecordEvent): void => {
    state = nextState(state, event);
    hear(doingInRecord(state, isReading));
  };
  hear(doingInRecord(state, isReading));
  const reading = readHerd(tables).then((herd) => {
    isReading = false;
    hear(doingInRecord(state, isReading));
    return herd;
  });
  await jest.advanceTimersByTimeAsync(10 * delayMs);
  const herd = await reading;
  send({ type: "herd read", herd, rules: rulesInForce(herd.rules), past: [] });
  send({ type: "chose", field: "cow", value: String(COWS[0]!["cow"]) });
  send({ type: "chose", field: "score", value: "0" });
  send({ type: "nothing found" });
  if (state.phase.kind !== "saving") throw new Error(`not saving: ${state.announced}`);
  const { save } = state.phase.planned;
  const saving = tables.save(save);
  await jest.advanceTimersByTimeAsync(delayMs);
  await saving;
  send({ type: "saved", id: save.id, nextId: "id-2", past: tables.pastSaves() });
  send({ type: "take back", id: save.id });
  const takingBack = tables.takeBack(save.id);
  await jest.advanceTimersByTimeAsync(delayMs);
  await takingBack;
  send({ type: "taken back", id: save.id, past: tables.pastSaves() });
  expect(rowsOf(book, "Findings")).toEqual([]);
  return told;
}

test("recording in a slow workbook tells of the reading, the save and the taking back", async () => {
  expect(await recorded(1500)).toEqual(["Reading the workbook ...", "", "Saving ...", "", "Taking it back ...", ""]);
});

test("recording in a workbook that answers soon tells of nothing", async () => {
  expect(await recorded(200)).toEqual([]);
});

test("what is due in a slow workbook: the reading and the save of an outcome are told of", async () => {
  const driver = new Driver(slow(userOf(smallBook()), 1500), DUE_DAY);
  const { told, hear } = listener();
  const reading = driver.begin();
  hear(doingInDue(driver.state, true));
  await jest.advanceTimersByTimeAsync(3000);
  for (const event of await Promise.all(reading)) driver.send(event);
  hear(doingInDue(driver.state, false));
  expect(told).toEqual(["Reading the workbook ...", ""]);
  driver.press(
    driver.lines.find(({ finding }) => finding !== undefined)!,
    "better",
  );
  const saving = driver.begin();
  hear(doingInDue(driver.state, false));
  await jest.advanceTimersByTimeAsync(1500);
  for (const event of await Promise.all(saving)) driver.send(event);
  hear(doingInDue(driver.state, false));
  expect(told.slice(2)).toEqual(["Saving ...", ""]);
});
