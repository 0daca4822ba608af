import { formatNumber } from "../../../format";
import type { Spilled } from "../summary";
import { numberOf } from "./change-words";
import { shareText } from "./money";

export interface LinkGroup {
  readonly high: number;
  readonly low: number;
  readonly cows: number;
  readonly share: number | undefined;
}

/** HERD.LINK.TABLE: lame and other cows by their counts. */
export interface Link {
  readonly lame: LinkGroup;
  readonly sound: LinkGroup;
  readonly ratio: { readonly value: number; readonly low: number; readonly high: number } | undefined;
  readonly notes: readonly string[];
}

export function linkOf([, lame = [], sound = [], all = [], ratio = []]: Spilled): Link {
  const group = (row: Spilled[number]): LinkGroup => ({
    high: Number(row[1]),
    low: Number(row[2]),
    cows: Number(row[3]),
    share: numberOf(row[4]),
  });
  const [value, low, high] = [numberOf(ratio[4]), numberOf(ratio[5]), numberOf(ratio[6])];
  return {
    lame: group(lame),
    sound: group(sound),
    ratio: value === undefined || low === undefined || high === undefined ? undefined : { value, low, high },
    notes: [all[7], ratio[7]].map((note) => String(note ?? "")).filter((note) => note !== ""),
  };
}

/** Fewer cows than this in one of the four places say little. As HERD.LINK.TABLE has it; common practice. */
const FEW_IN_A_PLACE = 5;

/** The two-by-two in plain sentences. */
export function linkWords({ lame, sound, ratio, notes }: Link): string[] {
  if (lame.cows === 0) return ["No lame cow has a count at this test: there is nothing to set side by side."];
  if (sound.cows === 0) return ["Every cow with a score and a count was lame: there is nothing to set side by side."];
  const words = [
    `Of ${lame.cows} lame cows ${shareText(lame.share!)} have a high count, of ${sound.cows} others ${shareText(sound.share!)}.`,
  ];
  if (ratio !== undefined) words.push(ratioWords(ratio));
  else if (lame.high > 0 && sound.high > 0) words.push("No ratio: every cow has a high count.");
  else words.push("No ratio: one of the groups has no cow with a high count.");
  if ([lame.high, lame.low, sound.high, sound.low].some((cows) => cows < FEW_IN_A_PLACE)) {
    words.push("Few cows in one of the four places: one cow more or less changes the picture.");
  }
  const leftOut = notes.find((note) => note.includes("left out"));
  if (leftOut !== undefined) words.push(leftOutWords(leftOut));
  words.push(
    "The two go together or they do not; neither is shown to be the cause. Age and stage of lactation drive both.",
  );
  return words;
}

function ratioWords({ value, low, high }: NonNullable<Link["ratio"]>): string {
  const limits = `${formatNumber(low, "0.0")} to ${formatNumber(high, "0.0")}`;
  const times = `${formatNumber(value, "0.0")} times as often (95 % limits ${limits})`;
  if (low > 1) return `Lame cows have a high count ${times}: more than chance.`;
  if (high < 1) return `Lame cows have a high count ${times}: less often than the others, more than chance.`;
  return `Lame cows have a high count ${times}: chance may explain the difference.`;
}

/** "3 rows left out: one of the two unknown" as cows. */
function leftOutWords(note: string): string {
  const rows = Number(/(\d+) rows? left out/.exec(note)?.[1] ?? 0);
  return `${rows} ${rows === 1 ? "cow" : "cows"} left out: without a score or without a count.`;
}
