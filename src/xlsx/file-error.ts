/** A file that cannot be read or written as a workbook. Its message is shown to the user. */
export class WorkbookFileError extends Error {
  override readonly name = "WorkbookFileError";
}
