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

/**
 * A part of a long screen that opens and closes under its heading. It is drawn when it is opened first; closed again it
 * keeps what was chosen and told in it.
 */
export function Fold({ title, answer, opened = false, children }: FoldProps) {
  const id = useId();
  const [open, setOpen] = useState(opened);
  const [drawn, setDrawn] = useState(opened);
  const toggle = (): void => {
    setOpen(!open);
    setDrawn(true);
  };
  return (
    <section aria-labelledby={id} class="fold">
      <h2 id={id} class="strong">
        <button type="button" aria-expanded={open} onClick={toggle}>
          <span class="fold-mark" aria-hidden="true">
            {open ? "–" : "+"}
          </span>
          {title}
        </button>
      </h2>
      {answer !== undefined && <p>{answer}</p>}
      {drawn && (
        <div class="fold-content" hidden={!open}>
          {children}
        </div>
      )}
    </section>
  );
}
