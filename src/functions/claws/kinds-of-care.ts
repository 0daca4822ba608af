import {
  checkRecheckRules,
  defaultRecheckRules,
  type RecheckRule,
  ruleFor,
  type SourcedRecheckRule,
} from "../../core/claws/recheck-rules";
import { FIRST_DAY, LAST_DAY } from "../../core/shared/days";
import { invalid, unavailable } from "../../core/shared/domain-error";
import type { CellValue } from "../cell";
import { columnOf } from "../columns";
import type { Kind } from "../kind";
import { date, number, scalarKind } from "../scalars";
import { settingsTable, type TableColumn } from "../tables";
import { lesionCode, SOUND, SOUND_WORDS } from "./kinds";

/** A lesion, or SOUND for a cow that had none. A number 0 stands for a blank. */
export const lesionOrSound = scalarKind<string>({
  name: "lesion code",
  must: lesionCode.must,
  zeroIsBlank: true,
  readCell: (cell, where) => (SOUND_WORDS.test(String(cell)) ? SOUND : lesionCode.readCell(cell, where)),
});

/** What was done to a foot, in words. A number 0 stands for a blank. */
export const treatment = scalarKind<string>({
  name: "treatment",
  must: 'text such as "block, pain relief"',
  zeroIsBlank: true,
  takesAnyText: true,
  readCell(cell, where) {
    if (typeof cell === "boolean") throw invalid(where, this.must, cell);
    return String(cell);
  },
});
export const treatments = columnOf(treatment, { notes: "refuse" });

/** A day with its time of day where the cell holds one. */
export const dateAndTime = scalarKind<number>({
  ...date(),
  name: "date, with its time of day if known",
  limits: { min: FIRST_DAY, max: LAST_DAY, reason: "the days a worksheet can show" },
  readCell(cell, where) {
    date().readCell(cell, where);
    return cell as number;
  },
});

const days = (max: number, reason: string) =>
  number({ unit: "days", min: 1, max, whole: true, reason, zeroIsBlank: true });

/** A treated foot is looked at well within a lactation. */
export const LONGEST_RECHECK_DAYS = 365;
const recheckInterval = days(LONGEST_RECHECK_DAYS, "a recheck a year on is none");
/** Farm guides leave a block five to six weeks at most. */
const LONGEST_BLOCK_DAYS = 42;
export const blockDays = days(LONGEST_BLOCK_DAYS, "no guide leaves a block longer than six weeks");
export const painReliefDays = days(14, "a longer course is for the veterinarian");
/** The longest dressing of a published trial was left ten days. */
export const bandageHours = number({
  unit: "hours",
  min: 1,
  max: 240,
  reason: "no published trial left a dressing longer than ten days",
  zeroIsBlank: true,
});
const topicalTreatments = number({ min: 1, max: 10, whole: true, reason: "treatments in all", zeroIsBlank: true });
export const recheckVisit = number({
  min: 1,
  max: 3,
  whole: true,
  reason: "rules hold three rechecks",
  zeroIsBlank: true,
});

const RULE_COLUMNS = {
  lesion: { headings: ["Lesion", "Code"], kind: lesionCode },
  firstRecheckDays: { headings: ["First recheck (days)", "Recheck"], kind: recheckInterval, optional: true },
  secondRecheckDays: { headings: ["Second recheck (days)"], kind: recheckInterval, optional: true },
  thirdRecheckDays: { headings: ["Third recheck (days)"], kind: recheckInterval, optional: true },
  blockCheckDays: { headings: ["Block check (days)"], kind: blockDays, optional: true },
  blockOffDays: { headings: ["Block off (days)"], kind: blockDays, optional: true },
  painReliefDays: { headings: ["Pain relief (days)"], kind: painReliefDays, optional: true },
  topicalRepeatDays: { headings: ["Topical repeat (days)"], kind: recheckInterval, optional: true },
  topicalTreatments: { headings: ["Topical treatments"], kind: topicalTreatments, optional: true },
  bandageOffHours: { headings: ["Bandage off (hours)"], kind: bandageHours, optional: true },
} as const satisfies Record<keyof RecheckRule, TableColumn<unknown>>;

const recheckRulesTable = settingsTable("rules", RULE_COLUMNS);

/** The farm's recheck rules, one row a lesion. A parent's row covers its forms. */
export const recheckRules: Kind<readonly RecheckRule[]> = {
  ...recheckRulesTable,
  read(raw, argument) {
    const rules = recheckRulesTable.read(raw, argument);
    checkRecheckRules(rules);
    return rules;
  },
};

export const BUILT_IN_RULES = "the built-in rules: SU, SH, WL 7, 28, 35 days; DD 7, 14, 21; IP 3";

/** The built-in rules as a table for a sheet: headings, then a row a lesion, with where it comes from. */
export function printedRecheckRules(): readonly (readonly CellValue[])[] {
  const keys = Object.keys(RULE_COLUMNS) as (keyof RecheckRule)[];
  const row = (rule: SourcedRecheckRule): readonly CellValue[] => [
    ...keys.map((key) => rule[key] ?? ""),
    rule.source.standing === "common practice" ? rule.source.citation : rule.source.name,
  ];
  return [[...keys.map((key) => RULE_COLUMNS[key].headings[0]), "Basis"], ...defaultRecheckRules.map(row)];
}

/** The rule of a lesion, or why there is none. Rules that were handed over stand alone: no built-in fills their gaps. */
export function recheckRuleOf(code: string, rules: readonly RecheckRule[] | undefined): RecheckRule {
  if (code === SOUND) throw unavailable("lesion says that nothing was found: there is nothing to recheck");
  const rule = ruleFor(rules ?? defaultRecheckRules, code);
  if (rule !== undefined) return rule;
  const call = code === "TN" ? "toe necrosis is for the veterinarian now; " : "";
  throw unavailable(
    rules === undefined
      ? `${call}no source gives a recheck for ${code}: pass a rules table with a row for it`
      : `${call}rules must have a row for ${code}; it has ${rules.map(({ lesion }) => lesion).join(", ")}`,
  );
}
