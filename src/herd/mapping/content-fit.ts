import { isLesionWord } from "../codes/likely-code";
import { couldBeDays, type Profile, shareOf } from "./profile";
import type { Meaning } from "./targets";
import { namesTreatment, readClaw, readFoot, readGroup, readLandmark, readOutcome } from "./trade-values";

/** How a column's cells speak for a meaning: 1 strongly for, 0 not at all, -1 against: it cannot be. */
export interface ContentFit {
  readonly fit: number;
  /** What is seen in the cells, in plain words. */
  readonly seen: string;
}

const NOT: ContentFit = { fit: -1, seen: "the cells are of another kind" };
const NOTHING: ContentFit = { fit: 0, seen: "" };

const fits: Readonly<Record<Exclude<Meaning, "other">, (profile: Profile) => ContentFit>> = {
  cow: (p) => {
    if (p.days > 0.3 || p.textDates > 0.3 || (p.numbers > 0.5 && p.whole < 0.9 * p.numbers)) return NOT;
    const differ = p.distinct.size / Math.max(p.filled, 1);
    return { fit: p.filled > 0 && p.low < 0 ? -1 : differ > 0.15 ? 0.3 : 0, seen: `${p.distinct.size} different names or numbers` };
  },
  date: dayFit,
  born: dayFit,
  calved: dayFit,
  dryOff: dayFit,
  entered: dayFit,
  left: dayFit,
  seenAgain: dayFit,
  nextLook: dayFit,
  closedOn: dayFit,
  lactation: (p) => (inRange(p, 1, 15) && p.whole > 0.8 ? figures(p, 0.5) : p.filled === 0 ? NOTHING : NOT),
  daysInMilk: (p) => (inRange(p, 0, 1500) && p.whole > 0.8 ? figures(p, p.high > 20 ? 0.5 : 0) : p.filled === 0 ? NOTHING : NOT),
  zone: (p) => (inRange(p, 0, 12) && p.whole > 0.6 ? figures(p, 0.3) : p.numbers > 0.5 ? NOT : NOTHING),
  severity: (p) => (inRange(p, 0, 5) ? figures(p, 0.3) : p.words > 0.5 ? { fit: -0.2, seen: "words" } : p.filled === 0 ? NOTHING : NOT),
  stage: (p) => wordFit(p, (text) => /^m\s?[0-4]([.,]1)?$/i.test(text), "stages such as M2"),
  toeMm: (p) => (p.numbers > 0.5 && p.low > 1 && p.median < 250 ? figures(p, 0.4) : p.filled === 0 ? NOTHING : NOT),
  foot: (p) => wordFit(p, (text) => readFoot(text) !== undefined, "words for feet"),
  claw: (p) => wordFit(p, (text) => readClaw(text) !== undefined, "words for the inner and outer claw"),
  lesion: (p) => wordFit(p, isLesionWord, "words for lesions"),
  measuredFrom: (p) => wordFit(p, (text) => readLandmark(text) !== undefined, "places to measure from"),
  treatment: (p) => wordFit(p, namesTreatment, "words for treatments"),
  outcome: (p) => wordFit(p, (text) => readOutcome(text) !== undefined, "words for how a foot was found"),
  group: (p) => (p.days > 0.3 || p.textDates > 0.3 ? NOT : wordlessly(wordFit(p, (text) => readGroup(text) !== undefined, "words for groups"))),
  score: (p) => (inRange(p, 0, 5) ? figures(p, 0.4) : p.filled === 0 ? NOTHING : NOT),
  milkKg: (p) => (p.numbers > 0.5 && p.low >= 0 && p.high <= 300 && p.median > 3 && p.days < 0.3 ? figures(p, p.whole < 0.5 * p.numbers ? 0.5 : 0.2) : p.filled === 0 ? NOTHING : NOT),
  count: (p) => (p.numbers > 0.5 && p.low >= 0 && p.high > 20 && p.days < 0.3 ? figures(p, p.high > 10 * Math.max(p.median, 1) || p.median > 20_000 ? 0.5 : 0.3) : p.filled === 0 ? NOTHING : NOT),
  note: (p) => (p.numbers > 0.5 || p.days > 0.3 || p.textDates > 0.5 ? NOT : { fit: 0.1, seen: "free text" }),
  drug: (p) => (p.numbers > 0.5 ? NOT : NOTHING),
  withdrawal: () => NOTHING,
}; // oxfmt-ignore

/** How the cells of a column fit a meaning. */
export function contentFit(profile: Profile, meaning: Meaning): ContentFit {
  return meaning === "other" ? NOTHING : fits[meaning](profile);
}

function dayFit(p: Profile): ContentFit {
  if (p.filled === 0) return NOTHING;
  if (p.days + p.textDates > 0.5) return { fit: 0.6, seen: p.textDates > p.days ? "dates written as text" : "dates" };
  return couldBeDays(p) ? { fit: 0.2, seen: "numbers that could be dates" } : NOT;
}

/** A column of words of which most are known is almost certainly one of its kind. */
function wordFit(p: Profile, knows: (text: string) => boolean, what: string): ContentFit {
  if (p.filled === 0) return NOTHING;
  if (p.words < 0.5) return NOT;
  const known = shareOf(p, knows);
  if (known >= 0.5) return { fit: Math.min(1, 0.4 + 0.6 * known), seen: `${what}, in ${percent(known)} of its cells` };
  return { fit: known > 0.15 ? 0.2 : -0.3, seen: known > 0.15 ? `some ${what}` : `no ${what}` };
}

/** A group may carry any name. */
function wordlessly({ fit, seen }: ContentFit): ContentFit {
  return { fit: Math.max(fit, 0), seen };
}

function inRange(p: Profile, low: number, high: number): boolean {
  return p.numbers > 0.5 && p.low >= low && p.high <= high;
}

function figures(p: Profile, fit: number): ContentFit {
  return { fit, seen: p.min === p.max ? `all ${p.min}` : `numbers from ${p.min} to ${p.max}` };
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}
