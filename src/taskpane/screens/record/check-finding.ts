import { isUsualZone, usualZones, ZONES_BETWEEN_CLAWS } from "../../../core/claws/claw-zones";
import { type Disorder, disorderOf, nearestCodes } from "../../../core/claws/disorder-key";
import { STAGES, TOE_MM, ZONES } from "../../../workbook/tables";
import { careOf } from "./care";
import { type CowAtHand, repeatedToday } from "./check-visit";
import { ask, type Problem, stop } from "./problems";
import type { Care, CareField, Foot } from "./fields";
import type { FindingEntry, RecordState } from "./state";
import { typedNumber } from "./typed-text";

/** What is wrong with one finding. */
export function checkFinding(state: RecordState, at: CowAtHand | undefined, place: number): readonly Problem[] {
  const finding = state.entry.findings[place]!;
  const disorder = disorderOf(finding.lesion);
  const problems = [
    ...(finding.foot === "" ? [stop("foot", "Choose the foot.")] : []),
    ...checkClaw(finding),
    ...checkZone(finding),
    ...checkLesion(finding, disorder),
    ...checkStage(finding, disorder),
    ...checkSeverity(finding),
    ...checkCare(careOf(state, finding), finding),
  ];
  const repeated = repeatedToday(state, at, place);
  if (repeated !== undefined) {
    const name = [finding.foot, finding.claw, disorder?.code].join(" ");
    problems.push(ask("lesion", `again:${state.entry.cow}:${name}:${place}`, `${name} ${repeated}. Enter it again?`));
  }
  return problems.map((problem) => ({ ...problem, finding: place }));
}

function checkClaw({ claw, zone }: FindingEntry): Problem[] {
  const number = typedNumber(zone);
  const between = number !== undefined && ZONES_BETWEEN_CLAWS.includes(number);
  if (claw === "" && !between) return [stop("claw", "Choose the claw, or between the claws.")];
  return [];
}

function checkZone({ zone, claw }: FindingEntry): Problem[] {
  const number = typedNumber(zone);
  if (number === undefined) return [];
  if (!Number.isInteger(number) || number < ZONES[0] || number > ZONES[1])
    return [stop("zone", `Zone must be a whole number from ${ZONES[0]} to ${ZONES[1]}; got ${zone}.`)];
  const between = ZONES_BETWEEN_CLAWS.includes(number);
  if (claw === "between" && !between && number !== SKIN_ABOVE_HORN)
    return [stop("zone", `Zone ${number} lies on a claw: choose the inner or the outer claw, or zone 0 or 10.`)];
  return [];
}

/** The skin above the horn goes round the foot. */
const SKIN_ABOVE_HORN = 9;

function checkLesion({ lesion, zone }: FindingEntry, disorder: Disorder | undefined): Problem[] {
  if (lesion.trim() === "") return [stop("lesion", "Choose the disorder.")];
  if (disorder === undefined) {
    const near = nearestCodes(lesion);
    const hint = near.length === 0 ? "" : ` Near: ${near.join(", ")}.`;
    return [stop("lesion", `"${lesion.trim()}" is not in the claw disorder key.${hint}`)];
  }
  const number = typedNumber(zone);
  if (number === undefined || isUsualZone(disorder.code, number)) return [];
  const usual = usualZones(disorder.code)!.join(", ");
  return [
    ask(
      "lesion",
      `zone:${disorder.code}:${number}`,
      `${disorder.name} is found in zone ${usual}, not in zone ${number}. Are both right?`,
    ),
  ];
}

function checkStage({ stage }: FindingEntry, disorder: Disorder | undefined): Problem[] {
  if (stage === "" || disorder === undefined) return [];
  if (disorder.code !== "DD")
    return [stop("stage", `A stage goes with digital dermatitis only, not with ${disorder.code}.`)];
  return STAGES.some((known) => known === stage) ? [] : [stop("stage", `Stage must be one of ${STAGES.join(", ")}.`)];
}

function checkSeverity({ severity }: FindingEntry): Problem[] {
  return severity === "" || /^[1-3]$/.test(severity)
    ? []
    : [stop("severity", `Severity must be 1, 2 or 3; got ${severity}.`)];
}

/** The limits of the rules table, which these lengths follow. */
const CARE_LIMITS: readonly (readonly [keyof Care, string, number, number, string])[] = [
  ["blockOffDays", "Block off", 1, 42, "days"],
  ["painReliefDays", "Pain relief", 1, 14, "days"],
  ["topicalTreatments", "Topical treatments", 1, 10, "in all"],
  ["topicalRepeatDays", "Topical repeat", 1, 365, "days"],
  ["bandageOffHours", "Bandage off", 1, 240, "hours"],
  ["milkHours", "Milk withdrawal", 0, 8760, "hours"],
  ["meatDays", "Meat withdrawal", 0, 365, "days"],
];

function checkCare(care: Care, { claw }: FindingEntry): Problem[] {
  const problems = CARE_LIMITS.flatMap(([key, name, min, max, unit]): Problem[] => {
    const text = care[key] as string;
    const value = typedNumber(text);
    if (value === undefined || (Number.isInteger(value) && value >= min && value <= max)) return [];
    return [
      stop(
        `care.${key}` satisfies CareField,
        `${name} must be a whole number from ${min} to ${max} ${unit}; got ${text}.`,
      ),
    ];
  });
  if (care.block !== "" && care.block === claw)
    problems.push(
      ask(
        "care.block",
        `block:${claw}`,
        `The block is on the ${claw} claw, which has the lesion. A block goes on the sound claw. Is it right?`,
      ),
    );
  return problems;
}

const MM_PER_CM = 10;

/** What is wrong with the toe lengths of a foot. */
export function checkToes({ entry, visit }: RecordState, foot: Foot | ""): readonly Problem[] {
  if (foot === "") return [];
  const { inner = "", outer = "" } = entry.toes[foot] ?? {};
  const problems: Problem[] = [
    ...checkToe("toeInner", `${foot} inner toe`, inner),
    ...checkToe("toeOuter", `${foot} outer toe`, outer),
  ].map((problem) => ({ ...problem, foot }));
  if (visit.landmark === "" && (inner !== "" || outer !== ""))
    problems.push(stop("landmark", "Choose where toe lengths are measured from: at the hard horn or at the skin."));
  return problems;
}

function checkToe(field: "toeInner" | "toeOuter", name: string, text: string): Problem[] {
  const value = typedNumber(text);
  const [min, max] = TOE_MM;
  if (value === undefined || (value >= min && value <= max)) return [];
  const inMm = value * MM_PER_CM;
  if (inMm >= min && inMm <= max)
    return [stop(field, `${name} is in mm: ${text} looks like cm. Is it ${Math.round(inMm)} mm?`)];
  return [stop(field, `${name} must be from ${min} to ${max} mm; got ${text}.`)];
}
