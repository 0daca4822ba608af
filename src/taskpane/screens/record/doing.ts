import type { RecordState } from "./state";

/** What the workbook is being asked for; undefined where nothing is waited for. */
export function doingOf({ phase, takingBack }: RecordState, isReading: boolean): string | undefined {
  if (phase.kind === "saving") return "Saving ...";
  if (takingBack !== "") return "Taking it back ...";
  return isReading ? "Reading the workbook ..." : undefined;
}
