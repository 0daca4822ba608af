import { isComputable } from "./given";
import type { SectionProps } from "./sections/props";

/** Stands in place of figures while a field of theirs holds what cannot be. */
export const MEND_FIRST = "Mend what is typed first.";

/** The answer of a section in a line; none before its figures are there. */
export function answerOf<Props extends Pick<SectionProps, "figures" | "read">>(
  props: Props,
  answer: (props: Props) => string | undefined,
): string | undefined {
  if (!isComputable(props.figures.computed.block, props.read)) return MEND_FIRST;
  return props.figures.isComputed ? answer(props) : undefined;
}
