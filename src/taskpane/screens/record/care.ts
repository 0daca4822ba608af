import { type AftercareJob, aftercareJobs } from "../../../core/claws/aftercare";
import { disorderOf } from "../../../core/claws/disorder-key";
import { stageMeaning } from "../../../core/claws/dermatitis-stage";
import { type RecheckRule, ruleFor } from "../../../core/claws/recheck-rules";
import { otherClaw } from "../../../core/claws/reference-claw";
import { standardCare } from "../../../core/claws/standard-care";
import { isForTheVeterinarian } from "../../../core/claws/trim-plan";
import type { Care } from "./fields";
import { isLame } from "./mobility";
import type { FindingEntry, RecordState } from "./state";
import { typedNumber } from "./typed-text";

const nothingDone: Care = {
  trim: false,
  block: "",
  blockOffDays: "",
  painRelief: false,
  painReliefDays: "",
  topical: false,
  topicalTreatments: "",
  topicalRepeatDays: "",
  bandage: false,
  bandageOffHours: "",
  vetCalled: false,
  other: "",
  drug: "",
  milkHours: "",
  meatDays: "",
};

/**
 * The treatment that the rules fill in. A block and pain relief are for a cow that is lame or was not scored; the block
 * goes on the sound claw. Nothing is filled in for what the veterinarian has to see first.
 */
export function filledCare(finding: FindingEntry, lame: boolean | undefined, rules: readonly RecheckRule[]): Care {
  const disorder = disorderOf(finding.lesion);
  if (disorder === undefined || isForTheVeterinarian(disorder.code)) return nothingDone;
  const rule = ruleFor(rules, disorder.code);
  const lengths = lengthsOf(rule);
  const filled = { ...nothingDone, ...lengths };
  if (disorder.group !== "infectious") {
    const relieved = lame !== false;
    const sound = finding.claw === "inner" || finding.claw === "outer" ? otherClaw(finding.claw) : "";
    const hasBlock = rule?.blockCheckDays !== undefined || rule?.blockOffDays !== undefined;
    return {
      ...filled,
      trim: true,
      block: relieved && hasBlock ? sound : "",
      painRelief: relieved && rule?.painReliefDays !== undefined,
    };
  }
  const active = finding.stage === "" || stageMeaning(finding.stage) === "active";
  return {
    ...filled,
    topical: active && rule?.topicalTreatments !== undefined,
    bandage: active && rule?.bandageOffHours !== undefined,
  };
}

/** What is done: the rules, and what the user chose otherwise. */
export function careOf(state: Pick<RecordState, "entry" | "herd" | "rules">, finding: FindingEntry): Care {
  return { ...filledCare(finding, isLame(state), state.rules.rules), ...finding.care };
}

function lengthsOf(rule: RecheckRule | undefined) {
  const text = (days: number | undefined, standard?: number) => String(days ?? standard ?? "");
  return {
    blockOffDays: text(rule?.blockOffDays, Math.max(standardCare.blockOffDays, rule?.blockCheckDays ?? 0)),
    painReliefDays: text(rule?.painReliefDays, standardCare.painReliefDays),
    topicalTreatments: text(rule?.topicalTreatments),
    topicalRepeatDays: text(rule?.topicalRepeatDays),
    bandageOffHours: text(rule?.bandageOffHours, standardCare.bandageOffHours),
  };
}

/** What is done as the Treatment column takes it: "trim, block on inner claw 28 d, pain relief 3 d". */
export function treatmentText(care: Care): string {
  const length = (text: string, unit: string) => (text.trim() === "" ? "" : ` ${text.trim()} ${unit}`);
  const { topicalTreatments: times, topicalRepeatDays: every } = care;
  return [
    care.trim ? "trim" : "",
    care.block === "" ? "" : `block on ${care.block} claw${length(care.blockOffDays, "d")}`,
    care.painRelief ? `pain relief${length(care.painReliefDays, "d")}` : "",
    care.topical ? `topical${length(times, "times")}${every.trim() === "" ? "" : ` every ${every.trim()} d`}` : "",
    care.bandage ? `bandage${length(care.bandageOffHours, "h")}` : "",
    care.vetCalled ? "vet called" : "",
    care.other.trim(),
  ]
    .filter((part) => part !== "")
    .join(", ");
}

/** What is to be done afterwards, by the rule of the lesion and the lengths typed; the earliest first. */
export function aftercareOf(finding: FindingEntry, care: Care, rules: readonly RecheckRule[]): readonly AftercareJob[] {
  const disorder = disorderOf(finding.lesion);
  if (disorder === undefined) return [];
  const rule: RecheckRule = { ...ruleFor(rules, disorder.code), lesion: disorder.code, ...typedLengths(care) };
  const { painRelief, bandage, topical } = care;
  return aftercareJobs(rule, { block: care.block !== "", painRelief, bandage, topical });
}

function typedLengths(care: Care): Partial<RecheckRule> {
  const keys = ["painReliefDays", "topicalTreatments", "topicalRepeatDays", "bandageOffHours", "blockOffDays"] as const;
  return Object.fromEntries(
    keys.flatMap((key) => {
      const value = typedNumber(care[key]);
      return value === undefined || Number.isNaN(value) ? [] : [[key, value]];
    }),
  );
}

/** Whether a medicine is given, whose withdrawal period has to be asked for. */
export function namesDrug({ painRelief, topical, drug }: Care): boolean {
  return painRelief || topical || drug.trim() !== "";
}
