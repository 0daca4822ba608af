import { checks } from "../../../herd/check/checks";
import { safeRepairs } from "../../../herd/check/repairs/safe-repairs";
import type { CellChange } from "../../../workbook/book-port";
import type { Doubt, DoubtLevel } from "../../../herd/check/doubt";
import { counted, plainNumber } from "../../format";

/** All doubts of one kind. */
export interface DoubtGroup {
  /** Id of the check that found them. */
  readonly check: string;
  readonly title: string;
  /** The gravest level among them. */
  readonly level: DoubtLevel;
  readonly doubts: readonly Doubt[];
  /** How many cells they are about. */
  readonly cells: number;
  /** How many of these are more than worth knowing. */
  readonly doubtful: number;
  /** Those with a safe repair, and the cells that all their repairs change. */
  readonly repairable: readonly Doubt[];
  readonly repairs: readonly CellChange[];
}

const LEVELS: readonly DoubtLevel[] = ["wrong", "doubtful", "note"];

export const LEVEL_NAMES: Readonly<Record<DoubtLevel, string>> = {
  wrong: "wrong",
  doubtful: "doubtful",
  note: "to know",
};

/** Doubts by kind: what is wrong before what is doubtful, and that before what is only worth knowing. */
export function groupsOf(doubts: readonly Doubt[]): readonly DoubtGroup[] {
  const byCheck = new Map<string, Doubt[]>();
  for (const doubt of doubts) {
    const group = byCheck.get(doubt.check);
    if (group === undefined) byCheck.set(doubt.check, [doubt]);
    else group.push(doubt);
  }
  const groups = checks.flatMap(({ id, about }): DoubtGroup[] => {
    const own = byCheck.get(id);
    if (own === undefined) return [];
    const level = LEVELS[Math.min(...own.map((doubt) => LEVELS.indexOf(doubt.level)))]!;
    const cells = cellsOf(own);
    const doubtful = cellsOf(own.filter((doubt) => doubt.level !== "note"));
    const { settled, cells: repairs } = safeRepairs(own);
    return [{ check: id, title: about, level, doubts: own, cells, doubtful, repairable: settled, repairs }];
  });
  return groups.sort((a, b) => LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level));
}

function cellsOf(doubts: readonly Doubt[]): number {
  return doubts.reduce((sum, doubt) => sum + doubt.cells, 0);
}

/** What a check found, in a few words: what is only worth knowing is no doubt, and what was not looked at is not right. */
export function foundText(groups: readonly DoubtGroup[], tables: readonly string[]): string {
  if (tables.length === 0) return "no list was checked";
  const kinds = groups.filter(({ doubtful }) => doubtful > 0);
  const doubtful = kinds.reduce((sum, group) => sum + group.doubtful, 0);
  const toKnow = groups.reduce((sum, group) => sum + group.cells, 0) - doubtful;
  const found = doubtful === 0 ? "nothing doubtful" : `${counted(doubtful, "doubtful cell")} of ${counted(kinds.length, "kind")}`; // oxfmt-ignore
  return toKnow === 0 ? found : `${found}, ${plainNumber(toKnow)} to know`;
}

/** Tells one doubt from all others of a check. */
export function doubtKey({ check, sheet, address, wrong }: Doubt): string {
  return [check, sheet, address, wrong].join("\n");
}
