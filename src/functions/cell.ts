import { DomainError } from "../core/shared/domain-error";

/** What a cell holds once the differences between hosts are gone. `null` is a blank. */
export type Cell = number | string | boolean | null;

/** What a worksheet function gives back for one cell. "" is an empty-looking cell. */
export type CellValue = number | string | boolean;

/** An error as a cell shows it. */
export const ERROR_TEXT =
  /^#(NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|SPILL!|CALC!|BUSY!|FIELD!|BLOCKED!|CONNECT!|UNKNOWN!)$/;
const BLANK_TEXT = /^[\s\u00a0]*$/;

/**
 * One cell as any host hands it over: a blank arrives as null, undefined or ""; an error as text or as an
 * object; a formatted number as an object with `basicValue`.
 * Throws `invalid` on an error value or on anything a cell cannot hold. `where` names the argument (and row).
 */
export function readCell(raw: unknown, where: () => string): Cell {
  switch (typeof raw) {
    case "number":
      if (Number.isFinite(raw)) return raw;
      throw new DomainError("invalid", `${where()} is not a finite number`);
    case "string":
      if (BLANK_TEXT.test(raw)) return null;
      if (ERROR_TEXT.test(raw))
        throw new DomainError("invalid", `${where()} holds the error ${raw}: mend that cell first`);
      return raw.trim();
    case "boolean":
      return raw;
    case "undefined":
      return null;
    case "object":
      return raw === null ? null : readObject(raw, where);
    default:
      throw new DomainError("invalid", `${where()} is not something a cell can hold`);
  }
}

/** Whether a raw cell is blank. Hosts may hand a blank over as 0, and as an object around an empty value. */
export function isBlankCell(raw: unknown, zeroIsBlank: boolean): boolean {
  if (raw === null || raw === undefined) return true;
  if (typeof raw === "string") return BLANK_TEXT.test(raw);
  if (typeof raw === "object" && "basicValue" in raw) return isBlankCell(raw.basicValue, zeroIsBlank);
  return zeroIsBlank && raw === 0;
}

function readObject(raw: object, where: () => string): Cell {
  if ("basicValue" in raw && !isErrorObject(raw)) return readCell(raw.basicValue, where);
  const name = isErrorObject(raw) ? errorName(raw) : undefined;
  if (name !== undefined) throw new DomainError("invalid", `${where()} holds the error ${name}: mend that cell first`);
  throw new DomainError("invalid", `${where()} is not something a cell can hold`);
}

/** Excel hands an error over as `{ type: "Error", basicValue: "#N/A" }` or as a CustomFunctions.Error with a code. */
function isErrorObject(raw: object): boolean {
  return ("type" in raw && raw.type === "Error") || raw instanceof Error || ("code" in raw && "message" in raw);
}

function errorName(raw: object): string {
  if ("basicValue" in raw && typeof raw.basicValue === "string") return raw.basicValue;
  if ("code" in raw && typeof raw.code === "string") return raw.code;
  return "in it";
}

/** Text that someone may take for a number: "200", "1 250", "2,5", "12 %". Read once from left to right, however long. */
export function looksLikeNumber(text: string): boolean {
  return /^[+-]?(?=\D*\d)[\d\s\u00a0.,']+%?$/.test(text);
}

/** Text that someone may take for a date: "2024-02-20", "20/2/24", "20.02.2024". */
export function looksLikeDate(text: string): boolean {
  return /^\d{1,4}[-/. ]\d{1,2}[-/. ]\d{1,4}$/.test(text);
}
