import { disorders } from "../../../core/claws/disorder-key";
import { SOUND } from "../../../core/claws/findings";
import { counted } from "../../format";
import { Note, TextList } from "../../parts/blocks";
import { SelectField } from "./controls";
import { lesionName, type OpenWord } from "./found-words";
import type { SetUpViewProps } from "./view-props";
import { codeFor, wordsToKeep } from "./words-model";
import { isBusy } from "./write-model";

/** The farm's own words for lesions, and the codes that they stand for. */
export function WordsSection(props: SetUpViewProps) {
  const { state, dispatch, newId } = props;
  const { unknown, known, problems, lists } = state.words;
  const ready = wordsToKeep(state).length;
  return (
    <>
      {lists === 0 && (
        <p>No list of findings with a column for the lesion is read. Say under Your lists which one it is.</p>
      )}
      {problems.length > 0 && (
        <Note kind="caution" title="Rows of the sheet Words that do not count">
          <TextList texts={problems} />
        </Note>
      )}
      {lists > 0 && unknown.length === 0 && <p>Every word in your findings stands for a code.</p>}
      {unknown.length > 0 && (
        <>
          <p>These words stand in your findings. Say once what each means. A proposal counts only when you keep it.</p>
          <ul class="set-up-columns">
            {unknown.map((word) => (
              <Word key={word.word} word={word} {...props} />
            ))}
          </ul>
          <p class="set-up-buttons" data-place>
            <button
              type="button"
              class="main"
              disabled={isBusy(state)}
              onClick={() => dispatch({ type: "keep words pressed", id: newId() })}
            >
              Keep {counted(ready, "word")}
            </button>
            <small>
              Writes the sheet Words, where you can see and change it.
              {ready < unknown.length && ` ${counted(unknown.length - ready, "word")} without a code will wait.`}
            </small>
          </p>
        </>
      )}
      {known.length > 0 && (
        <details>
          <summary>Kept on the sheet Words ({known.length})</summary>
          <dl class="set-up-known">
            {known.map(({ word, code, name }) => (
              <div key={word}>
                <dt>{word}</dt>
                <dd>
                  {code}, {name}
                </dd>
              </div>
            ))}
          </dl>
        </details>
      )}
    </>
  );
}

const CODES: readonly (readonly [string, string])[] = [
  ["", "no code yet"],
  [SOUND, `${SOUND}: ${lesionName(SOUND)}`],
  ...disorders.map(({ code, name }) => [code, `${code}: ${name}`] as const),
];

function Word({ word, state, dispatch }: SetUpViewProps & { readonly word: OpenWord }) {
  return (
    <li data-place>
      <p class="set-up-column">
        <strong>{word.word}</strong>
        <span class="quiet">{counted(word.times, "time")}</span>
      </p>
      <SelectField
        label="means"
        about={word.word}
        value={codeFor(state, word)}
        hint={proposalText(word)}
        disabled={isBusy(state)}
        isOpen={codeFor(state, word) === ""}
        options={CODES}
        onChoice={(code) => dispatch({ type: "code chosen", word: word.word, code })}
      />
    </li>
  );
}

/** From this certainty on a proposal is called likely. */
const LIKELY_FROM = 0.7;

function proposalText({ likely }: OpenWord): string {
  if (likely === undefined) return "No code is near.";
  const { code, because, others, certainty } = likely;
  const also = others.length > 0 ? ` It may also mean ${others.join(" or ")}.` : "";
  return `${certainty >= LIKELY_FROM ? "Likely" : "Perhaps"} ${code}, ${lesionName(code)}: ${because}.${also}`;
}
