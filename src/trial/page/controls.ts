import { WorkbookFileError } from "../../xlsx/file-error";
import type { Session } from "../session";

/** Where the page finds the sample, and what it is called. */
const SAMPLE = { path: "sample-workbooks/herd-workbook.xlsx", name: "herd-workbook.xlsx" };

/** Source: ECMA-376 as registered with IANA. */
const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** The line above the grid: which file is open, open another, save a copy. */
export class Controls {
  private readonly fileName = element("file-name", HTMLElement);
  private readonly sampleNote = element("sample-note", HTMLElement);
  private readonly message = element("message", HTMLElement);
  private readonly input = element("file-input", HTMLInputElement);

  constructor(private readonly session: Session) {
    element("save", HTMLButtonElement).addEventListener("click", () => void this.saveCopy());
    element("open", HTMLButtonElement).addEventListener("click", () => this.input.click());
    this.change("undo", () => this.session.grid?.api.undo());
    this.change("redo", () => this.session.grid?.api.redo());
    session.onRefused = () => this.say("Only what cells hold can be changed here: rows, sheets and formats stay.");
    this.input.addEventListener("change", () => void this.openChosen());
  }

  /** A button that changes cells. Clicked, it leaves the keyboard with the cells, where typing goes on. */
  private change(id: string, work: () => unknown): void {
    const button = element(id, HTMLButtonElement);
    button.addEventListener("mousedown", (event) => event.preventDefault());
    button.addEventListener("click", () => void work());
  }

  /** Opens the sample, or the workbook that the address of the page names. */
  async openFirst(): Promise<void> {
    const response = await fetch(SAMPLE.path);
    if (!response.ok) this.say(`${SAMPLE.path} is not there: run npm run samples`);
    else await this.open(SAMPLE.name, await response.arrayBuffer(), true);
  }

  private async openChosen(): Promise<void> {
    const [file] = this.input.files ?? [];
    // The same file can then be chosen again.
    this.input.value = "";
    if (file) await this.open(file.name, await file.arrayBuffer(), false);
  }

  private async open(name: string, bytes: ArrayBuffer, isSample: boolean): Promise<void> {
    this.say(`Computing ${name} …`);
    try {
      await this.session.open(name, new Uint8Array(bytes));
    } catch (error) {
      if (!(error instanceof WorkbookFileError)) throw error;
      this.say(`${name} could not be opened: ${error.message}`);
      return;
    }
    this.fileName.textContent = name;
    this.sampleNote.hidden = !isSample;
    document.title = `${name} – Evenfoot trial`;
    this.say("");
  }

  /** Hands a copy to the browser, which puts it where the user keeps downloads. */
  private async saveCopy(): Promise<void> {
    if (!this.session.grid) return;
    const bytes = await this.session.save();
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: XLSX }));
    link.download = this.session.name;
    link.click();
    URL.revokeObjectURL(link.href);
    this.say(`Saved a copy of ${this.session.name} among your downloads.`);
  }

  private say(text: string): void {
    this.message.textContent = text;
  }
}

function element<T extends HTMLElement>(id: string, kind: new () => T): T {
  const found = document.getElementById(id);
  if (found instanceof kind) return found;
  throw new Error(`the page has no ${kind.name} with the id ${id}`);
}
