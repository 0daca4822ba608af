import { ReadColumns } from "../../../src/blocks/read-columns";
import { datesParameter, cowsParameter } from "../../../src/functions/claws/kinds-of-findings";
import type { Column } from "../../../src/functions/columns";

const columns = new ReadColumns();
const dates = { ...datesParameter, name: "dates" };
const rows = [[45_300], [45_307]];

test("a list is read once for all calls that take it alike", () => {
  const column = columns.read(dates, rows);
  expect((column as Column<number>).values).toEqual([45_300, 45_307]);
  expect(columns.read(dates, rows)).toBe(column);
});

test("other rows, another kind and another name of the argument are read by themselves", () => {
  const column = columns.read(dates, rows);
  expect(columns.read(dates, [[45_300], [45_307]])).not.toBe(column);
  expect((columns.read({ ...cowsParameter, name: "dates" }, rows) as Column<string>).values).toEqual([
    "45300",
    "45307",
  ]);
  expect((columns.read({ ...dates, name: "treatedOn" }, rows) as Column<number>).argument).toBe("treatedOn");
});

test("a list that is refused is refused each time", () => {
  const wrong = [[45_300], [true]];
  for (let time = 0; time < 2; time++) expect(() => columns.read(dates, wrong)).toThrow("dates row 2");
});
