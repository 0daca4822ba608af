import type { DueState } from "./state";

/** What the workbook is being asked for; undefined where nothing is waited for. */
export function doingOf({ pending, takingBack, writing }: DueState, isReading: boolean): string | undefined {
  if (pending?.brokenOff === false) return "Saving ...";
  if (takingBack !== undefined) return "Taking it back ...";
  if (writing !== undefined) return "Writing the list into the workbook ...";
  return isReading ? "Reading the workbook ..." : undefined;
}
