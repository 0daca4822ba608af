import { render } from "preact";
import { draftsOf, savesOf } from "../../../src/entries/kept-in-browser";
import { openPane } from "../../../src/taskpane/pane";
import { today } from "../../../src/taskpane/today";
import { MemoryPort } from "../../../src/workbook/memory/port";
import { OfficeHost } from "../../../src/workbook/office/tables/host";
import type { RunExcel } from "../../../src/workbook/office/tables/run";
import { openTables } from "../../../src/workbook/saving/open-tables";

/** What the outer page gives a frame: the workbook that is open in Excel, and the name that its drafts go by. */
export interface Around {
  readonly name: string;
  /** Excel as a pane that opens now has it. */
  open(): RunExcel;
}

declare global {
  interface Window {
    /** Of the outer page: what stands around a frame. */
    aroundFrame: (frame: Element) => Around;
    /** Of a frame: how many timers wait. */
    timersWaiting(): number;
    /** Of a frame: closes the pane, and opens it on what now stands around it. */
    openAgain(): void;
  }
}

/** Waits of the pane are so many times shorter: what they wait for is settled in the page itself. */
const FASTER = 25;

export function openInFrame(): void {
  shortenTimers();
  const place = document.getElementById("pane")!;
  const open = (): void => {
    const { name, open: openExcel } = window.parent.aroundFrame(window.frameElement!);
    const kept = { name };
    openPane(place, {
      port: new MemoryPort(),
      tables: openTables(new OfficeHost(openExcel()), savesOf(kept)),
      recordDrafts: draftsOf(kept),
      today,
    });
  };
  window.openAgain = () => {
    render(null, place);
    open();
  };
  open();
}

function shortenTimers(): void {
  const waiting = new Set<number>();
  const start = window.setTimeout.bind(window);
  const stop = window.clearTimeout.bind(window);
  const timer = (work: () => void, milliseconds = 0): number => {
    const id = start(() => {
      waiting.delete(id);
      work();
    }, milliseconds / FASTER);
    waiting.add(id);
    return id;
  };
  const clear = (id?: number): void => {
    if (id !== undefined) waiting.delete(id);
    stop(id);
  };
  Object.assign(window, { setTimeout: timer, clearTimeout: clear, timersWaiting: () => waiting.size });
}
