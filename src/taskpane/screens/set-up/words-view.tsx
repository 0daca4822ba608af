import { counted } from "../../format";
import { Note, TextList } from "../../parts/blocks";
import type { SetUpViewProps } from "./view-props";
import { WordField } from "./word-field";
import { codeFor, wordsToKeep } from "./words-model";
import { isBusy } from "./write-model";

/** The farm's own words for lesions, and the codes that they stand for. */
export function WordsSection({ state, dispatch, newId }: SetUpViewProps) {
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
              <WordField
                key={word.word}
                word={word}
                code={codeFor(state, word)}
                disabled={isBusy(state)}
                choose={(code) => dispatch({ type: "code chosen", word: word.word, code })}
              />
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
