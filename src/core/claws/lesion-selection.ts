import { type Disorder, disorderOf, disorders } from "./disorder-key";

/** What a rate or a share is asked for: a disorder (a parent takes its forms with it), a group, or all. */
export interface LesionSelection {
  /** Code, group or "all", as text for a reader. */
  readonly name: string;
  has(code: string): boolean;
}

const GROUPS: Readonly<Record<string, Disorder["group"]>> = {
  horn: "horn",
  infectious: "infectious",
  shape: "shape",
  other: "other",
};

/** The selection that a text names; undefined where it names none. */
export function lesionSelectionOf(text: string): LesionSelection | undefined {
  const word = text.trim().toLowerCase();
  if (word === "all") return selection("all", () => true);
  const group = Object.hasOwn(GROUPS, word) ? GROUPS[word] : undefined;
  if (group !== undefined) return selection(group, (disorder) => disorder.group === group);
  const wanted = disorderOf(text);
  return wanted && selection(wanted.code, ({ code, parent }) => code === wanted.code || parent === wanted.code);
}

function selection(name: string, belongs: (disorder: Disorder) => boolean): LesionSelection {
  const codes = new Set(disorders.filter(belongs).map(({ code }) => code));
  return { name, has: (code) => codes.has(code) };
}
