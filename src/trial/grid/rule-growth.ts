import type { Injector, IRange } from "@univerjs/core";
import {
  ConditionalFormattingRuleModel,
  SetConditionalRuleMutation,
} from "@univerjs/preset-sheets-conditional-formatting";
import {
  DataValidationModel,
  UpdateDataValidationMutation,
  UpdateRuleType,
} from "@univerjs/preset-sheets-data-validation";
import type { Mutations, SheetPlace } from "./mutations";

/**
 * Carries the list boxes, the rules for what may be typed and the conditional formats of a table down to the rows
 * that it takes in.
 */
export function growRules(injector: Injector, place: SheetPlace, table: IRange, rows: number): Mutations[] {
  const { unitId, subUnitId } = place;
  const validations = injector.get(DataValidationModel).getRules(unitId, subUnitId);
  const formats = injector.get(ConditionalFormattingRuleModel).getSubunitRules(unitId, subUnitId) ?? [];
  const steps: Mutations[] = [];
  for (const { uid: ruleId, ranges } of validations) {
    const grown = grownRanges(ranges, table, rows);
    if (!grown) continue;
    const change = (payload: readonly IRange[]) => ({
      id: UpdateDataValidationMutation.id,
      params: { ...place, ruleId, payload: { type: UpdateRuleType.RANGE, payload } },
    });
    steps.push({ redos: [change(grown)], undos: [change(ranges)] });
  }
  for (const rule of formats) {
    const grown = grownRanges(rule.ranges, table, rows);
    if (!grown) continue;
    const change = (ranges: readonly IRange[]) => ({
      id: SetConditionalRuleMutation.id,
      params: { ...place, rule: { ...rule, ranges } },
    });
    steps.push({ redos: [change(grown)], undos: [change(rule.ranges)] });
  }
  return steps;
}

/** The ranges with those made longer that end with the table; undefined where none does. */
function grownRanges(ranges: readonly IRange[], table: IRange, rows: number): IRange[] | undefined {
  const ends = ({ startColumn, endColumn, endRow }: IRange): boolean =>
    endRow === table.endRow && startColumn >= table.startColumn && endColumn <= table.endColumn;
  if (!ranges.some(ends)) return undefined;
  return ranges.map((range) => (ends(range) ? { ...range, endRow: range.endRow + rows } : range));
}
