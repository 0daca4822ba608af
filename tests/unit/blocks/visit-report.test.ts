import { visitReport } from "../../../src/blocks/report/visit-report";
import { ownReferences } from "../../../src/blocks/references/own";
import { bothSides, figure } from "./both-sides";
import { tablesOf } from "./sheet-side";
import { AS_OF_DAY, SETTINGS, type SmallBook, smallBook, soundCows, soundFindings, soundScores, soundTests } from "./small-books"; // oxfmt-ignore

jest.setTimeout(120_000);

const sound: SmallBook = {
  cows: soundCows,
  findings: soundFindings,
  scores: soundScores,
  tests: soundTests,
  settings: SETTINGS,
};

/** Findings that begin 100 days ago: within the time before. */
const late = AS_OF_DAY - 100;

test.each<[string, SmallBook]>([
  ["a sound herd", sound],
  ["empty tables", { settings: SETTINGS }],
  ["a list begun late", { ...sound, findings: soundFindings.filter(({ date }) => Number(date) >= late) }],
  [
    "findings after the visit",
    { ...sound, findings: [...soundFindings, { ...soundFindings[0]!, date: AS_OF_DAY + 5 }] },
  ],
])("%s: the report's figures are those of the sheet", async (_, book) => {
  const model = smallBook(book);
  const tables = tablesOf(model);
  const sides = await bothSides(model, AS_OF_DAY, tables, ownReferences([...tables.values()], true), [visitReport]);
  expect(sides.differences).toEqual([]);
  const dates = (book.findings ?? []).map(({ date }) => Number(date));
  expect(figure(sides, visitReport.id, "listFrom")).toBe(dates.length === 0 ? 0 : Math.min(...dates));
});
