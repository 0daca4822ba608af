import type { Block } from "../../../src/blocks/block";
import { dayBefore } from "../../../src/blocks/expression/days";
import { column } from "../../../src/blocks/expression/columns";
import { literal } from "../../../src/blocks/expression/expression";
import { arithmetic } from "../../../src/blocks/expression/operators";
import { input, part, seriesColumn } from "../../../src/blocks/expression/places";
import { sum } from "../../../src/blocks/expression/aggregates";
import { bothSides, figure } from "./both-sides";
import { AS_OF_DAY, SETTINGS, smallBook, soundTests } from "./small-books";

jest.setTimeout(60_000);

/** Tests of the last days, what they come to, and a part that stands on its own. */
const block: Block = {
  id: "days-alone",
  title: "Days",
  about: "Days of a list.",
  screen: "cells",
  inputs: [{ name: "last", label: "Last", usual: literal(AS_OF_DAY), format: "0" }],
  parts: [
    {
      kind: "series",
      id: "days",
      title: "The last days",
      length: 3,
      columns: [{ heading: "Day" }, { heading: "Twice" }],
      last: input("last"),
      before: (day) => dayBefore(column("Tests", "date"), day, ""),
      figures: (day) => [arithmetic(day, "*", 2)],
    },
    { kind: "figure", id: "own", label: "On its own", value: literal(7) },
    { kind: "figure", id: "other", label: "One more", value: arithmetic(part("own"), "+", 1) },
    { kind: "figure", id: "total", label: "Added up", value: sum(seriesColumn("days", 1)) },
  ],
  charts: [
    { id: "days", part: "days", type: "lines", title: "Days", categories: 0, values: [1], valueTitle: "", valueFormat: "0", describe: () => "" }, // oxfmt-ignore
  ],
  notes: [],
};

const formulas = (sides: Awaited<ReturnType<typeof bothSides>>): readonly string[] =>
  sides.laidOut
    .get("days-alone")!
    .cells.flat()
    .flatMap((cell) => cell?.formula ?? []);

test("a series whose days the workbook lacks makes way for a sentence, and so does what is taken from it", async () => {
  const book = smallBook({ tests: soundTests, settings: SETTINGS, without: ["Tests date"] });
  const sides = await bothSides(book, AS_OF_DAY, undefined, undefined, [block]);
  const { refusals, places, charts } = sides.laidOut.get("days-alone")!;
  expect(refusals).toEqual([
    "The last days: Tests has no column Date.",
    "Added up: A figure above that it needs cannot be computed here.",
  ]);
  expect(Object.keys(places)).toEqual(["own", "other"]);
  expect(charts).toEqual([]);
  // Title, about, input and the sentence stand above: the two figures refer to nothing but themselves.
  expect(formulas(sides)).toEqual(["7", "$C$6+1"]);
  expect(sides.differences).toEqual([]);
  expect(figure(sides, "days-alone", "days")).toBe("Tests has no column Date.");
});

test("a series that has them stands in the sheet", async () => {
  const book = smallBook({ tests: soundTests, settings: SETTINGS });
  const sides = await bothSides(book, AS_OF_DAY, undefined, undefined, [block]);
  expect(sides.laidOut.get("days-alone")!.refusals).toEqual([]);
  expect(sides.differences).toEqual([]);
  // The tests lie 33 days apart; the last before the day of the workbook is its 357th day.
  expect(figure(sides, "days-alone", "total")).toBe(2 * (46_400 + 46_357 + 46_324));
});
