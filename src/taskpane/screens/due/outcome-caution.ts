import type { Outcome } from "../../../core/claws/next-look";
import { treatmentOf } from "../../../core/claws/treatment-words";
import type { DaySerial } from "../../../core/shared/days";
import { VETERINARIAN } from "../../../functions/cautions";
import type { FindingLine } from "./line";
import type { Listing } from "./listing";

/** What must be said with an outcome: in a sentence, and in full. */
export interface Caution {
  readonly short: string;
  readonly full: string;
}

/** A call for the veterinarian where it matters, and a block that is no longer listed. */
export function cautionOf(
  line: FindingLine,
  outcome: Exclude<Outcome, "gone">,
  seenOn: DaySerial,
  listing: Listing,
): Caution | undefined {
  const call = callFor(outcome, line.finding.lesion);
  const block = isBlockDone(line, outcome, seenOn, listing)
    ? "The block counts as taken off: if it is still on, take it off now."
    : undefined;
  const short = [call, block].filter((text) => text !== undefined).join(" ");
  if (short === "") return undefined;
  return { short, full: call === undefined ? short : `${short} ${VETERINARIAN}` };
}

/** Phlegmon that has not answered goes to the veterinarian (common practice); so does whatever gets worse. */
function callFor(outcome: Exclude<Outcome, "gone">, lesion: string): string | undefined {
  if (outcome === "worse") return "Worse after treatment: call the veterinarian.";
  if (outcome === "healed") return undefined;
  if (outcome === "same" && lesion === "IP")
    return "Interdigital phlegmon that has not answered: call the veterinarian.";
  return lesion === "TN" ? "Toe necrosis is for the veterinarian." : undefined;
}

/** A closed finding asks for no block any more, and a look does what was due by then. */
function isBlockDone(
  { finding }: FindingLine,
  outcome: Exclude<Outcome, "gone">,
  seenOn: DaySerial,
  { lines }: Listing,
): boolean {
  if (outcome === "healed") return treatmentOf(finding.treatment).block;
  return lines.some(
    (line) => line.finding?.key === finding.key && line.work === "block" && line.ends && line.due <= seenOn,
  );
}
