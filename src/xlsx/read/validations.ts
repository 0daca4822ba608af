import { parseAreas } from "../address";
import type { ValidationModel } from "../model";
import { attribute, descend, descendantsOf, flag, textOf, unescapeText, type XmlElement } from "../xml";

const TYPES = ["list", "whole", "decimal", "date", "time", "textLength", "custom"] as const;

/** Rules for what may be typed, those of the later extension of the format too. */
export function readValidations(root: XmlElement, typed: (formula: string) => string): ValidationModel[] {
  return descendantsOf(root, "dataValidation").flatMap((element): ValidationModel[] => {
    const type = TYPES.find((known) => known === attribute(element, "type"));
    const areas = parseAreas(attribute(element, "sqref") ?? textOf(descend(element, "sqref")));
    if (type === undefined || areas.length === 0) return [];
    const style = attribute(element, "errorStyle");
    return [
      {
        type,
        areas,
        operator: attribute(element, "operator") ?? "between",
        formulas: ["formula1", "formula2"]
          .map((name) => descend(element, name))
          .filter((formula) => formula !== undefined)
          .map((formula) => typed(textOf(formula))),
        allowBlank: flag(element, "allowBlank"),
        errorStyle: style === "warning" || style === "information" ? style : "stop",
        ...texts(element),
      },
    ];
  });
}

function texts(element: XmlElement): Partial<Pick<ValidationModel, "error" | "errorTitle" | "prompt" | "promptTitle">> {
  const entries = (["error", "errorTitle", "prompt", "promptTitle"] as const).flatMap((name) => {
    const text = attribute(element, name);
    return text === undefined ? [] : [[name, unescapeText(text)]];
  });
  return Object.fromEntries(entries);
}
