import { Workbook } from "@cj-tech-master/excelts";
import { calculateFormulas } from "@cj-tech-master/excelts/formula";
import { type BenchSheet, type OpenSheet, type Spelling } from "../sheet";

/** Its functions of one value take the first cell of a range only; MAP runs them over all. */
export const LIBRARY_SPELLING: Spelling = {
  logarithms: (range, base) => `MAP(${range},LAMBDA(x,IF(x>${base},LN(x/${base}),0)))`,
};

/** The formula engine that comes with the library for .xlsx files. */
export function openInLibraryEngine({ headings, columns, formulas, formulaColumn }: BenchSheet): Promise<OpenSheet> {
  const workbook = new Workbook();
  const worksheet = workbook.addWorksheet("Bench");
  const rowCount = columns[0]!.length;
  for (let row = 0; row <= rowCount; row++) {
    for (let column = 0; column < columns.length; column++) {
      const value = row === 0 ? headings[column] : columns[column]![row - 1];
      if (value !== null && value !== undefined) worksheet.getCell(row + 1, column + 1).value = value;
    }
  }
  const cells = formulas.map((formula, row) => {
    const cell = worksheet.getCell(row + 1, formulaColumn + 1);
    cell.value = { formula };
    return cell;
  });
  return Promise.resolve({
    recalculate: () => Promise.resolve(calculateFormulas(workbook as never)),
    values: () => cells.map(({ result }) => result),
    close: () => Promise.resolve(),
  });
}
