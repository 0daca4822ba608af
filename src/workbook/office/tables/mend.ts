import { isFormula, marksMissing } from "./cells";
import { itemOf, type Written, type WrittenRows } from "./queue-writes";

/**
 * Does what Excel left undone after rows were written: takes rows into the table that did not join it, fills
 * calculated columns, and marks text that Excel took for something else.
 */
export async function mend(context: Excel.RequestContext, { rows, bodies }: Written): Promise<void> {
  const queued = rows.map((block) => {
    const grown = block.kind === "append" && takeIn(context, block, bodies.get(block.table)!);
    const filled = block.kind === "append" && fillDown(block);
    return [grown, filled, markTexts(block)].some(Boolean);
  });
  if (queued.some(Boolean)) await context.sync();
}

function takeIn(context: Excel.RequestContext, { table, writes, after }: WrittenRows, body: Excel.Range): boolean {
  const missing = after.rowIndex + writes.length - (body.rowIndex + body.rowCount);
  if (missing <= 0) return false;
  const item = itemOf(context, table);
  item.resize(item.getRange().getResizedRange(missing, 0));
  return true;
}

function fillDown({ table, after }: WrittenRows): boolean {
  const formulas = after.formulas.map((row: readonly unknown[], at: number) =>
    row.map((formula, column) => {
      const fill = table.fills[column];
      return fill === undefined || isFormula(formula, after.values[at]?.[column]) ? null : fill;
    }),
  );
  if (formulas.every((row) => row.every((fill) => fill === null))) return false;
  after.formulasR1C1 = formulas;
  return true;
}

function markTexts({ writes, after }: WrittenRows): boolean {
  const marked = marksMissing(
    after.values,
    writes.map(({ cells }) => cells),
  );
  if (marked !== undefined) after.values = marked;
  return marked !== undefined;
}
