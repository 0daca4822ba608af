import { PutLiveBlock } from "../../../parts/live-blocks/put-live-block";
import { TypedField } from "../../../parts/typed-field";
import { MEND_FIRST } from "../answer";
import { type Field, isComputable } from "../given";
import type { SectionProps } from "./props";

interface FieldOfProps extends Pick<SectionProps, "shown" | "read" | "type"> {
  readonly field: Field;
  readonly label: string;
}

/** A number that the user may change; the figures follow as it is typed. */
export function FieldOf({ field, label, shown, read, type }: FieldOfProps) {
  return (
    <TypedField
      label={label}
      numeric
      value={shown[field]}
      problem={read.problems[field]}
      onText={(text) => type(field, text)}
    />
  );
}

/** Why there is no figure. */
export function Refused({ sentence }: { readonly sentence: string | undefined }) {
  return sentence === undefined ? null : <p class="cells-refused">{sentence.replace(/([^.!?])$/, "$1.")}</p>;
}

/** Several plain sentences below a figure. */
export function Sentences({ texts }: { readonly texts: readonly string[] }) {
  return (
    <>
      {texts.map((text) => (
        <p key={text}>{text}</p>
      ))}
    </>
  );
}

/** Puts the section's block into the sheet. */
export function Put({ figures, given, read, workbook }: SectionProps) {
  const { computed } = figures;
  const needsPrice = computed.block.inputs.some(({ name }) => name === "milkPrice") && read.price === undefined;
  const unready = !isComputable(computed.block, read)
    ? MEND_FIRST
    : needsPrice
      ? "Type the price of a litre first."
      : undefined;
  return <PutLiveBlock computed={computed} given={given} workbook={workbook} unready={unready} />;
}
