/** A path or a name of the file may be of any length and hold line breaks; a sentence for a person may not. */
const LONGEST_MESSAGE = 200;

/** A file that cannot be read or written as a workbook. Its message, one line, is shown to the user. */
export class WorkbookFileError extends Error {
  override readonly name = "WorkbookFileError";

  constructor(message: string) {
    // oxlint-disable-next-line no-control-regex -- those are the signs that are taken out
    const line = message.replace(/[\s\u0000-\u001f\u007f]+/g, " ").trim();
    super(line.length > LONGEST_MESSAGE ? `${line.slice(0, LONGEST_MESSAGE - 1)}…` : line);
  }
}
