import type { IDisposable, Injector } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { SheetsSelectionsService } from "@univerjs/sheets";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import type { CallLog } from "../../engine/call-log";
import type { FunctionCall, SelectedCell, Unwatch, WorkbookPort } from "../port";
import { writtenCalls } from "../written-calls";
import { matchCalls } from "./match-calls";
import { readSelection } from "./selected-cell";

/** What the port needs of an open grid. */
export interface GridHost {
  readonly api: FUniver;
  readonly injector: Injector;
  readonly log: CallLog;
}

type Listener = (cell: SelectedCell | undefined) => void;

/** The workbook open in the grid of the trial page. One port serves all workbooks opened after each other. */
export class GridPort implements WorkbookPort {
  private readonly listeners = new Set<Listener>();
  private host: GridHost | undefined;
  private watches: Pick<IDisposable, "dispose">[] = [];
  private announcing = false;

  /** Turns to another grid; `undefined` while none is open. */
  turnTo(host: GridHost | undefined): void {
    for (const watch of this.watches) watch.dispose();
    this.watches = [];
    this.host = host;
    if (host) this.watch(host);
    this.announce();
  }

  watchSelection(listener: Listener): Unwatch {
    this.listeners.add(listener);
    listener(this.selected());
    return () => this.listeners.delete(listener);
  }

  readCalls({ sheet: sheetName, address, formula, spill }: SelectedCell): Promise<readonly FunctionCall[]> {
    const sheet = this.host?.api.getActiveWorkbook()?.getSheetByName(sheetName);
    if (!this.host || !sheet || formula === undefined) return Promise.resolve([]);
    const anchor = sheet.getRange(spill?.anchor ?? address);
    const runs = this.host.log.callsAt(sheet.getSheetId(), anchor.getRow(), anchor.getColumn());
    return Promise.resolve(matchCalls(writtenCalls(formula).calls, runs));
  }

  private watch({ api, injector }: GridHost): void {
    const announce = (): void => this.announce();
    const selection = injector.get(SheetsSelectionsService).selectionChanged$.subscribe(announce);
    const results = injector.get(FormulaCalculationSessionService).resultApplied$.subscribe(announce);
    this.watches = [
      { dispose: () => selection.unsubscribe() },
      { dispose: () => results.unsubscribe() },
      api.addEvent(api.Event.ActiveSheetChanged, announce),
    ];
  }

  /** Tells the listeners once, after all that happens in the same moment. */
  private announce(): void {
    if (this.announcing) return;
    this.announcing = true;
    setTimeout(() => {
      this.announcing = false;
      const cell = this.selected();
      for (const listener of this.listeners) listener(cell);
    });
  }

  private selected(): SelectedCell | undefined {
    return this.host && readSelection(this.host.api, this.host.injector.get(FormulaDataModel));
  }
}
