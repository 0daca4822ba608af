// Written by `npm run generate` from the files of this folder. Do not edit.
import { aboutLimits } from "./about/about-limits";
import { aboutSource } from "./about/about-source";
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
import { clawAngle } from "./claws/claw-angle";
import { clawBalance } from "./claws/claw-balance";
import { clawGrowOut } from "./claws/claw-grow-out";
import { clawReference } from "./claws/claw-reference";
import { cowDays } from "./claws/cow-days";
import { lameShare } from "./claws/lame-share";
import { lameState } from "./claws/lame-state";
import { lesionGroup } from "./claws/lesion-group";
import { lesionName } from "./claws/lesion-name";
import { lesionNewcase } from "./claws/lesion-newcase";
import { lesionParent } from "./claws/lesion-parent";
import { lesionRate } from "./claws/lesion-rate";
import { lesionShare } from "./claws/lesion-share";
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
import type { FunctionSpec } from "./define";

const described: readonly FunctionSpec[] = [
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
  clawAngle,
  clawBalance,
  clawGrowOut,
  clawReference,
  cowDays,
  lameShare,
  lameState,
  lesionGroup,
  lesionName,
  lesionNewcase,
  lesionParent,
  lesionRate,
  lesionShare,
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
];

/** Every worksheet function. */
export const registry: readonly FunctionSpec[] = [...described, aboutLimits(described), aboutSource(described)];
