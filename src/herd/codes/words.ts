import { disorderOf } from "../../core/claws/disorder-key";
import { SOUND } from "../../core/claws/findings";
import type { RowOf } from "../../workbook/table-definition";
import type { TableContent } from "../../workbook/table-port";
import { wordsTable } from "../../workbook/words-table";
import { foldCompact } from "../fold-words";
import { readHerdTable } from "../read-rows";
import { type LikelyCode, likelyCode } from "./likely-code";

export type WordRow = RowOf<typeof wordsTable>;

/** A row of the Words table that cannot be used, and why. */
export interface WordProblem {
  /** Row counted from 0 below the headings. */
  readonly index: number;
  readonly word: string;
  readonly problem: string;
}

/** A word that stands for no code yet. */
export interface UnknownWord {
  readonly word: string;
  /** How often it stands in the workbook. */
  readonly times: number;
  readonly likely: LikelyCode | undefined;
}

/** The codes behind the words of a farm: its Words table first, then the codes and names of the key. */
export class LesionWords {
  readonly #codes = new Map<string, string>();
  /** The words as the farm writes them, by code. */
  readonly #words = new Map<string, string[]>();
  readonly problems: readonly WordProblem[];

  constructor(content?: TableContent) {
    this.problems = content === undefined ? [] : this.#read(content);
  }

  #read(content: TableContent): WordProblem[] {
    const problems: WordProblem[] = [];
    readHerdTable(wordsTable, content).rows.forEach(({ word, code }, index) => {
      if (word === null || code === null) return;
      const known = codeOfKey(code);
      const before = this.#codes.get(foldCompact(word));
      if (known === undefined) {
        problems.push({ index, word, problem: `Words: the code of "${word}" must be one of the claw disorder key; got "${code}"` }); // oxfmt-ignore
      } else if (before !== undefined && before !== known) {
        problems.push({ index, word, problem: `Words: "${word}" stands twice, for ${before} and for ${known}; the first counts` }); // oxfmt-ignore
      } else if (before === undefined) {
        this.#codes.set(foldCompact(word), known);
        this.#words.set(known, [...(this.#words.get(known) ?? []), word]);
      }
    });
    return problems;
  }

  /** Code of the key, or "none"; undefined where the text stands for none. */
  codeOf(text: string): string | undefined {
    return this.#codes.get(foldCompact(text)) ?? codeOfKey(text);
  }

  /** The farm's own words for a code, in the order of its Words table. */
  wordsFor(code: string): readonly string[] {
    return this.#words.get(code) ?? [];
  }

  /** The texts that stand for no code, most frequent first. */
  unknown(texts: Iterable<string>): readonly UnknownWord[] {
    const words = new Map<string, { word: string; times: number }>();
    for (const text of texts) {
      const key = foldCompact(text);
      const kept = words.get(key);
      if (kept !== undefined) kept.times++;
      else if (this.codeOf(text) === undefined) words.set(key, { word: text.trim(), times: 1 });
    }
    return [...words.values()]
      .map(({ word, times }) => ({ word, times, likely: likelyCode(word) }))
      .sort((a, b) => b.times - a.times || (a.word < b.word ? -1 : 1));
  }
}

/** Code of the key, or "none", whatever words the farm has; undefined where the text is neither code nor name. */
export function codeOfKey(text: string): string | undefined {
  return text.trim().toLowerCase() === SOUND ? SOUND : disorderOf(text)?.code;
}

/** From this certainty on a code is likely and a proposed row carries it; it is only a proposal until it is saved. */
export const LIKELY_FROM = 0.7;

/** Rows for the Words table that propose a code for each unknown word. What is not likely enough stays blank. */
export function proposedRows(unknown: readonly UnknownWord[]): readonly WordRow[] {
  return unknown.map(({ word, likely }) => {
    const sure = likely !== undefined && likely.certainty >= LIKELY_FROM;
    return {
      word,
      code: sure ? likely.code : null,
      name: sure ? nameOf(likely.code) : null,
      note: likely === undefined ? "no code is near" : noteOf(likely, sure),
    };
  });
}

function nameOf(code: string): string {
  return code === SOUND ? "sound foot" : disorderOf(code)!.name;
}

function noteOf({ code, because, others }: LikelyCode, sure: boolean): string {
  const may = sure ? others : [code, ...others];
  return may.length === 0 ? because : `${because}; it may mean ${may.join(" or ")}`;
}
