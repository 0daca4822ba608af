import {
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  functionText,
  NumberValueObject,
} from "@univerjs/engine-formula";
import { type EngineFunction, type EngineResult, overCells, stockFunction } from "../engine-function";

/**
 * SEARCH takes ? and * for themselves. Source: Microsoft's page on SEARCH: they stand for any one character and for
 * any characters; ~ before them takes that meaning away.
 */
class Search extends stockFunction(functionText, "SEARCH") {
  override calculate(wanted: BaseValueObject, text: BaseValueObject, start?: BaseValueObject): EngineResult {
    const from = start ?? NumberValueObject.create(1);
    return overCells([wanted, text, from], (wantedIn, textIn, fromIn) => {
      const pattern = textOf(wantedIn!);
      if (!/[?*~]/.test(pattern)) return super.calculate(wantedIn!, textIn!, fromIn!) as BaseValueObject;
      const within = textOf(textIn!);
      const first = Math.floor(Number(fromIn!.getValue()));
      const found = first >= 1 && first <= within.length ? within.slice(first - 1).search(wildcards(pattern)) : -1;
      return found < 0 ? ErrorValueObject.create(ErrorType.VALUE) : NumberValueObject.create(first + found);
    });
  }
}

function textOf(value: BaseValueObject): string {
  if (value.isNull()) return "";
  return value.isBoolean() ? String(value.getValue()).toUpperCase() : String(value.getValue());
}

function wildcards(pattern: string): RegExp {
  const parts = pattern.match(/~[?*~]|[\s\S]/g) ?? [];
  const expression = parts.map((part) =>
    part === "?" ? "[\\s\\S]" : part === "*" ? "[\\s\\S]*" : part.slice(-1).replace(/[\\^$.*+?()[\]{}|]/g, "\\$&"),
  );
  return new RegExp(expression.join(""), "i");
}

export const search: EngineFunction = [Search, "SEARCH"];
