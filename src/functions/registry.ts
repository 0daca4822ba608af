// Written by `npm run generate` from the files of this folder. Do not edit.
import { cellScore } from "./cells/cell-score";
import { recheckBandageOff } from "./claws/recheck-bandage-off";
import { recheckBlockOff } from "./claws/recheck-block-off";
import { recheckDate } from "./claws/recheck-date";
import { recheckList } from "./claws/recheck-list";
import { recheckPainRelief } from "./claws/recheck-pain-relief";
import { recheckPlan } from "./claws/recheck-plan";
import { recheckStatus } from "./claws/recheck-status";
import { withdrawalClear } from "./claws/withdrawal-clear";
import type { FunctionSpec } from "./define";

const described: readonly FunctionSpec[] = [
  cellScore,
  recheckBandageOff,
  recheckBlockOff,
  recheckDate,
  recheckList,
  recheckPainRelief,
  recheckPlan,
  recheckStatus,
  withdrawalClear,
];

/** Every worksheet function. */
export const registry: readonly FunctionSpec[] = described;
