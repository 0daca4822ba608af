import { dermatitisStages, type StageMeaning } from "../reference/doepfer-1997";

export type { StageMeaning } from "../reference/doepfer-1997";

/** The stages as written: M0, M1, M2, M3, M4, M4.1. */
export const stageNames: readonly string[] = Object.keys(dermatitisStages);

/**
 * What a stage of digital dermatitis stands for; undefined for an unknown stage. "m2" and "2" are M2, "M 4.1" and
 * 4.1 are M4.1. Source: Döpfer et al. 1997, Berry et al. 2012.
 */
export function stageMeaning(stage: string): StageMeaning | undefined {
  const name = stageName(stage);
  return name === undefined ? undefined : dermatitisStages[name];
}

/** The stage as the papers write it, or undefined. */
export function stageName(stage: string): string | undefined {
  const name = `M${stage.replace(/\s+/g, "").replace(/^m/i, "").replace(",", ".")}`;
  return Object.hasOwn(dermatitisStages, name) ? name : undefined;
}
