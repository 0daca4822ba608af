import { capitalised, formatNumber } from "../../format";
import type { Rows } from "../../../blocks/expression/values";
import { numberIn, recordsIn, textIn } from "./rows";

/** Cows of a lactation group, and how many of them have the lesion. */
export interface GroupShare {
  readonly name: string;
  readonly examined: number;
  readonly affected: number;
  /** undefined where none was examined. */
  readonly share: number | undefined;
  readonly low: number | undefined;
  readonly high: number | undefined;
}

export function groupSharesOf(spilled: Rows): readonly GroupShare[] {
  return recordsIn(spilled).map((row) => ({
    name: textIn(row, "Group"),
    examined: numberIn(row, "Examined") ?? 0,
    affected: numberIn(row, "Affected") ?? 0,
    share: numberIn(row, "Share"),
    low: numberIn(row, "Low"),
    high: numberIn(row, "High"),
  }));
}

/** Which group has most, and whether its limits stand clear of the others'. */
export function groupsSentence(groups: readonly GroupShare[]): string {
  const known = groups.filter(({ share }) => share !== undefined);
  const [first] = known;
  if (first === undefined) return "No cow with a lactation was examined.";
  if (known.length === 1) return `Only ${first.name} were examined: ${percent(first)}.`;
  const most = known.reduce((highest, group) => (group.share! > highest.share! ? group : highest));
  const others = known.filter((group) => group !== most);
  const apart = others.every(({ high }) => most.low! > high!);
  const sure = apart ? "More than chance explains." : "Their limits overlap: chance may explain the difference.";
  return `${capitalised(most.name)} have it most: ${percent(most)}; ${others.map((group) => `${group.name} ${percent(group)}`).join(", ")}. ${sure}`;
}

function percent({ share }: GroupShare): string {
  return formatNumber(share!, "0%");
}
