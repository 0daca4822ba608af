import { day } from "../../../../src/core/shared/days";
import { readHerdTable } from "../../../../src/herd/read-rows";
import { findingsTable } from "../../../../src/workbook/tables";
import { bookOf, COWS, portOn, type Row, rowsOf, TODAY } from "./herd";
import { Typist } from "./typist";

/** The lactation that a finding of the cow is written with. */
async function lactationWritten(cow: Row): Promise<unknown> {
  const book = { cows: [...COWS, { cow: 9, entered: day("2025-01-01"), ...cow }] };
  const typist = (await Typist.at(book)).type("9⏎0lho4⏎su⏎1⏎");
  const { phase } = typist.state;
  if (phase.kind !== "saving") throw new Error(phase.kind);
  const memory = bookOf(book);
  await portOn(memory).save(phase.planned.save);
  const [row] = rowsOf(memory, "Findings");
  return row!["Lactation"];
}

test.each<[string, Row, unknown]>([
  ["has not calved", { born: day("2024-06-01") }, "heifer"],
  ["has not calved, her birth not written", {}, "heifer"],
  ["calves for the first time after the day", { lactation: 1, calved: TODAY + 1 }, "heifer"],
  ["calved for the first time on the day", { lactation: 1, calved: TODAY }, 1],
  ["calved for the second time after the day", { lactation: 2, calved: TODAY + 1 }, undefined],
  ["is old and has no calving written", { born: TODAY - 1096 }, undefined],
  ["has a lactation and no day of calving", { lactation: 2 }, 2],
])("a cow that %s", async (_, cow, written) => {
  expect(await lactationWritten(cow)).toBe(written);
});

test("the word is read as no number, and is no mistake", () => {
  const columns = ["Date", "Cow", "Lactation", "Lesion"].map((heading) => ({ heading, calculated: false }));
  const rows = ["Heifer", "cow"].map((word) => [TODAY, 9, word, "DD"]);
  const read = readHerdTable(findingsTable, { name: "Findings", sheet: "Findings", columns, rowCount: 2, rows });
  expect(read.rows.map(({ lactation }) => lactation)).toEqual([null, null]);
  expect(read.doubtful).toEqual([
    { index: 1, heading: "Lactation", cell: "cow", expected: "a whole number from 1 to 20, or heifer" },
  ]);
});
