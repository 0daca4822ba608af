import "./pane.css";
import { render } from "preact";
import type { WorkbookPort } from "../workbook/port";
import { Explain } from "./screens/explain/screen";

/** Draws the pane into an element of a page, on the workbook behind the port. */
export function openPane(place: Element, port: WorkbookPort): void {
  render(<Pane port={port} />, place);
}

function Pane({ port }: { readonly port: WorkbookPort }) {
  return (
    <>
      <header class="top">
        <p class="product">Evenfoot</p>
      </header>
      <main>
        <Explain port={port} />
      </main>
    </>
  );
}
