import "./pane.css";
import { type ComponentChildren, render } from "preact";
import { useState } from "preact/hooks";
import type { DaySerial } from "../core/shared/days";
import type { WorkbookPort } from "../workbook/port";
import type { TablePort } from "../workbook/table-port";
import { Tabs } from "./parts/tabs";
import { Due } from "./screens/due/screen";
import { Explain } from "./screens/explain/screen";
import { today as dayOfComputer } from "./today";
import { type DraftKeeper, Record } from "./screens/record/screen";

/** The workbook behind the pane. Without its tables a host can only have its figures explained. */
export interface PaneWorkbook {
  readonly port: WorkbookPort;
  readonly tables?: TablePort;
  readonly recordDrafts?: DraftKeeper;
  /** The day that the workbook counts from; the computer's own day where it is not given. */
  today?(): DaySerial;
}

interface Screen {
  readonly id: string;
  readonly title: string;
  readonly content: ComponentChildren;
}

/** Draws the pane into an element of a page, on the workbook behind the ports. */
export function openPane(place: Element, workbook: PaneWorkbook): void {
  render(<Pane {...workbook} />, place);
}

function screensOf({ port, tables, recordDrafts, today = dayOfComputer }: PaneWorkbook): readonly Screen[] {
  const explain: Screen = { id: "explain", title: "Explain", content: <Explain port={port} /> };
  if (tables === undefined || recordDrafts === undefined) return [explain];
  return [
    { id: "record", title: "Record", content: <Record tables={tables} drafts={recordDrafts} today={today} /> },
    { id: "due", title: "Due", content: <Due tables={tables} today={today()} /> },
    explain,
  ];
}

/** A screen is drawn when it is first opened, and stays as it was left when another is opened. */
function Pane(workbook: PaneWorkbook) {
  const screens = screensOf(workbook);
  const [open, setOpen] = useState(screens[0]!.id);
  const [drawn, setDrawn] = useState<readonly string[]>([open]);
  const show = (id: string): void => {
    setOpen(id);
    if (!drawn.includes(id)) setDrawn([...drawn, id]);
  };
  return (
    <>
      <header>
        <div class="top">
          <p class="product">Evenfoot</p>
        </div>
        {screens.length > 1 && <Tabs tabs={screens} open={open} show={show} />}
      </header>
      <main>
        {screens.map(({ id, content }) => (
          <div
            key={id}
            id={`screen-${id}`}
            class="screen"
            role={screens.length > 1 ? "tabpanel" : undefined}
            aria-labelledby={screens.length > 1 ? `tab-${id}` : undefined}
            hidden={id !== open}
          >
            {drawn.includes(id) && content}
          </div>
        ))}
      </main>
    </>
  );
}
