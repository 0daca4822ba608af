import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";

interface SectionProps {
  readonly title: string;
  /** The title is a name that the eye should find first. */
  readonly strong?: boolean;
  readonly children: ComponentChildren;
}

/** A part of a screen under its own heading. */
export function Section({ title, strong = false, children }: SectionProps) {
  const id = useId();
  return (
    <section aria-labelledby={id}>
      <h2 id={id} class={strong ? "strong" : undefined}>
        {title}
      </h2>
      {children}
    </section>
  );
}

interface NoteProps {
  readonly kind: "error" | "caution" | "remark";
  readonly title: string;
  readonly children: ComponentChildren;
}

/** Marks drawn before a title: a colour alone would tell nothing to many. */
const MARKS = { error: "✕", caution: "!", remark: "i" } as const;

/** A framed note. */
export function Note({ kind, title, children }: NoteProps) {
  const id = useId();
  return (
    <section aria-labelledby={id} class={`note ${kind}`}>
      <h2 id={id}>
        <span class="mark" aria-hidden="true">
          {MARKS[kind]}
        </span>
        {title}
      </h2>
      {children}
    </section>
  );
}

/** One text as a paragraph, several as a list. */
export function TextList({ texts }: { readonly texts: readonly string[] }) {
  if (texts.length === 1) return <p>{texts[0]}</p>;
  return (
    <ul>
      {texts.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}
