import type { Block } from "../../../blocks/block";
import type { InputValues } from "../../../blocks/compute";
import type { DaySerial } from "../../../core/shared/days";
import type { PlainCell } from "../../../workbook/port";
import { choicesOf, daysOf } from "./choices";
import { blocksAbout } from "./shown-blocks";

/**
 * What was chosen as the inputs of a block take it; undefined where the dates are not sound, or other cows were chosen.
 * What is usual is left to the block, so that its formulas in the sheet go on with the days.
 */
export function givenTo(
  block: Block,
  typed: Readonly<Record<string, string>>,
  asOf: DaySerial,
): InputValues | undefined {
  const choices = choicesOf(typed, asOf);
  const days = daysOf(choices, asOf);
  if ("problem" in days || !blocksAbout(choices.group).includes(block)) return undefined;
  const values: Record<string, PlainCell> = {};
  for (const { name } of block.inputs) {
    if (choices.period !== "last 12 months" && (name === "from" || name === "to")) values[name] = days[name];
    if (name === "lesion" && typed["lesion"] !== undefined) values[name] = typed["lesion"];
  }
  return values;
}
