import type { Source } from "../shared/source";

/** Lameness score 1-5; 3 and more is lame, 4 and 5 are the severe steps. */
export const sprecher1997: Source = {
  name: "Sprecher, Hostetler & Kaneene 1997",
  citation:
    "Sprecher DJ, Hostetler DE, Kaneene JB 1997. A lameness scoring system that uses posture and gait to predict dairy cattle reproductive performance. Theriogenology 47:1179-1187.",
  standing: "read",
};
