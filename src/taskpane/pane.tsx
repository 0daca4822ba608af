import "./pane.css";
import { render } from "preact";
import { useState } from "preact/hooks";
import type { PaneWorkbook } from "./pane-workbook";
import { LoadedScreen } from "./parts/loaded-screen";
import { Tabs } from "./parts/tabs";
import { IsShown } from "./parts/use-workbook-changes";
import { screensFor } from "./screens";

/** Draws the pane into an element of a page, on the workbook behind the ports. */
export function openPane(place: Element, workbook: PaneWorkbook): void {
  render(<Pane {...workbook} />, place);
}

/** A screen is drawn when it is first opened, and stays as it was left when another is opened. */
function Pane(workbook: PaneWorkbook) {
  const screens = screensFor(workbook);
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
        {screens.map(({ id, title, load }) => (
          <div
            key={id}
            id={`screen-${id}`}
            class="screen"
            role={screens.length > 1 ? "tabpanel" : undefined}
            aria-labelledby={screens.length > 1 ? `tab-${id}` : undefined}
            hidden={id !== open}
          >
            {drawn.includes(id) && (
              <IsShown.Provider value={id === open}>
                <LoadedScreen title={title} workbook={workbook} load={load} />
              </IsShown.Provider>
            )}
          </div>
        ))}
      </main>
    </>
  );
}
