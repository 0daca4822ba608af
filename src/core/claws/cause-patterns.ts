import { barker2009 } from "../reference/barker-2009";
import { bicalho2009, CUSHION_THINNEST_DAYS_IN_MILK } from "../reference/bicalho-2009";
import { cookNordlund2009 } from "../reference/cook-nordlund-2009";
import { palmerOConnell2015 } from "../reference/palmer-oconnell-2015";
import { randall2016 } from "../reference/randall-2016";
import { vanAmstel2004 } from "../reference/van-amstel-2004";
import type { Source } from "../shared/source";

/** A finding as the review looks at it. */
export interface ReviewedFinding {
  /** Code, an ulcer named by its zone. */
  readonly code: string;
  /** 0 for a heifer before calving; NaN where not given. */
  readonly lactation: number;
  /** NaN where not given. */
  readonly daysInMilk: number;
}

/** A part of the barn or of the work, and the findings that point to it. */
export interface CausePattern {
  readonly area: string;
  /** What to go and look at. */
  readonly look: string;
  /** What its findings have in common, for the evidence. */
  readonly pattern: string;
  readonly sources: readonly Source[];
  matches(finding: ReviewedFinding): boolean;
}

const SOLE = new Set(["SU", "U", "BU", "SH", "SHD", "SHC", "DS"]);
const WHITE_LINE = new Set(["WL", "WLF", "WLA"]);
const TOE = new Set(["TU", "TN", "TS"]);
const SKIN = new Set(["DD", "ID", "IP", "HHE", "IH"]);
const isHorn = (code: string) => SOLE.has(code) || WHITE_LINE.has(code) || TOE.has(code);

/** Where to look first when patterns have as many cases: the order of the list. */
export const causePatterns: readonly CausePattern[] = [
  {
    area: "Lying comfort",
    look: "bedding depth and softness, cows standing in or half in the stalls, stalls free at lying time",
    pattern: "sole lesions",
    sources: [barker2009, cookNordlund2009],
    matches: ({ code }) => SOLE.has(code),
  },
  {
    area: "Standing on concrete",
    look: "hours in the parlour and collecting yard, time locked up, concrete tracks and feed alleys",
    pattern: "sole lesions",
    sources: [barker2009],
    matches: ({ code }) => SOLE.has(code),
  },
  {
    area: "Handling and turning",
    look: "sharp turns, slipping, pushing at gates and by the backing gate, stones on tracks, grooved concrete",
    pattern: "white line lesions",
    sources: [barker2009],
    matches: ({ code }) => WHITE_LINE.has(code),
  },
  {
    area: "Hygiene and footbath",
    look: "leg hygiene, scraping of alleys, footbath length, strength and changes, bought-in stock, heifers before calving",
    pattern: "infectious lesions",
    sources: [barker2009, palmerOConnell2015],
    matches: ({ code }) => SKIN.has(code),
  },
  {
    area: "Trimming itself",
    look: "toe length and sole left after trimming, toes cut short, who trims and how often",
    pattern: "toe lesions and thin soles",
    sources: [vanAmstel2004],
    matches: ({ code }) => TOE.has(code),
  },
  {
    area: "Wet and worn horn",
    look: "wet floors, new or rough concrete, long walks to the parlour",
    pattern: "toe lesions and thin soles",
    sources: [vanAmstel2004],
    matches: ({ code }) => TOE.has(code),
  },
  {
    area: "Transition",
    look: "loss of body condition, ketosis, feeding and space from dry-off to the first months in milk",
    pattern: `sole and white line lesions up to ${CUSHION_THINNEST_DAYS_IN_MILK} days in milk`,
    sources: [bicalho2009, cookNordlund2009],
    matches: ({ code, lactation, daysInMilk }) =>
      (SOLE.has(code) || WHITE_LINE.has(code)) && lactation !== 0 && daysInMilk <= CUSHION_THINNEST_DAYS_IN_MILK,
  },
  {
    area: "Heifers: rearing, mixing, feed bunk competition",
    look: "floor on which heifers are reared, mixing with cows, bunk space, trimming before calving",
    pattern: "horn lesions of heifers and first lactation",
    sources: [randall2016],
    matches: ({ code, lactation }) => isHorn(code) && lactation <= 1,
  },
];

/** An ulcer recorded without its place is named by its zone: 1 toe, 4 sole, 6 bulb. From memory. */
const ULCER_BY_ZONE = new Map([[1, "TU"], [4, "SU"], [6, "BU"]]); // oxfmt-ignore

export function ulcerByZone(code: string, zone: number): string {
  return code === "U" ? (ULCER_BY_ZONE.get(zone) ?? code) : code;
}
