import type { Check } from "./checked-herd";
import { blankWithdrawals } from "./checks/blank-withdrawals";
import { cappedCounts } from "./checks/capped-counts";
import { datesOutOfTime } from "./checks/dates-out-of-time";
import { doubleRows } from "./checks/double-rows";
import { fallingLactations } from "./checks/falling-lactations";
import { findingsWithoutPlace } from "./checks/findings-without-place";
import { impossibleDates } from "./checks/impossible-dates";
import { mixedUnits } from "./checks/mixed-units";
import { offScaleScores } from "./checks/off-scale-scores";
import { rowsWithoutKey } from "./checks/rows-without-key";
import { textDates } from "./checks/text-dates";
import { textNumbers } from "./checks/text-numbers";
import { toeLengths } from "./checks/toe-lengths";
import { treatmentWithoutRecheck } from "./checks/treatment-without-recheck";
import { unknownCows } from "./checks/unknown-cows";
import { unknownLesions } from "./checks/unknown-lesions";
import { unreadableCells } from "./checks/unreadable-cells";
import { zeroCounts } from "./checks/zero-counts";

/** All checks in the order in which they run: those that explain a cell best come first. */
export const checks: readonly Check[] = [
  rowsWithoutKey,
  textDates,
  textNumbers,
  mixedUnits,
  cappedCounts,
  zeroCounts,
  datesOutOfTime,
  impossibleDates,
  unknownCows,
  doubleRows,
  unknownLesions,
  findingsWithoutPlace,
  toeLengths,
  offScaleScores,
  fallingLactations,
  treatmentWithoutRecheck,
  blankWithdrawals,
  unreadableCells,
];
