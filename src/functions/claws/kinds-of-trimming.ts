import { defaultTrimRules, type TrimOccasion, trimOccasions, type TrimRule } from "../../core/claws/next-trim";
import type { Claw, Limb } from "../../core/claws/reference-claw";
import type { Landmark } from "../../core/claws/toe-length";
import { invalid } from "../../core/shared/domain-error";
import type { CellValue } from "../cell";
import type { Kind } from "../kind";
import { choice, number, scalarKind } from "../scalars";
import { settingsTable } from "../tables";

/** From where a toe is measured. There is no default: lengths from the two are never compared. */
export const landmark = choice<Landmark>(["hard horn", "skin-horn line"], {
  "start of hard horn": "hard horn",
  "where the horn turns hard": "hard horn",
  hairline: "skin-horn line",
  "hair line": "skin-horn line",
  "skin line": "skin-horn line",
});

export const claw = choice<Claw>(["inner", "outer"], {
  medial: "inner",
  lateral: "outer",
  inside: "inner",
  outside: "outer",
});

/** A foot, or only whether it is a front or a hind one; handed on as that. */
export const limb = choice<Limb>(["front", "hind"], {
  fore: "front",
  rear: "hind",
  back: "hind",
  LF: "front",
  RF: "front",
  FL: "front",
  FR: "front",
  "left front": "front",
  "right front": "front",
  "front left": "front",
  "front right": "front",
  "left fore": "front",
  "right fore": "front",
  LH: "hind",
  RH: "hind",
  HL: "hind",
  HR: "hind",
  LR: "hind",
  RR: "hind",
  RL: "hind",
  "left hind": "hind",
  "right hind": "hind",
  "hind left": "hind",
  "hind right": "hind",
  "left rear": "hind",
  "right rear": "hind",
  "rear left": "hind",
  "rear right": "hind",
});

/** Toes of cattle are some 60 to 120 mm long; corkscrew claws grow longer. */
export const toeLength = number({
  unit: "mm",
  min: 30,
  max: 250,
  reason: "millimetres, not cm or inches",
  zeroIsBlank: true,
});

export const heelHeight = number({
  unit: "mm",
  min: 10,
  max: 120,
  reason: "millimetres, not cm or inches",
  zeroIsBlank: true,
});

/** Lactation of a cow, or "heifer"; a heifer before calving is handed on as 0. A number 0 stands for a blank. */
const lactationNumber = number({
  min: 1,
  max: 20,
  whole: true,
  reason: "no cow has calved more often",
  zeroIsBlank: true,
});
export const lactation = scalarKind<number>({
  ...lactationNumber,
  must: `${lactationNumber.must}, or "heifer"`,
  readCell(cell, where) {
    if (typeof cell !== "string" || /\d/.test(cell)) return lactationNumber.readCell(cell, where);
    if (/^heifer$/i.test(cell)) return 0;
    throw invalid(where, this.must, cell);
  },
});

export const ageYears = number({ unit: "years", min: 1, max: 25, reason: "age of a cow in years", zeroIsBlank: true });

export const lameness = choice(["lame", "sound"], {
  yes: "lame",
  no: "sound",
  severe: "lame",
  "severely lame": "lame",
  "not lame": "sound",
});

const trimRulesTable = settingsTable("trim rules", {
  when: { headings: ["When"], kind: choice<TrimOccasion>(trimOccasions) },
  days: {
    headings: ["Days"],
    kind: number({ unit: "days", min: 1, max: 730, whole: true, reason: "within two years", zeroIsBlank: true }),
  },
});

/** The farm's trim rules, one row an occasion. */
export const trimRules: Kind<readonly TrimRule[]> = trimRulesTable;

export const BUILT_IN_TRIM_RULES =
  "the built-in rules: 117 days in milk, 21 days before dry-off, 60 days between trims";

/** The built-in trim rules as a table for a sheet: headings, then the rows, with where they come from. */
export function printedTrimRules(): readonly (readonly CellValue[])[] {
  return [
    ["When", "Days", "Basis"],
    ...defaultTrimRules.map(({ when, days, source }) => [
      when,
      days,
      source.standing === "common practice" ? source.citation : source.name,
    ]),
  ];
}
