import { disorderOf, parentCode } from "../../../core/claws/disorder-key";
import type { Rows } from "../../../blocks/expression/values";
import { numberIn, recordsIn, textIn } from "./rows";

/** A lesion, or a group of them, in the period. */
export interface LesionCases {
  readonly code: string;
  readonly name: string;
  readonly newCases: number;
  readonly repeats: number;
  readonly cows: number;
  /** Per 100 cow-years. */
  readonly rate: number;
  readonly low: number;
  readonly high: number;
  readonly target: number | undefined;
  /** "above", "below", "within chance"; "" without a target. */
  readonly against: string;
  readonly note: string;
}

const ALL = "all";
/** Groups of lesions, which the table lists where they have a target. */
const GROUPS = new Set(["horn", "infectious", "shape", "other"]);

/** The lesions of HERD.LESION.TABLE. */
export interface LesionTable {
  /** Lesions, the most new cases first; a form stands here too where it has a target. */
  readonly lesions: readonly LesionCases[];
  readonly groups: readonly LesionCases[];
  readonly all: LesionCases | undefined;
}

export function lesionTableOf(spilled: Rows): LesionTable {
  const rows = recordsIn(spilled).flatMap((row): LesionCases[] => {
    const newCases = numberIn(row, "New cases");
    if (newCases === undefined) return [];
    const number = (heading: string): number => numberIn(row, heading) ?? 0;
    return [
      {
        code: textIn(row, "Code"),
        name: textIn(row, "Lesion"),
        newCases,
        repeats: number("Repeats"),
        cows: number("Cows"),
        rate: number("Per 100 cow-years"),
        low: number("Low"),
        high: number("High"),
        target: numberIn(row, "Target"),
        against: textIn(row, "Against target"),
        note: textIn(row, "Note"),
      },
    ];
  });
  const isGroup = ({ code }: LesionCases): boolean => code === ALL || GROUPS.has(code);
  return {
    lesions: rows.filter((row) => !isGroup(row)).sort((a, b) => b.newCases - a.newCases),
    groups: rows.filter(({ code }) => GROUPS.has(code)),
    all: rows.find(({ code }) => code === ALL),
  };
}

/** Everything that has a target: lesions, forms, groups, and all of them together. */
export function targetedIn({ lesions, groups, all }: LesionTable): readonly LesionCases[] {
  return [...lesions, ...groups, ...(all === undefined ? [] : [all])].filter(({ target }) => target !== undefined);
}

/** The code of the lesion that this one is a form of; undefined for one that stands for itself. */
export function formOf(code: string): string | undefined {
  return disorderOf(code)?.parent;
}

/** Lesions that are no form of another in the list: their cases add up to all. */
export function parentsOf({ lesions }: LesionTable): readonly LesionCases[] {
  return lesions.filter(({ code }) => parentCode(code) === code);
}
