import { readFileSync } from "node:fs";
import { join } from "node:path";
import { lockBreaks, type NameLock, nameLock } from "../../src/functions/name-lock";
import { registry } from "../../src/functions/registry";

const locked: NameLock = { "TOE.CUT": ["lengthMm", "landmark", "[lactation]"] };
const spec = (id: string, ...names: string[]) => ({
  id,
  parameters: names.map((name) => ({ name: name.replace(/[[\]]/g, ""), optional: name.startsWith("[") })),
});
const toeCut = (...names: string[]): string[] => lockBreaks(locked, [spec("TOE.CUT", ...names)]);

describe("the name lock allows", () => {
  test("what is locked", () => expect(toeCut("lengthMm", "landmark", "[lactation]")).toEqual([]));
  test("a new optional argument at the end", () =>
    expect(toeCut("lengthMm", "landmark", "[lactation]", "[ageYears]")).toEqual([]));
  test("an argument that becomes optional", () => expect(toeCut("lengthMm", "[landmark]", "[lactation]")).toEqual([]));
  test("a new function", () =>
    expect(lockBreaks(locked, [spec("TOE.CUT", "lengthMm", "landmark", "[lactation]"), spec("TOE.SOLE", "x")])).toEqual(
      [],
    ));
});

describe("the name lock refuses", () => {
  test("a function that is gone", () => expect(lockBreaks(locked, [])).toEqual(["TOE.CUT is locked and must stay"]));
  test("a function that is renamed", () =>
    expect(lockBreaks(locked, [spec("TOE.TRIM", "lengthMm", "landmark", "[lactation]")])).toEqual([
      "TOE.CUT is locked and must stay",
    ]));
  test("a renamed argument", () =>
    expect(toeCut("length", "landmark", "[lactation]")).toEqual(["TOE.CUT argument 1 must stay lengthMm; is length"]));
  test("arguments in another order", () =>
    expect(toeCut("landmark", "lengthMm", "[lactation]")).toEqual([
      "TOE.CUT argument 1 must stay lengthMm; is landmark",
      "TOE.CUT argument 2 must stay landmark; is lengthMm",
    ]));
  test("an argument that is gone", () =>
    expect(toeCut("lengthMm", "landmark")).toEqual(["TOE.CUT argument 3 must stay [lactation]; is gone"]));
  test("an argument that becomes required", () =>
    expect(toeCut("lengthMm", "landmark", "lactation")).toEqual([
      "TOE.CUT argument 3 must stay [lactation]; is lactation",
    ]));
  test("a new argument that is required", () =>
    expect(toeCut("lengthMm", "landmark", "[lactation]", "ageYears")).toEqual([
      "TOE.CUT may get new arguments only as optional ones; ageYears is not",
    ]));
  test("a new argument before the others", () =>
    expect(toeCut("[claw]", "lengthMm", "landmark", "[lactation]")).toHaveLength(3));
});

test("the names of all functions are locked", () => {
  const lock = JSON.parse(readFileSync(join(__dirname, "../../src/functions/names.lock.json"), "utf8")) as NameLock;
  expect(lockBreaks(lock, registry)).toEqual([]);
  expect(lock).toEqual(nameLock(registry));
});
