import { disorders } from "./disorder-key";
import { commonPractice, type Source } from "../shared/source";

export const zoneSource: Source = {
  name: "Numbered foot map",
  citation:
    "Greenough PR, Vermunt JJ. 1991. Evaluation of subclinical laminitis in a dairy herd. Vet Rec 128:11-17, zones of the sole; Shearer JK, Anderson D, Ayars W, et al. 2004. A record-keeping system for capture of lameness and foot-care information in cattle. Bovine Practitioner 38:24-32, zones 0 to 12.",
  standing: "memory",
};
export const usualZonesPractice: Source = commonPractice(
  "ulcers are named by their place: 1 toe, 4 sole, 6 bulb; the white line is zones 1 to 3; the skin is 0, 9 and 10",
);

/** A zone of the claw map. Zones 7, 8, 9, 11 and 12 are placed from memory and are only labels. */
export interface ClawZone {
  readonly zone: number;
  readonly place: string;
}

/** Source: `zoneSource`. */
export const clawZones: readonly ClawZone[] = [
  { zone: 0, place: "skin between the claws" },
  { zone: 1, place: "white line at the toe" },
  { zone: 2, place: "white line at the side" },
  { zone: 3, place: "white line near the heel" },
  { zone: 4, place: "sole, ulcer site" },
  { zone: 5, place: "sole behind the toe" },
  { zone: 6, place: "heel bulb" },
  { zone: 7, place: "front wall" },
  { zone: 8, place: "side wall" },
  { zone: 9, place: "skin above the horn" },
  { zone: 10, place: "skin between the heels" },
  { zone: 11, place: "inside wall, front" },
  { zone: 12, place: "inside wall, back" },
];

/** Zones that belong to both claws of a foot. */
export const ZONES_BETWEEN_CLAWS: readonly number[] = [0, 10];
/** Zones whose place is certain enough to say that a lesion does not belong there. */
const CERTAIN: ReadonlySet<number> = new Set([0, 1, 2, 3, 4, 5, 6, 10]);

const SOLE_AND_WHITE_LINE = [1, 2, 3, 4, 5, 6];
const SKIN = [0, 6, 9, 10];
const WALLS = [7, 8, 11, 12];

/** Where a disorder is found, by code. Those that are not here take the whole claw. Source: `usualZonesPractice`. */
const USUAL: Readonly<Record<string, readonly number[]>> = {
  U: [1, 4, 5, 6],
  SU: [4, 5],
  BU: [6],
  TU: [1, 5],
  TN: [1, 5],
  WL: [1, 2, 3],
  WLF: [1, 2, 3],
  WLA: [1, 2, 3],
  SH: SOLE_AND_WHITE_LINE,
  SHD: SOLE_AND_WHITE_LINE,
  SHC: SOLE_AND_WHITE_LINE,
  DS: SOLE_AND_WHITE_LINE,
  TS: SOLE_AND_WHITE_LINE,
  DD: SKIN,
  ID: SKIN,
  HHE: [6, 10],
  IP: SKIN,
  IH: [0, 10],
  HF: WALLS,
  HFA: [11, 12],
  HFH: WALLS,
  HFV: WALLS,
  SW: [6, 9],
};

/** Whether a disorder is found in a zone. Never false in a zone whose place is not certain. */
export function isUsualZone(code: string, zone: number): boolean {
  return !CERTAIN.has(zone) || (USUAL[code]?.includes(zone) ?? true);
}

/** Zones in which a disorder is found; undefined where it takes the whole claw. */
export function usualZones(code: string): readonly number[] | undefined {
  return USUAL[code];
}

/** Codes that are found in a zone, those that name it before those that take the whole claw. */
export function codesInZone(zone: number): readonly string[] {
  const codes = disorders.map(({ code }) => code);
  return [...codes.filter((code) => USUAL[code]?.includes(zone)), ...codes.filter((code) => USUAL[code] === undefined)];
}
