import { codesInZone } from "../../../core/claws/claw-zones";
import { type Disorder, disorderOf, disorders } from "../../../core/claws/disorder-key";
import type { Cow } from "../../../herd/cow-list";
import { cowKey } from "../../../herd/cow-rows";
import { currentFinding, type RecordState } from "./state";
import { typedDay } from "../../typed-day";
import { typedNumber } from "./typed-text";

/** As many as fit under the field with the keyboard of a tablet open. */
export const MOST_COWS = 6;

/** The cows that what was typed may stand for; none once one is chosen. */
export function suggestedCows({ herd, entry, visit, today }: RecordState): readonly Cow[] {
  if (herd === undefined || entry.cow !== "") return [];
  return herd.cows.find(entry.cowText, typedDay(visit.date) ?? today, MOST_COWS);
}

/**
 * Place of the cow that Enter takes: the one reached with the arrow keys, else she whose number was typed in full;
 * -1 for none. A number is never completed by guess.
 */
export function cowToTake(state: RecordState): number {
  const cows = suggestedCows(state);
  if (state.highlighted >= 0) return Math.min(state.highlighted, cows.length - 1);
  return cows.length > 0 && cowKey(cows[0]!.name) === cowKey(state.entry.cowText) ? 0 : -1;
}

/** The disorders offered: those of the zone, and of them those that the typed text fits. */
export function offeredDisorders({ entry }: RecordState): readonly Disorder[] {
  const finding = currentFinding(entry);
  const zone = typedNumber(finding.zone);
  const inZone = zone === undefined || !Number.isInteger(zone) ? [] : codesInZone(zone);
  const ofZone = inZone.length > 0 ? inZone.map((code) => disorderOf(code)!) : disorders;
  const text = finding.lesion.trim().toLowerCase();
  if (text === "" || isChosen(finding.lesion)) return ofZone;
  const fits = ({ code, name }: Disorder) =>
    code.toLowerCase().startsWith(text) ||
    name
      .toLowerCase()
      .split(/[\s/,]+/)
      .some((word) => word.startsWith(text)) ||
    name.toLowerCase().startsWith(text);
  const near = ofZone.filter(fits);
  return near.length > 0 ? near : disorders.filter(fits);
}

/** Whether the text is the code of a disorder, as it stands after choosing. */
function isChosen(text: string): boolean {
  return disorders.some(({ code }) => code === text);
}

/** The disorder that Enter takes: the one reached, else the one named in full, else the only one left. */
export function disorderToTake(state: RecordState): Disorder | undefined {
  const offered = offeredDisorders(state);
  if (state.highlighted >= 0) return offered[Math.min(state.highlighted, offered.length - 1)];
  const named = disorderOf(currentFinding(state.entry).lesion);
  return named ?? (offered.length === 1 ? offered[0] : undefined);
}
