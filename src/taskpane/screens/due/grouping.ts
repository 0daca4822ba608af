import type { DaySerial } from "../../../core/shared/days";
import { GROUPS } from "../../../workbook/tables";
import { type DueLine, type Work, WORK_NAMES, WORKS } from "./line";

/** What of the list is shown. */
export interface Filter {
  /** A cow's number or name, a lesion, a foot or other words of the line. */
  readonly text: string;
  readonly work: Work | "";
  /** A group, NO_PLACE, or "" for all. */
  readonly place: string;
}

export type GroupBy = "work" | "place";

/** Stands for lines of cows whose group is not written. */
const NO_PLACE = "not known";

export const noFilter: Filter = { text: "", work: "", place: "" };

export type Bucket = "overdue" | "today" | "ahead";

export interface LineGroup {
  readonly name: string;
  readonly lines: readonly DueLine[];
}

export interface BucketGroups {
  readonly bucket: Bucket;
  readonly count: number;
  /** Lines in the groups; fewer than `count` where the rest waits to be asked for. */
  readonly shown: number;
  readonly groups: readonly LineGroup[];
}

export function bucketOf({ due }: DueLine, day: DaySerial): Bucket {
  return due < day ? "overdue" : due === day ? "today" : "ahead";
}

export function placeName({ place, cow }: DueLine): string {
  return place === "" ? (cow === "" ? "whole herd" : NO_PLACE) : place;
}

export function filtered(lines: readonly DueLine[], { text, work, place }: Filter): readonly DueLine[] {
  const words = text.trim().toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0 && work === "" && place === "") return lines;
  return lines.filter(
    (line) =>
      (work === "" || line.work === work) &&
      (place === "" || placeName(line) === place) &&
      words.every((word) => holds(line, word)),
  );
}

/** A number is meant as a cow and matches from its beginning; other words match anywhere. */
function holds({ cow, what, place, finding }: DueLine, word: string): boolean {
  const name = cow.toLowerCase();
  if (/^\d+$/.test(word)) return name.startsWith(word);
  const texts = finding === undefined ? [] : [finding.foot, finding.lesion, finding.lesionName, finding.treatment];
  return [name, what, place, ...texts].some((part) => part.toLowerCase().includes(word));
}

/** The places that the lines name, our groups first. */
export function placesOf(lines: readonly DueLine[]): readonly string[] {
  return inOrder(new Set(lines.map(placeName)), [...GROUPS, NO_PLACE]);
}

/** The list as it is shown: by time, in each part by work or by place, at most `most` lines a part. */
export function grouped(lines: readonly DueLine[], day: DaySerial, by: GroupBy, most: number): readonly BucketGroups[] {
  const nameOf = by === "place" ? placeName : (line: DueLine) => WORK_NAMES[line.work];
  const order = by === "place" ? [...GROUPS, NO_PLACE] : WORKS.map((work) => WORK_NAMES[work]);
  return (["overdue", "today", "ahead"] as const).map((bucket) => {
    const own = lines.filter((line) => bucketOf(line, day) === bucket);
    const byName = groupBy(own, nameOf);
    let left = most;
    const groups = inOrder(new Set(byName.keys()), order).flatMap((name) => {
      const some = byName.get(name)!.slice(0, left);
      left -= some.length;
      return some.length === 0 ? [] : [{ name, lines: some }];
    });
    return { bucket, count: own.length, shown: most - left, groups };
  });
}

/** Items under the name of each, in the order in which the names are met. */
export function groupBy<T>(items: readonly T[], nameOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const name = nameOf(item);
    const group = groups.get(name);
    if (group === undefined) groups.set(name, [item]);
    else group.push(item);
  }
  return groups;
}

function inOrder(names: ReadonlySet<string>, order: readonly string[]): readonly string[] {
  return [...order.filter((name) => names.has(name)), ...[...names].filter((name) => !order.includes(name)).sort()];
}
