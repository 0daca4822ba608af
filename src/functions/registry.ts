// Written by `npm run generate` from the files of this folder. Do not edit.
import { cellCount } from "./cells/cell-count";
import { cellHerdCost } from "./cells/cell-herd-cost";
import { cellHerdLoss } from "./cells/cell-herd-loss";
import { cellLoss } from "./cells/cell-loss";
import { cellMean } from "./cells/cell-mean";
import { cellScore } from "./cells/cell-score";
import { cellSummary } from "./cells/cell-summary";
import { tankEstimate } from "./cells/tank-estimate";
import { cowDays } from "./claws/cow-days";
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
import { withdrawalClear } from "./claws/withdrawal-clear";
import type { FunctionSpec } from "./define";

const described: readonly FunctionSpec[] = [
  cellCount,
  cellHerdCost,
  cellHerdLoss,
  cellLoss,
  cellMean,
  cellScore,
  cellSummary,
  tankEstimate,
  cowDays,
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
  withdrawalClear,
];

/** Every worksheet function. */
export const registry: readonly FunctionSpec[] = described;
