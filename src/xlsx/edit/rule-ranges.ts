import { areaAddress, parseArea } from "../address";
import type { TableChange } from "./table-parts";

/** Elements of a sheet whose cells are listed in an attribute. */
const RULES = /(<(?:[\w.-]+:)?(?:dataValidation|conditionalFormatting)\b[^>]*?\ssqref=")([^"]*)"/g;
/** The same where newer rules list them in an element. */
const NEWER_RULES = /(<xm:sqref>)([^<]*)</g;

/** Carries list boxes, rules and conditional formats that end with a table on to where it ends now. */
export function growRuleRanges(xml: string, changes: readonly TableChange[]): string {
  if (changes.length === 0) return xml;
  const grow = (whole: string, opening: string, list: string): string =>
    `${opening}${list
      .split(/\s+/)
      .map((area) => grownArea(area, changes))
      .join(" ")}${whole.at(-1)!}`;
  return xml.replace(RULES, grow).replace(NEWER_RULES, grow);
}

function grownArea(reference: string, changes: readonly TableChange[]): string {
  const area = parseArea(reference);
  if (!area) return reference;
  const change = changes.find(
    ({ before }) =>
      area.lastRow === before.lastRow && area.firstColumn >= before.firstColumn && area.lastColumn <= before.lastColumn,
  );
  return change ? areaAddress({ ...area, lastRow: change.now.lastRow }) : reference;
}
