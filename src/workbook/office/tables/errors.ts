import { TableError, workbookClosed } from "../../table-error";

/** What an error of Excel means for the user; undefined where it says nothing to them. */
export function knownError(error: unknown): TableError | undefined {
  if (error instanceof TableError) return error;
  switch (codeOf(error)) {
    case "AccessDenied":
      return new TableError("protected", "The sheet or the workbook is protected: unprotect it, then try again.", {
        cause: error,
      });
    case "InactiveWorkbook":
      return workbookClosed(error);
    case "ItemNotFound":
      return new TableError("table-gone", "A table or a sheet was deleted or renamed meanwhile. Nothing was written.", {
        cause: error,
      });
    default:
      return undefined;
  }
}

/** Whether an answer of Excel was larger than it may be. */
export function isTooLarge(error: unknown): boolean {
  return codeOf(error) === "ResponsePayloadSizeLimitExceeded";
}

/** Whether something of that name is there already. */
export function isTaken(error: unknown): boolean {
  return codeOf(error) === "ItemAlreadyExists";
}

function codeOf(error: unknown): unknown {
  return typeof error === "object" && error !== null && "code" in error ? error.code : undefined;
}
