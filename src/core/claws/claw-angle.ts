import { commonPractice, type Source } from "../shared/source";

/** Degrees between the front wall and the ground. */
const ANGLE = { least: 45, aim: 50, most: 52 } as const;

export const anglePractice: Source = commonPractice(
  `the front wall of a hind claw stands at ${ANGLE.least} to ${ANGLE.aim} degrees, up to ${ANGLE.most}`,
);

/** A claw's angle in words. Common practice, no source. */
export function clawAngle(degrees: number): string {
  if (degrees < ANGLE.least) return `shallow: raise towards ${ANGLE.aim}`;
  return degrees > ANGLE.most ? "steep" : `within ${ANGLE.least}-${ANGLE.most}`;
}
