import type { Source } from "../shared/source";

export const higginsonCutler2013: Source = {
  name: "Higginson Cutler et al. 2013",
  citation:
    "Higginson Cutler JH, Cramer G, Walter JJ, Millman ST, Kelton DF 2013. Randomized clinical trial of tetracycline hydrochloride bandage and paste treatments for resolution of lesions and pain associated with digital dermatitis in dairy cattle. J Dairy Sci 96:7550-7557.",
  standing: "read",
};

/** Days for which the trial left a bandage on a digital dermatitis lesion. */
export const BANDAGE_DAYS = 2;
