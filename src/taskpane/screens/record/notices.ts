import { disorderOf } from "../../../core/claws/disorder-key";
import { isForTheVeterinarian } from "../../../core/claws/trim-plan";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import { careOf, namesDrug } from "./care";
import { mobilityOf } from "./mobility";
import type { CowAtHand } from "./check-visit";
import { isBlankFinding, type RecordState } from "./state";
import { typedDay } from "../../typed-day";
import { counted } from "../../format";

/** Something to know or to take care of, for this cow now. */
export interface Notice {
  readonly kind: "caution" | "remark";
  readonly title: string;
  readonly texts: readonly string[];
}

/** From so many days before dry-off, or days in milk where none is planned, it is late. Common practice, no source. */
const LATE = { daysToDryOff: 60, daysInMilk: 200 } as const;
/** New cases in a year that make a repeat cow. Common practice, no source. */
const REPEAT_CASES = 2;
/** Scores in a year below which a share says little. Common practice, no source. */
const FEWEST_SCORES = 4;
/** Lame at more than half of the scores of a year goes with new bone in the claw: Newsome et al. 2016, J Dairy Sci 99:4512. */
const ALWAYS_LAME_SHARE = 0.5;

/** What her past says, before anything is typed. */
export function pastNotices({ facts }: CowAtHand): readonly Notice[] {
  const notices: Notice[] = [];
  const { cases, scored } = facts;
  if (cases.count >= REPEAT_CASES) {
    const foot = cases.worstFoot === "" ? "" : `, most on ${cases.worstFoot}`;
    notices.push({
      kind: "remark",
      title: "Repeat cow",
      texts: [`${counted(cases.count, "new case")} in the last 12 months${foot}.`],
    });
  }
  if (scored.all >= FEWEST_SCORES && scored.lame / scored.all > ALWAYS_LAME_SHARE)
    notices.push({
      kind: "remark",
      title: "Lame most of the time",
      texts: [
        `Lame at ${scored.lame} of ${scored.all} scores in the last 12 months. Ask the veterinarian what can still be expected.`,
      ],
    });
  return notices;
}

/** What the findings typed ask for. */
export function findingNotices(state: RecordState, at: CowAtHand): readonly Notice[] {
  const { entry } = state;
  const findings = entry.findings.filter((finding) => !isBlankFinding(finding));
  const codes = findings.flatMap(({ lesion }) => disorderOf(lesion)?.code ?? []);
  const date = typedDay(state.visit.date) ?? state.today;
  const notices: Notice[] = [];
  const call = [
    ...codes
      .filter(isForTheVeterinarian)
      .map((code) => `${disorderOf(code)!.name}: no knife and no block before that.`),
    ...(findings.some(({ severity }) => severity === "3") ? ["A severe lesion."] : []),
    ...(mobilityOf(state) === "severe" ? ["She is severely lame. She must not be transported."] : []),
  ];
  if (call.length > 0) notices.push({ kind: "caution", title: "Call the veterinarian today", texts: call });
  const cares = findings.map((finding) => careOf(state, finding));
  const care = [
    ...(cares.some(({ block, trim }) => block !== "" || trim)
      ? ["Stop when the sole yields or shows pink. Never cut into live tissue."]
      : []),
    ...(cares.some(({ block }) => block !== "") ? ["Block only a sound claw."] : []),
    ...(cares.some(namesDrug)
      ? ["Medicines as the veterinarian prescribed. Milk and meat are held back as the label says."]
      : []),
  ];
  if (care.length > 0) notices.push({ kind: "caution", title: "Take care", texts: care });
  if (codes.length > 0) notices.push(...lateLactation(at, date));
  return notices;
}

/** The question is for those who decide; nothing is advised. */
function lateLactation({ facts }: CowAtHand, date: DaySerial): readonly Notice[] {
  const { dryOffInDays, daysInMilk } = facts;
  const question = "A question for the herd manager and the veterinarian: dry her off earlier, or treat and milk on?";
  if (dryOffInDays !== null && dryOffInDays <= LATE.daysToDryOff)
    return [
      {
        kind: "remark",
        title: "Late in lactation",
        texts: [`${counted(dryOffInDays, "day")} to dry-off on ${isoDate(date + dryOffInDays)}.`, question],
      },
    ];
  if (dryOffInDays === null && daysInMilk !== null && daysInMilk >= LATE.daysInMilk)
    return [
      {
        kind: "remark",
        title: "Late in lactation",
        texts: [`${counted(daysInMilk, "day")} in milk, no dry-off day is written.`, question],
      },
    ];
  return [];
}
