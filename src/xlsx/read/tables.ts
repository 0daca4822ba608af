import { parseArea } from "../address";
import { WorkbookFileError } from "../file-error";
import type { TableModel } from "../model";
import { attribute, childrenOf, descend, flag, numberAttribute, textOf, unescapeText, type XmlElement } from "../xml";

export function readTable(root: XmlElement, typed: (formula: string) => string): TableModel | undefined {
  const area = parseArea(attribute(root, "ref") ?? "");
  const name = attribute(root, "displayName") ?? attribute(root, "name");
  if (area === undefined || name === undefined) return undefined;
  const columns = childrenOf(descend(root, "tableColumns"), "tableColumn");
  const width = area.lastColumn - area.firstColumn + 1;
  if (columns.length !== width)
    throw new WorkbookFileError(`the table ${name} is damaged: it names ${columns.length} of its ${width} columns`);
  const style = descend(root, "tableStyleInfo");
  const styleName = attribute(style, "name");
  return {
    name,
    area,
    hasHeadings: (numberAttribute(root, "headerRowCount") ?? 1) > 0,
    hasTotals: (numberAttribute(root, "totalsRowCount") ?? 0) > 0,
    columns: columns.map((column) => {
      const formula = textOf(descend(column, "calculatedColumnFormula"));
      return {
        name: unescapeText(attribute(column, "name") ?? ""),
        ...(formula === "" ? {} : { formula: typed(formula) }),
      };
    }),
    stripes: flag(style, "showRowStripes"),
    filter: descend(root, "autoFilter") !== undefined,
    ...(styleName === undefined ? {} : { styleName }),
  };
}
