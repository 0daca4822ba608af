import { disorderOf } from "../../../core/claws/disorder-key";
import { otherClaw, referenceClaw } from "../../../core/claws/reference-claw";
import { toeAdvice, toeAdviceText, toeMinimumMm } from "../../../core/claws/toe-length";
import { trimPlan, type TrimPlanStep } from "../../../core/claws/trim-plan";
import { isLame } from "./mobility";
import { checkToes } from "./check-finding";
import type { CowAtHand } from "./check-visit";
import { FOOT_NAMES, limbOf } from "./feet";
import { currentFinding, type RecordState } from "./state";
import { typedNumber } from "./typed-text";

/** What the five-step method says of the foot at hand. */
export interface TrimAdvice {
  /** The one line to trim by: "inner claw: shorten 4 mm". */
  readonly headline: string;
  readonly reason: string;
  readonly steps: readonly TrimPlanStep[];
}

/**
 * Advice for the foot at hand, live: of the claw that sets the length from its toe alone, of the whole foot once both
 * toes are measured. What is said of a sound or a lame cow waits for her score or a lesion. Undefined where no toe
 * length of the foot can be used.
 */
export function adviceOf(state: RecordState, at: CowAtHand | undefined): TrimAdvice | undefined {
  const { entry, visit } = state;
  const finding = currentFinding(entry);
  const { foot } = finding;
  if (foot === "" || visit.landmark === "" || checkToes(state, foot).length > 0) return undefined;
  const limb = limbOf(foot);
  const reference = referenceClaw(limb);
  const toes = entry.toes[foot];
  const length = typedNumber(toes?.[reference] ?? "");
  if (length === undefined) return undefined;
  const lactation = at?.facts.lactation ?? undefined;
  const minimumMm = toeMinimumMm(visit.landmark, lactation);
  const otherMm = typedNumber(toes?.[otherClaw(reference)] ?? "");
  const disorder = disorderOf(finding.lesion);
  const plan = trimPlan({
    limb,
    toeMm: { inner: 0, outer: 0, [reference]: length, [otherClaw(reference)]: otherMm ?? length },
    minimumMm,
    lame: isLame(state) === true,
    lesion: disorder,
  });
  return {
    headline: `${reference} claw: ${toeAdviceText(toeAdvice(length, minimumMm))}`,
    reason: `${FOOT_NAMES[foot]}: the ${reference} claw sets the length; not under ${minimumMm} mm from the ${visit.landmark}${lactation === undefined ? ", as for a grown cow" : ""}`,
    steps: plan.filter(({ step }) => {
      if (step === "2 match" || step === "3 model") return otherMm !== undefined;
      return step === "1 length" || disorder !== undefined || isLame(state) !== undefined;
    }),
  };
}
