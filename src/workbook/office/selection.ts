import type { SelectedCell, Unwatch } from "../port";

type Listener = (cell: SelectedCell | undefined) => void;

/** Reads the active cell, with the formula that fills it. */
async function readSelection(context: Excel.RequestContext): Promise<SelectedCell> {
  const cell = context.workbook.getActiveCell();
  cell.load("address,rowIndex,columnIndex,formulas,text");
  const { worksheet } = cell;
  worksheet.load("name");
  const anchor = cell.getSpillParentOrNullObject();
  anchor.load("address,rowIndex,columnIndex,formulas");
  await context.sync();
  const spill = anchor.isNullObject || anchor.address === cell.address ? undefined : anchor;
  const formula = formulaOf((spill ?? cell).formulas);
  return {
    sheet: worksheet.name,
    address: withoutSheet(cell.address),
    shown: cell.text[0]?.[0] ?? "",
    ...(formula === undefined ? {} : { formula }),
    ...(spill === undefined
      ? {}
      : {
          spill: {
            anchor: withoutSheet(spill.address),
            row: cell.rowIndex - spill.rowIndex,
            column: cell.columnIndex - spill.columnIndex,
          },
        }),
  };
}

function formulaOf(formulas: readonly (readonly unknown[])[]): string | undefined {
  const formula = formulas[0]?.[0];
  return typeof formula === "string" && formula.startsWith("=") ? formula : undefined;
}

/** 'My sheet'!B5 -> B5 */
function withoutSheet(address: string): string {
  return address.slice(address.lastIndexOf("!") + 1);
}

/** Waits while a cell is being edited instead of failing. */
export const WHEN_EDITED: Excel.RunOptions = { delayForCellEdit: true };

/**
 * Tells a listener of every change of the selection and every recalculation. While one reading is under way, further
 * changes are gathered into one more.
 */
export function watchSelection(listener: Listener): Unwatch {
  let stopped = false;
  let reading = false;
  let again = false;

  const refresh = async (): Promise<void> => {
    again = true;
    if (reading) return;
    reading = true;
    while (again && !stopped) {
      again = false;
      const cell = await Excel.run(WHEN_EDITED, readSelection).catch(() => undefined);
      if (!stopped) listener(cell);
    }
    reading = false;
  };

  const handlers = Excel.run(WHEN_EDITED, async (context) => {
    const added = [
      context.workbook.onSelectionChanged.add(refresh),
      context.workbook.worksheets.onCalculated.add(refresh),
    ];
    await context.sync();
    return added;
  });
  void handlers.then(refresh, refresh);

  return () => {
    stopped = true;
    void handlers.then(removeAll, () => undefined);
  };
}

/** Handlers are removed in the context that they were added in. */
async function removeAll(handlers: readonly OfficeExtension.EventHandlerResult<unknown>[]): Promise<void> {
  const [first] = handlers;
  if (first === undefined) return;
  await Excel.run(first.context as Excel.RequestContext, async (context) => {
    for (const handler of handlers) handler.remove();
    await context.sync();
  });
}
