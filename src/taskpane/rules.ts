import { defaultRecheckRules, type RecheckRule } from "../core/claws/recheck-rules";
import { DomainError } from "../core/shared/domain-error";
import { recheckRules } from "../functions/claws/kinds-of-care";
import type { TableContent } from "../workbook/table-port";

/** The recheck rules in force. */
export interface RulesInForce {
  readonly rules: readonly RecheckRule[];
  /** Why they are not the workbook's own, in plain words. */
  readonly remark?: string;
}

/**
 * The rules of the workbook, the built-in ones where it has none. A table that contradicts itself gives no rules:
 * dates from rules that the adviser did not choose would be worse than none.
 */
export function rulesInForce(content: TableContent | undefined): RulesInForce {
  if (content === undefined) {
    return { rules: defaultRecheckRules, remark: "The workbook has no table Rules: the built-in rules are used." };
  }
  try {
    const headings = content.columns.map(({ heading }) => heading);
    return { rules: recheckRules.read([headings, ...content.rows], content.name) };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { rules: [], remark: `No dates and treatments are filled in: ${error.message}.` };
  }
}
