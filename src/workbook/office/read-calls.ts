import type { FunctionCall, SelectedCell } from "../port";
import { type WrittenCall, writtenCalls } from "../written-calls";
import { type ReadArgument, readArguments } from "./read-arguments";
import { WHEN_EDITED } from "./selection";

/** The calls of our functions in the formula of a cell, with what they were handed. */
export async function readCalls({
  sheet: sheetName,
  address,
  formula,
  spill,
}: SelectedCell): Promise<readonly FunctionCall[]> {
  if (formula === undefined) return [];
  const { calls, localNames } = writtenCalls(formula);
  if (calls.length === 0) return [];
  return Excel.run(WHEN_EDITED, async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetName);
    const cell = sheet.getRange(spill?.anchor ?? address);
    const nodes = calls.flatMap(({ argumentNodes }) => argumentNodes);
    const read = await readArguments(nodes, { context, sheet, cell, localNames });
    let next = 0;
    return calls.map((call) => functionCall(call, read.slice(next, (next += call.argumentNodes.length))));
  });
}

function functionCall({ functionId, argumentTexts }: WrittenCall, read: readonly ReadArgument[]): FunctionCall {
  const rawArguments = read.filter((argument) => argument !== undefined);
  if (rawArguments.length === read.length) return { functionId, argumentTexts, rawArguments };
  const unread = argumentTexts.filter((_, index) => read[index] === undefined).join(" and ");
  return {
    functionId,
    argumentTexts,
    errorMessage: `The working cannot be shown here: ${unread} is computed inside the formula or is not in this workbook. Put it into a cell of its own and refer to that cell.`,
  };
}
