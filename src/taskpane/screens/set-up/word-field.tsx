import { disorders } from "../../../core/claws/disorder-key";
import { SOUND } from "../../../core/claws/findings";
import { LIKELY_FROM } from "../../../herd/codes/words";
import { counted } from "../../format";
import { SelectField } from "./controls";
import { lesionName, type OpenWord } from "./found-words";

const CODES: readonly (readonly [string, string])[] = [
  ["", "no code yet"],
  [SOUND, `${SOUND}: ${lesionName(SOUND)}`],
  ...disorders.map(({ code, name }) => [code, `${code}: ${name}`] as const),
];

interface WordFieldProps {
  readonly word: OpenWord;
  /** The code that it is about to get; "" for none. */
  readonly code: string;
  readonly disabled: boolean;
  choose(code: string): void;
}

/** A word of a farm, and what it is to mean. */
export function WordField({ word, code, disabled, choose }: WordFieldProps) {
  return (
    <li data-place>
      <p class="set-up-column">
        <strong>{word.word}</strong>
        <span class="quiet">{counted(word.times, "time")}</span>
      </p>
      <SelectField
        label="means"
        about={word.word}
        value={code}
        hint={proposalText(word)}
        disabled={disabled}
        isOpen={code === ""}
        options={CODES}
        onChoice={choose}
      />
    </li>
  );
}

function proposalText({ likely }: OpenWord): string {
  if (likely === undefined) return "No code is near.";
  const { code, because, others, certainty } = likely;
  const also = others.length > 0 ? ` It may also mean ${others.join(" or ")}.` : "";
  return `${certainty >= LIKELY_FROM ? "Likely" : "Perhaps"} ${code}, ${lesionName(code)}: ${because}.${also}`;
}
