import "./pictures.css";
import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";
import { NumbersTable, type NumbersTableProps } from "./numbers-table";

interface PictureProps {
  readonly title: string;
  /** What the picture shows, in words: for those who cannot see it, and for those who would rather read. */
  readonly sentence: string;
  readonly numbers: NumbersTableProps;
  readonly children: ComponentChildren;
}

/** A picture with its title, its text and its numbers. The drawing itself is for the eye alone. */
export function Picture({ title, sentence, numbers, children }: PictureProps) {
  const id = useId();
  return (
    <figure class="picture" aria-labelledby={`${id}-title`} aria-describedby={`${id}-text`}>
      <figcaption>
        <span id={`${id}-title`} class="picture-title">
          {title}
        </span>
        <span id={`${id}-text`} class="picture-text">
          {sentence}
        </span>
      </figcaption>
      {children}
      <details class="picture-numbers">
        <summary>Show the numbers</summary>
        <NumbersTable {...numbers} />
      </details>
    </figure>
  );
}
