import type { DefinedNameModel, ValidationModel } from "../../xlsx/model";
import { gridRange } from "./sheet";

const ERROR_STYLES = { information: 0, stop: 1, warning: 2 } as const;
/** Lists are shown as an arrow beside the cell. */
const ARROW = 1;

/** A rule for what may be typed, as the grid writes it. A name is replaced by what it stands for. */
export function validationRule(rule: ValidationModel, uid: string, names: readonly DefinedNameModel[]): object {
  const [formula1, formula2] = rule.formulas.map((formula) => gridFormula(formula, rule.type, names));
  return {
    uid,
    type: rule.type,
    // The grid asks a list for nothing more than that the value is in it, unless it has an operator.
    ...(rule.type === "list" ? {} : { operator: rule.operator }),
    ranges: rule.areas.map(gridRange),
    allowBlank: rule.allowBlank,
    showErrorMessage: true,
    errorStyle: ERROR_STYLES[rule.errorStyle],
    ...(formula1 === undefined ? {} : { formula1 }),
    ...(formula2 === undefined ? {} : { formula2 }),
    ...(rule.type === "list" ? { renderMode: ARROW } : {}),
    ...(rule.error === undefined ? {} : { error: rule.error }),
    ...(rule.errorTitle === undefined ? {} : { errorTitle: rule.errorTitle }),
    ...(rule.prompt === undefined ? {} : { prompt: rule.prompt, showInputMessage: true }),
    ...(rule.promptTitle === undefined ? {} : { promptTitle: rule.promptTitle }),
  };
}

function gridFormula(formula: string, type: ValidationModel["type"], names: readonly DefinedNameModel[]): string {
  const written = /^"(.*)"$/s.exec(formula)?.[1];
  if (type === "list" && written !== undefined) return written.replaceAll('""', '"');
  if (/^-?[\d.]+$/.test(formula)) return formula;
  const name = names.find((known) => known.name.toUpperCase() === formula.toUpperCase());
  return `=${name?.formula ?? formula}`;
}
