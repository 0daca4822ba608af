import { HOLLOW_BEGINS_MM, SOLE_AT_TOE_MM } from "../reference/toussaint-raven-1985";
import type { DisorderGroup } from "./disorder-key";
import { type Claw, type Limb, otherClaw, referenceClaw } from "./reference-claw";
import { type ToeAdvice, toeAdvice, toeAdviceText, toeCutMm } from "./toe-length";

export interface TrimPlanStep {
  readonly step: string;
  readonly advice: string;
  readonly caution: string;
}

export interface FootToTrim {
  readonly limb: Limb;
  readonly toeMm: Readonly<Record<Claw, number>>;
  /** Length under which the reference claw is not cut, from the landmark of the toe lengths. */
  readonly minimumMm: number;
  readonly lame: boolean;
  /** Absent where nothing was found. */
  readonly lesion?: { readonly code: string; readonly group: DisorderGroup } | undefined;
}

/** Disorders with bone, joint or deep tissue at stake: the veterinarian sees them before a knife does. */
const FOR_THE_VETERINARIAN: ReadonlySet<string> = new Set(["TN", "IP", "SW"]);

/** Whether the veterinarian sees a disorder before anything is cut or blocked. */
export function isForTheVeterinarian(code: string): boolean {
  return FOR_THE_VETERINARIAN.has(code);
}

const CALL = "for the veterinarian today";
const STOP = "stop when the sole yields or shows pink";

/**
 * The five steps of functional trimming for one foot. Nothing is cut below the minimum; a cow that walks sound and
 * shows no lesion is not searched. Source: Toussaint Raven 1985.
 */
export function trimPlan(foot: FootToTrim): readonly TrimPlanStep[] {
  const reference = referenceClaw(foot.limb);
  const other = otherClaw(reference);
  const first = toeAdvice(foot.toeMm[reference], foot.minimumMm);
  const matchTo = Math.max(foot.toeMm[reference] - toeCutMm(first), foot.minimumMm);
  const second = toeAdvice(foot.toeMm[other], matchTo);
  return [
    {
      step: "1 length",
      advice: `${reference} claw: ${toeAdviceText(first)}`,
      caution:
        first.kind === "short"
          ? "leave its sole too; a short claw has a thin sole"
          : `keep ${SOLE_AT_TOE_MM.kept} mm of sole at the toe, never under ${SOLE_AT_TOE_MM.least}; spare the heel; ${STOP}`,
    },
    {
      step: "2 match",
      advice: matchText(second, other, reference),
      caution: `level both soles only as far as the sole of the ${other} claw allows; ${STOP}`,
    },
    modelStep(other, first.kind === "short" || second.kind === "short"),
    relieveStep(foot),
    looseHornStep(foot),
  ];
}

function matchText(advice: ToeAdvice, other: Claw, reference: Claw): string {
  if (advice.kind === "short") return `${other} claw: shorter than it should be: do not cut`;
  return `${other} claw: ${toeAdviceText(advice)}, level with the ${reference} claw`;
}

function modelStep(other: Claw, short: boolean): TrimPlanStep {
  const step = "3 model";
  if (short) return { step, advice: "do not hollow out the sole", caution: "a short claw has a thin sole" };
  const { from, to } = HOLLOW_BEGINS_MM;
  return {
    step,
    advice: `hollow out the inside of the sole, most in the ${other} claw, from ${from}-${to} mm behind the toe`,
    caution: "leave the toe and the wall bearing weight",
  };
}

function relieveStep({ limb, lame, lesion }: FootToTrim): TrimPlanStep {
  const step = "4 relieve";
  if (lesion === undefined) {
    if (!lame) return { step, advice: "nothing: walks sound and nothing seen", caution: "do not search" };
    const also = limb === "hind" ? "lift the other hind foot too; " : "";
    return {
      step,
      advice: "find the cause: press both claws, look between them",
      caution: `${also}do not dig; no cause found: veterinarian`,
    };
  }
  if (isForTheVeterinarian(lesion.code)) return { step, advice: CALL, caution: "no block and no knife before that" };
  if (lesion.group === "infectious")
    return {
      step,
      advice: "skin, not horn: treat as prescribed",
      caution: "no knife in diseased skin; withdrawal as on the label",
    };
  if (lesion.group !== "horn")
    return { step, advice: "relieve only what hurts", caution: "shape is mended over several trims" };
  return lame
    ? {
        step,
        advice: "lower the painful claw towards the heel; block the sound claw",
        caution: "block only a sound claw and set the day it comes off; lift the other foot of the pair too",
      }
    : { step, advice: "lower the affected claw towards the heel, if its sole allows", caution: STOP };
}

function looseHornStep({ lame, lesion }: FootToTrim): TrimPlanStep {
  const step = "5 loose horn";
  if (lesion === undefined)
    return lame
      ? { step, advice: "only loose horn and hard ridges", caution: "leave sound horn" }
      : { step, advice: "nothing to remove", caution: "leave sound horn" };
  if (isForTheVeterinarian(lesion.code)) return { step, advice: CALL, caution: "leave it to the veterinarian" };
  return {
    step,
    advice:
      lesion.group === "infectious" ? "loose heel horn and hard ridges only" : "loose and under-run horn, thin edges",
    caution: "never into live tissue; bleeding means stop",
  };
}
