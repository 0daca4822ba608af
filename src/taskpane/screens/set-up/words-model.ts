import type { WordRow } from "../../../herd/codes/words";
import { counted } from "../../format";
import { lesionName, type OpenWord } from "./found-words";
import type { SetUpEvent, SetUpState } from "./state";
import { begun, isBusy } from "./write-model";

/** What the user says of words; undefined where the event is about something else. */
export function nextWords(state: SetUpState, event: SetUpEvent): SetUpState | undefined {
  switch (event.type) {
    case "code chosen":
      if (state.work !== undefined) return state;
      return { ...state, chosenCodes: { ...state.chosenCodes, [event.word]: event.code }, notice: undefined };
    case "keep words pressed":
      return keep(state, event.id);
    default:
      return undefined;
  }
}

/** The code that a word is about to get: the one chosen, else the proposal where it is likely; "" for none. */
export function codeFor({ chosenCodes }: SetUpState, { word, proposed }: OpenWord): string {
  return chosenCodes[word] ?? proposed;
}

/** Words that are about to get a code. */
export function wordsToKeep(state: SetUpState): readonly WordRow[] {
  return state.words.unknown.flatMap((unknown): WordRow[] => {
    const { word, likely } = unknown;
    const code = codeFor(state, unknown);
    if (code === "") return [];
    return [{ word, code, name: lesionName(code), note: likely?.code === code ? likely.because : "the farm said so" }];
  });
}

function keep(state: SetUpState, id: string): SetUpState {
  if (isBusy(state)) return state;
  const words = wordsToKeep(state);
  if (words.length === 0) return { ...state, notice: { kind: "error", text: "No word has a code yet: choose one." } };
  const title = `What ${counted(words.length, "word")} of yours ${words.length === 1 ? "means" : "mean"}`;
  return begun(state, { kind: "words", id, title, words });
}
