import "./fold.css";
import type { ComponentChildren } from "preact";
import { useId, useState } from "preact/hooks";

interface FoldProps {
  readonly title: string;
  /** The answer in a line, which stands there whether it is open or not. */
  readonly answer?: string | undefined;
  /** Whether it is open before the user says so. */
  readonly opened?: boolean;
  readonly children: ComponentChildren;
}

/** A part of a long screen that opens and closes under its heading. */
export function Fold({ title, answer, opened = false, children }: FoldProps) {
  const id = useId();
  const [open, setOpen] = useState(opened);
  return (
    <section aria-labelledby={id} class="fold">
      <h2 id={id} class="strong">
        <button type="button" aria-expanded={open} onClick={() => setOpen(!open)}>
          <span class="fold-mark" aria-hidden="true">
            {open ? "–" : "+"}
          </span>
          {title}
        </button>
      </h2>
      {answer !== undefined && <p>{answer}</p>}
      {open && <div class="fold-content">{children}</div>}
    </section>
  );
}
