import type { Source } from "../shared/source";

/** Thin soles: horn wetter and softer, toes under 75 mm; a third of the hind feet had ulcers or white line separation. */
export const vanAmstel2004: Source = {
  name: "van Amstel, Shearer & Palin 2004",
  citation:
    "van Amstel SR, Shearer JK, Palin FL 2004. Moisture content, thickness, and lesions of sole horn associated with thin soles in dairy cattle. J Dairy Sci 87:757-763.",
  standing: "read",
};
