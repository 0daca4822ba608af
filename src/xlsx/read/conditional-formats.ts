import { parseAreas } from "../address";
import type { ConditionalFormatModel, ConditionalRule, ScaleStop } from "../model";
import { attribute, childrenOf, descend, flag, numberAttribute, textOf, type XmlElement } from "../xml";
import type { SheetContext } from "./sheet-context";

/** Rules of the kinds that the model knows; others (icons, bars, ranks) are left out. */
export function readConditionalFormats(root: XmlElement, context: SheetContext): ConditionalFormatModel[] {
  return childrenOf(root, "conditionalFormatting").flatMap((element) => {
    const areas = parseAreas(attribute(element, "sqref") ?? "");
    return childrenOf(element, "cfRule").flatMap((ruleElement): ConditionalFormatModel[] => {
      const rule = readRule(ruleElement, context);
      if (rule === undefined || areas.length === 0) return [];
      return [
        {
          areas,
          rule,
          priority: numberAttribute(ruleElement, "priority") ?? 1,
          stopIfTrue: flag(ruleElement, "stopIfTrue"),
        },
      ];
    });
  });
}

/** Rules on texts and blanks carry the formula that says the same, so that they are read as formulas. */
const SAID_BY_FORMULA = new Set([
  "expression",
  "containsText",
  "notContainsText",
  "beginsWith",
  "endsWith",
  "containsBlanks",
  "notContainsBlanks",
  "containsErrors",
  "notContainsErrors",
]);

function readRule(element: XmlElement, { styles, colour, typed }: SheetContext): ConditionalRule | undefined {
  const type = attribute(element, "type") ?? "";
  const style = styles.conditional[numberAttribute(element, "dxfId") ?? -1] ?? {};
  const formulas = childrenOf(element, "formula").map((formula) => typed(textOf(formula)));
  if (SAID_BY_FORMULA.has(type) && formulas[0] !== undefined) return { type: "formula", formula: formulas[0], style };
  if (type === "cellIs")
    return { type: "compare", operator: attribute(element, "operator") ?? "equal", formulas, style };
  if (type !== "colorScale") return undefined;
  const scale = descend(element, "colorScale");
  const colours = childrenOf(scale, "color").map(colour);
  const stops = childrenOf(scale, "cfvo").map((point, index): ScaleStop => {
    const value = attribute(point, "val");
    return {
      at: (attribute(point, "type") ?? "min") as ScaleStop["at"],
      colour: colours[index] ?? "#ffffff",
      ...(value === undefined ? {} : { value }),
    };
  });
  return { type: "colourScale", stops };
}
