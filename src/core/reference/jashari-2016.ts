import type { Source } from "../shared/source";

/** One composite test at 200 thousand against culture, any pathogen: sensitivity 44.3 %, specificity 87.3 %. */
export const jashari2016: Source = {
  name: "Jashari 2016",
  citation:
    "Jashari R, Piepers S, De Vliegher S 2016. J Dairy Sci 99:9271-9286. One composite test at 200,000 against culture: sensitivity 44.3 %, specificity 87.3 %.",
  standing: "read",
};
