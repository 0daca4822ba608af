import { type ComputedWorkbook, readResults } from "../engine/results";
import { toSnapshot } from "../engine/snapshot";
import type { GridBookHost } from "../workbook/grid/book/host";
import type { GridPort } from "../workbook/grid/port";
import type { GridTableHost } from "../workbook/grid/tables/host";
import type { WorkbookModel } from "../xlsx/model";
import { openPackage } from "../xlsx/package";
import { readProtection } from "../xlsx/protection";
import { readPackage } from "../xlsx/read";
import { type Grid, openGrid } from "./grid/open-grid";
import { savedFile } from "./saved-file";

interface OpenWorkbook {
  readonly name: string;
  /** The file as it was opened; what the grid does not know is kept from it. */
  readonly bytes: Uint8Array;
  /** What the bytes were read as. */
  readonly model: WorkbookModel;
  readonly grid: Grid;
}

/** The one workbook that the trial page has open. */
export class Session {
  private workbook: OpenWorkbook | undefined;
  private opened = 0;

  constructor(
    private readonly place: HTMLElement,
    private readonly port: GridPort,
    private readonly tables: GridTableHost,
    private readonly book: GridBookHost,
    /** Ids of the worksheet functions, by which their stored names are told apart. */
    private readonly functionIds: readonly string[],
  ) {}

  /** Called where a change is refused because it could not be saved. */
  onRefused: () => void = () => undefined;

  get grid(): Grid | undefined {
    return this.workbook?.grid;
  }

  get name(): string {
    return this.workbook?.name ?? "";
  }

  /**
   * Opens a workbook in place of the one that is open, and ends when its formulas are computed. Throws
   * WorkbookFileError, with the other one still open, where the bytes are no workbook.
   */
  async open(name: string, bytes: Uint8Array): Promise<void> {
    const file = openPackage(bytes);
    const model = readPackage(file, this.functionIds);
    // An id of its own: what the engine still computes of the one before must not pass for parts of this one.
    const snapshot = toSnapshot(model, { id: `workbook-${this.opened++}`, title: name });
    this.close();
    const container = this.place.appendChild(document.createElement("div"));
    container.className = "grid";
    const grid = openGrid(container, snapshot, () => this.onRefused());
    this.workbook = { name, bytes, model, grid };
    this.port.turnTo(grid);
    await grid.computed();
    const { api, injector } = grid;
    const workbook = api.getActiveWorkbook()!.getWorkbook();
    const { sheets: protectedSheets, filteredSheets } = readProtection(file);
    const opened = { workbook, injector, protectedSheets, filteredSheets };
    this.tables.turnTo(opened);
    this.book.turnTo(opened);
  }

  /** What the open workbook shows. */
  results(): ComputedWorkbook {
    if (!this.workbook) throw new Error("no workbook is open");
    const { api, injector, log } = this.workbook.grid;
    return readResults(api.getActiveWorkbook()!.getWorkbook(), injector, log);
  }

  /** The bytes of the workbook with all that was typed, computed to the end. */
  async save(): Promise<Uint8Array> {
    if (!this.workbook) throw new Error("no workbook is open");
    const { grid } = this.workbook;
    await grid.computed();
    const workbook = grid.api.getActiveWorkbook()!.getWorkbook();
    return savedFile(this.workbook, { workbook, injector: grid.injector }, this.results(), this.functionIds);
  }

  private close(): void {
    this.port.turnTo(undefined);
    this.tables.turnTo(undefined);
    this.book.turnTo(undefined);
    this.workbook?.grid.close();
    this.workbook = undefined;
    this.place.replaceChildren();
  }
}
