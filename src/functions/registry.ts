// Written by `npm run generate` from the files of this folder. Do not edit.
import { aboutLimits } from "./about/about-limits";
import { aboutSource } from "./about/about-source";
import { bathChange } from "./barn/bath-change";
import { bathCopper } from "./barn/bath-copper";
import { bathDays } from "./barn/bath-days";
import { bathProduct } from "./barn/bath-product";
import { bathVolume } from "./barn/bath-volume";
import { bunkSpace } from "./barn/bunk-space";
import { lyingBudget } from "./barn/lying-budget";
import { stallComfort } from "./barn/stall-comfort";
import { stallPerching } from "./barn/stall-perching";
import { stallStanding } from "./barn/stall-standing";
import { stallStocking } from "./barn/stall-stocking";
import { stallUse } from "./barn/stall-use";
import { cellChange } from "./cells/cell-change";
import { cellCount } from "./cells/cell-count";
import { cellDryPeriod } from "./cells/cell-dry-period";
import { cellHerdCost } from "./cells/cell-herd-cost";
import { cellHerdLoss } from "./cells/cell-herd-loss";
import { cellLactationLoss } from "./cells/cell-lactation-loss";
import { cellLoss } from "./cells/cell-loss";
import { cellMean } from "./cells/cell-mean";
import { cellScore } from "./cells/cell-score";
import { cellStatus } from "./cells/cell-status";
import { cellSummary } from "./cells/cell-summary";
import { cellTop } from "./cells/cell-top";
import { linkTable } from "./cells/link-table";
import { tankEstimate } from "./cells/tank-estimate";
import { tankRolling } from "./cells/tank-rolling";
import { tankShares } from "./cells/tank-shares";
import { tankWithout } from "./cells/tank-without";
import { causeReview } from "./claws/cause-review";
import { clawAngle } from "./claws/claw-angle";
import { clawBalance } from "./claws/claw-balance";
import { clawGrowOut } from "./claws/claw-grow-out";
import { clawReference } from "./claws/claw-reference";
import { cowDays } from "./claws/cow-days";
import { cowRepeats } from "./claws/cow-repeats";
import { lameCases } from "./claws/lame-cases";
import { lameSample } from "./claws/lame-sample";
import { lameScoring } from "./claws/lame-scoring";
import { lameShare } from "./claws/lame-share";
import { lameState } from "./claws/lame-state";
import { lameSummary } from "./claws/lame-summary";
import { lameWait } from "./claws/lame-wait";
import { lameWithin } from "./claws/lame-within";
import { lesionBygroup } from "./claws/lesion-bygroup";
import { lesionGroup } from "./claws/lesion-group";
import { lesionMonths } from "./claws/lesion-months";
import { lesionName } from "./claws/lesion-name";
import { lesionNewcase } from "./claws/lesion-newcase";
import { lesionParent } from "./claws/lesion-parent";
import { lesionRate } from "./claws/lesion-rate";
import { lesionShare } from "./claws/lesion-share";
import { lesionShares } from "./claws/lesion-shares";
import { lesionStage } from "./claws/lesion-stage";
import { lesionTable } from "./claws/lesion-table";
import { rateHigh } from "./claws/rate-high";
import { rateLow } from "./claws/rate-low";
import { recheckBandageOff } from "./claws/recheck-bandage-off";
import { recheckBlockOff } from "./claws/recheck-block-off";
import { recheckDate } from "./claws/recheck-date";
import { recheckList } from "./claws/recheck-list";
import { recheckPainRelief } from "./claws/recheck-pain-relief";
import { recheckPlan } from "./claws/recheck-plan";
import { recheckStatus } from "./claws/recheck-status";
import { shareHigh } from "./claws/share-high";
import { shareLow } from "./claws/share-low";
import { toeCheck } from "./claws/toe-check";
import { toeCut } from "./claws/toe-cut";
import { toeMinimum } from "./claws/toe-minimum";
import { toeSole } from "./claws/toe-sole";
import { trimNext } from "./claws/trim-next";
import { trimPlan } from "./claws/trim-plan";
import { withdrawalClear } from "./claws/withdrawal-clear";
import { costCase } from "./money/cost-case";
import { costCases } from "./money/cost-cases";
import { costDelay } from "./money/cost-delay";
import { costPayback } from "./money/cost-payback";
import { costTable } from "./money/cost-table";
import { rationBiotin } from "./ration/ration-biotin";
import { rationCheck } from "./ration/ration-check";
import { rationNeed } from "./ration/ration-need";
import { rationSupply } from "./ration/ration-supply";
import type { FunctionSpec } from "./define";

const described: readonly FunctionSpec[] = [
  bathChange,
  bathCopper,
  bathDays,
  bathProduct,
  bathVolume,
  bunkSpace,
  lyingBudget,
  stallComfort,
  stallPerching,
  stallStanding,
  stallStocking,
  stallUse,
  cellChange,
  cellCount,
  cellDryPeriod,
  cellHerdCost,
  cellHerdLoss,
  cellLactationLoss,
  cellLoss,
  cellMean,
  cellScore,
  cellStatus,
  cellSummary,
  cellTop,
  linkTable,
  tankEstimate,
  tankRolling,
  tankShares,
  tankWithout,
  causeReview,
  clawAngle,
  clawBalance,
  clawGrowOut,
  clawReference,
  cowDays,
  cowRepeats,
  lameCases,
  lameSample,
  lameScoring,
  lameShare,
  lameState,
  lameSummary,
  lameWait,
  lameWithin,
  lesionBygroup,
  lesionGroup,
  lesionMonths,
  lesionName,
  lesionNewcase,
  lesionParent,
  lesionRate,
  lesionShare,
  lesionShares,
  lesionStage,
  lesionTable,
  rateHigh,
  rateLow,
  recheckBandageOff,
  recheckBlockOff,
  recheckDate,
  recheckList,
  recheckPainRelief,
  recheckPlan,
  recheckStatus,
  shareHigh,
  shareLow,
  toeCheck,
  toeCut,
  toeMinimum,
  toeSole,
  trimNext,
  trimPlan,
  withdrawalClear,
  costCase,
  costCases,
  costDelay,
  costPayback,
  costTable,
  rationBiotin,
  rationCheck,
  rationNeed,
  rationSupply,
];

/** Every worksheet function. */
export const registry: readonly FunctionSpec[] = [...described, aboutLimits(described), aboutSource(described)];
