import type { Source } from "../shared/source";

export const icar2020: Source = {
  name: "ICAR Claw Health Atlas 2020",
  citation:
    "Egger-Danner C, Nielsen P, Fiedler A, et al. 2020. ICAR Claw Health Atlas, 2nd ed. ICAR Technical Series. Codes and names of the harmonised claw disorder key.",
  standing: "memory",
};

/** Where a disorder belongs: claw horn, infectious skin disease, claw shape, or none of these. */
export type DisorderGroup = "horn" | "infectious" | "shape" | "other";

/** A row of the harmonised claw disorder key. */
export interface Disorder {
  readonly code: string;
  readonly name: string;
  readonly group: DisorderGroup;
  /** Code of the disorder of which this is a form. */
  readonly parent?: string;
}

/**
 * The harmonised claw disorder key: 27 rows, four of them parents (HF, SH, U, WL). Codes and names from memory.
 * The groups are not part of the key: horn and infectious follow Heringstad et al. 2018; shape and other are a
 * common way to list the rest.
 */
export const disorders: readonly Disorder[] = [
  { code: "U", name: "Ulcer", group: "horn" },
  { code: "SU", name: "Sole ulcer", group: "horn", parent: "U" },
  { code: "BU", name: "Bulb ulcer", group: "horn", parent: "U" },
  { code: "TU", name: "Toe ulcer", group: "horn", parent: "U" },
  { code: "TN", name: "Toe necrosis", group: "horn", parent: "U" },
  { code: "WL", name: "White line disease", group: "horn" },
  { code: "WLF", name: "White line fissure", group: "horn", parent: "WL" },
  { code: "WLA", name: "White line abscess", group: "horn", parent: "WL" },
  { code: "SH", name: "Sole haemorrhage", group: "horn" },
  { code: "SHD", name: "Sole haemorrhage, diffuse", group: "horn", parent: "SH" },
  { code: "SHC", name: "Sole haemorrhage, circumscribed", group: "horn", parent: "SH" },
  { code: "DS", name: "Double sole", group: "horn" },
  { code: "TS", name: "Thin sole", group: "horn" },
  { code: "DD", name: "Digital dermatitis", group: "infectious" },
  { code: "ID", name: "Interdigital/superficial dermatitis", group: "infectious" },
  { code: "HHE", name: "Heel horn erosion", group: "infectious" },
  { code: "IP", name: "Interdigital phlegmon", group: "infectious" },
  { code: "IH", name: "Interdigital hyperplasia", group: "infectious" },
  { code: "AC", name: "Asymmetric claws", group: "shape" },
  { code: "CD", name: "Concave dorsal wall", group: "shape" },
  { code: "CC", name: "Corkscrew claws", group: "shape" },
  { code: "SC", name: "Scissor claws", group: "shape" },
  { code: "HF", name: "Horn fissure", group: "other" },
  { code: "HFA", name: "Axial horn fissure", group: "other", parent: "HF" },
  { code: "HFH", name: "Horizontal horn fissure", group: "other", parent: "HF" },
  { code: "HFV", name: "Vertical horn fissure", group: "other", parent: "HF" },
  { code: "SW", name: "Swelling of coronet and/or bulb", group: "other" },
];
