import { type MobilityScale, mobilityScales, type MobilityState, mobilityState } from "../../../core/claws/mobility";
import type { RecordState } from "./state";
import { typedNumber } from "./typed-text";

/** The scale on which the workbook scores; until it is read, that of our own tables. */
export function scaleOf({ herd }: Pick<RecordState, "herd">): MobilityScale {
  return herd?.scale ?? "0-3";
}

/** What the score typed calls her; undefined where none was given. */
export function mobilityOf({ entry, herd }: Pick<RecordState, "entry" | "herd">): MobilityState | undefined {
  const score = typedNumber(entry.score);
  if (score === undefined || Number.isNaN(score)) return undefined;
  const scale = scaleOf({ herd });
  return mobilityState(score, scale, mobilityScales[scale].lameFrom);
}

/** Whether the score typed calls her lame; undefined where none was given. */
export function isLame(state: Pick<RecordState, "entry" | "herd">): boolean | undefined {
  const mobility = mobilityOf(state);
  return mobility === undefined ? undefined : mobility !== "sound";
}
