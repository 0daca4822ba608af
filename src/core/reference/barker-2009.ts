import type { Source } from "../shared/source";

/** Risk factors: standing and lying for ulcers, turning and tracks for the white line, hygiene and floor for dermatitis. */
export const barker2009: Source = {
  name: "Barker et al. 2009",
  citation:
    "Barker ZE, Amory JR, Wright JL, Mason SA, Blowey RW, Green LE 2009. Risk factors for increased rates of sole ulcers, white line disease, and digital dermatitis in dairy cattle from twenty-seven farms in England and Wales. J Dairy Sci 92:1971-1978.",
  standing: "read",
};
