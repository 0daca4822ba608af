import { type MobilityScale, mobilityScales } from "../../../core/claws/mobility";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import { cowKey } from "../../../herd/cow-rows";
import { readHerdTable } from "../../../herd/read-rows";
import { scoresTableOn } from "../../../herd/scores-table";
import type { TableContent } from "../../../workbook/table-port";
import type { Cows } from "./cows";
import type { ReadFindings } from "./findings";
import type { DueLine } from "./line";

/** Scored every second week in the trials that treated early: Leach et al. 2012, Thomas et al. 2015. */
const SCORE_EVERY_DAYS = 14;

/** Cows that were lame at the last scoring and are not treated yet, and the next scoring itself. */
export function scoringLines(
  scores: TableContent | undefined,
  scale: MobilityScale,
  findings: ReadFindings | undefined,
  cows: Cows,
  day: DaySerial,
  until: DaySerial,
): readonly DueLine[] {
  if (scores === undefined) return [];
  const { lameFrom, severeFrom } = mobilityScales[scale];
  const { rows } = readHerdTable(scoresTableOn(scale), scores);
  const last = rows.reduce((latest, { date }) => (date !== null && date <= day && date > latest ? date : latest), 0);
  if (last === 0) return [];
  const treated = treatedSince(findings, last);
  const lines: DueLine[] = [];
  rows.forEach(({ date, cow, score }, index) => {
    if (date !== last || cow === null || score === null || score < lameFrom) return;
    if (treated.has(cowKey(cow)) || cows.hasLeft(cow, day)) return;
    const severe = score >= severeFrom;
    lines.push({
      key: `lame ${cow} ${last} ${index}`,
      work: "lame",
      what: severe ? "severely lame: treat today" : "lame: lift and treat",
      due: last,
      cow,
      place: cows.place(cow),
      remarks: [
        `scored ${score} on ${isoDate(last)}`,
        ...(severe ? ["if she bears no weight, call the veterinarian today"] : []),
      ],
    });
  });
  const next = last + SCORE_EVERY_DAYS;
  if (next > until) return lines;
  const remarks = [`last scored ${isoDate(last)}, every ${SCORE_EVERY_DAYS} days`];
  return [
    ...lines,
    { key: `score ${next}`, work: "score", what: "score the herd walking", due: next, cow: "", place: "", remarks },
  ];
}

/** Cows with an open finding, and those whose feet were lifted on the day of the scoring or later. */
function treatedSince(findings: ReadFindings | undefined, scoredOn: DaySerial): ReadonlySet<string> {
  const treated = new Set<string>();
  for (const { cow } of findings?.open ?? []) if (cow !== null) treated.add(cowKey(cow));
  for (const [key, date] of findings?.lastLifted ?? []) if (date >= scoredOn) treated.add(key);
  return treated;
}
