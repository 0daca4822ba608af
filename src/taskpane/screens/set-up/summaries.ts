import { counted, plainNumber } from "../../format";
import { checkedIn } from "./check-model";
import { foundText } from "./doubts";
import { certaintyOf, openPoints } from "./lists";
import type { SectionId, SetUpState } from "./state";
import { codeFor } from "./words-model";

/** What stands in a part of the screen, in a few words under its heading. */
export function sectionState(state: SetUpState, section: SectionId): string {
  if (state.reading.kind !== "read" && section !== "copy") return "";
  switch (section) {
    case "lists":
      return listsState(state);
    case "words":
      return wordsState(state);
    case "check":
      return checkState(state);
    case "formulas":
      return formulasState(state);
    case "copy":
      return state.copy.kind === "opened" ? state.copy.old.name : "";
    case "blocks":
      return "";
  }
}

/** Whether what is read now differs from what is kept. */
export function isToBeKept(state: SetUpState): boolean {
  if (state.reading.kind !== "read") return false;
  const read = state.lists.filter(({ readAs, own }) => readAs !== "" && !own);
  if (!state.reading.hasMapping) return read.length > 0;
  const { refused, notes, broken } = state.reading;
  return state.touched.length + refused.length + notes.length + broken.length > 0;
}

function listsState(state: SetUpState): string {
  const read = state.lists.filter(({ readAs }) => readAs !== "");
  if (read.length === 0) return "no list is read yet";
  const toSay = read.flatMap(openPoints).length;
  const unsure = read.flatMap(({ columns, own }) => (own ? [] : columns)).filter((column) => certaintyOf(column) === "please say").length; // oxfmt-ignore
  const open = Math.max(toSay, unsure);
  if (open > 0) return `${counted(read.length, "list")}, ${counted(open, "question")}`;
  return `${counted(read.length, "list")}, ${isToBeKept(state) ? "not kept yet" : "kept"}`;
}

function wordsState(state: SetUpState): string {
  const { unknown, known, lists } = state.words;
  if (lists === 0) return "no list of findings is read";
  if (unknown.length === 0) return known.length === 0 ? "nothing to say" : `${counted(known.length, "word")} kept`;
  const open = unknown.filter((word) => codeFor(state, word) === "").length;
  return `${counted(unknown.length, "word")} to confirm${open > 0 ? `, ${open} without a code` : ""}`;
}

function checkState(state: SetUpState): string {
  if (state.check.kind === "checking") return "checking …";
  const checked = checkedIn(state);
  if (checked === undefined) return "not checked yet";
  const doubtful = checked.groups.reduce((sum, group) => sum + group.doubtful, 0);
  return doubtful === 0 ? foundText([], checked.tables) : `${plainNumber(doubtful)} doubtful`;
}

function formulasState({ formulas }: SetUpState): string {
  if (formulas.kind !== "looked") return "";
  if (formulas.broken.length > 0) return `${counted(formulas.broken.length, "formula")} with #NAME?`;
  return formulas.loaded === "no" ? "functions are not loaded" : "all well";
}
