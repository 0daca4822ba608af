import { countText } from "./money";

/** What the tank and the averages of one test are, all in the unit of the counts. */
export interface TankFigures {
  readonly tank: number;
  /** Plain mean of the cows. */
  readonly mean: number;
  /** Geometric mean: the usual cow. */
  readonly usual: number;
  readonly unit: string;
}

/** Two figures closer than this, as part of the smaller, are called about the same: a test is no more exact. */
const ABOUT_SAME = 0.05;

/** Why the tank and the cows' averages differ, in plain sentences. */
export function tankWords({ tank, mean, usual, unit }: TankFigures): string[] {
  return [
    `The tank would hold ${countText(tank, unit)}, though the usual cow has ${countText(usual, unit)}: the tank mixes cells, not cows, so a few high cows fill it.`,
    milkWeight(tank, mean, unit),
  ];
}

function milkWeight(tank: number, mean: number, unit: string): string {
  const text = `the plain mean of the cows is ${countText(mean, unit)}`;
  if (Math.abs(tank - mean) <= ABOUT_SAME * Math.min(tank, mean))
    return `Weighing by milk changes little: ${text}, about the tank's.`;
  return tank < mean
    ? `High cows give less milk than the others, so they weigh less: ${text}.`
    : `High cows give more milk than the others, so they weigh more: ${text}.`;
}

/** What the estimate cannot know of the tank itself. */
export const TANK_DIFFERS =
  "The buyer's figure differs: milk kept out of the tank, cows not tested, another day, several milkings, counts at the cap.";
