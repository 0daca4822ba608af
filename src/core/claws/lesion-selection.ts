import { type Disorder, disorderOf, disorders } from "./disorder-key";

/** What a rate or a share is asked for: a disorder (a parent takes its forms with it), a group, or all. */
export interface LesionSelection {
  /** Code, group or "all". */
  readonly name: string;
  /** The name as a reader reads it: "Sole ulcer", "Infectious lesions". */
  readonly title: string;
  /** Places of its disorders in the key. */
  readonly places: readonly number[];
  has(code: string): boolean;
}

const GROUPS: Readonly<Record<string, string>> = {
  horn: "Claw horn lesions",
  infectious: "Infectious lesions",
  shape: "Claw shape",
  other: "Other lesions",
};
/** Words for a selection of several disorders. */
export const groupWords: readonly string[] = ["all", ...Object.keys(GROUPS)];

/** The selection that a text names; undefined where it names none. */
export function lesionSelectionOf(text: string): LesionSelection | undefined {
  const word = text.trim().toLowerCase();
  if (word === "all") return selection("all", "All lesions", () => true);
  if (Object.hasOwn(GROUPS, word)) return selection(word, GROUPS[word]!, ({ group }) => group === word);
  const wanted = disorderOf(text);
  return wanted && selection(wanted.code, wanted.name, ({ code, parent }) => [code, parent].includes(wanted.code));
}

function selection(name: string, title: string, belongs: (disorder: Disorder) => boolean): LesionSelection {
  const places = [...disorders.keys()].filter((place) => belongs(disorders[place]!));
  const codes = new Set(places.map((place) => disorders[place]!.code));
  return { name, title, places, has: (code) => codes.has(code) };
}
