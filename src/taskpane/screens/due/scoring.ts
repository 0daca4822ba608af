import { lastHerdScoring } from "../../../core/claws/herd-scoring";
import { type MobilityScale, mobilityScales } from "../../../core/claws/mobility";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import type { InSteps } from "../../../core/shared/steps";
import { cowKey } from "../../../herd/cow-rows";
import { readHerdTableInSteps } from "../../../herd/read-rows";
import { scoresTableOn } from "../../../herd/scores-table";
import type { TableContent } from "../../../workbook/table-port";
import type { Cows } from "./cows";
import type { ReadFindings } from "./findings";
import type { DueLine } from "./line";

/** Scored every second week in the trials that treated early: Leach et al. 2012, Thomas et al. 2015. */
const SCORE_EVERY_DAYS = 14;

/** Cows that were lame when they were scored last and are not treated yet, and the next scoring itself. */
export function* scoringLines(
  scores: TableContent | undefined,
  scale: MobilityScale,
  findings: ReadFindings | undefined,
  cows: Cows,
  day: DaySerial,
  until: DaySerial,
): InSteps<readonly DueLine[]> {
  if (scores === undefined) return [];
  const { lameFrom, severeFrom } = mobilityScales[scale];
  const { rows } = yield* readHerdTableInSteps(scoresTableOn(scale), scores);
  const scored = rows.flatMap(({ date, cow, score }, index): Scored[] =>
    date === null || date > day || cow === null || score === null ? [] : [{ date, cow, score, index }],
  );
  yield;
  const herdScoredOn = lastHerdScoring(scored.map(({ date }) => date))?.date;
  if (herdScoredOn === undefined) return [];
  const treatedSince = lastTreated(findings);
  const lines = latestOfEach(scored.filter(({ date }) => date >= herdScoredOn)).flatMap(
    ({ date, cow, score, index }): DueLine[] => {
      if (score < lameFrom || treatedSince(cow, date) || cows.hasLeft(cow, day)) return [];
      const severe = score >= severeFrom;
      return [
        {
          key: `lame ${cow} ${date} ${index}`,
          work: "lame",
          what: severe ? "severely lame: treat today" : "lame: lift and treat",
          due: date,
          cow,
          place: cows.place(cow),
          remarks: [
            `scored ${score} on ${isoDate(date)}`,
            ...(severe ? ["if she bears no weight, call the veterinarian today"] : []),
          ],
        },
      ];
    },
  );
  const next = herdScoredOn + SCORE_EVERY_DAYS;
  if (next > until) return lines;
  const remarks = [`last scored ${isoDate(herdScoredOn)}, every ${SCORE_EVERY_DAYS} days`];
  return [
    ...lines,
    { key: `score ${next}`, work: "score", what: "score the herd walking", due: next, cow: "", place: "", remarks },
  ];
}

interface Scored {
  readonly date: DaySerial;
  readonly cow: string;
  readonly score: number;
  /** Row of the table. */
  readonly index: number;
}

/** The last score of each cow, in the order of the table. */
function latestOfEach(scored: readonly Scored[]): readonly Scored[] {
  const latest = new Map<string, Scored>();
  for (const row of scored) {
    const known = latest.get(cowKey(row.cow));
    if (known === undefined || row.date >= known.date) latest.set(cowKey(row.cow), row);
  }
  return [...latest.values()].sort((a, b) => a.index - b.index);
}

/** Whether a cow has an open finding, or her feet were lifted on the day that she was scored or later. */
function lastTreated(findings: ReadFindings | undefined): (cow: string, scoredOn: DaySerial) => boolean {
  const open = new Set<string>();
  for (const { cow } of findings?.open ?? []) if (cow !== null) open.add(cowKey(cow));
  return (cow, scoredOn) => {
    const lifted = findings?.lastLifted.get(cowKey(cow));
    return open.has(cowKey(cow)) || (lifted !== undefined && lifted >= scoredOn);
  };
}
