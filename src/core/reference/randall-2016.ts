import type { Source } from "../shared/source";

/** Lesions of heifers two to four months after calving go with lameness in later life. */
export const randall2016: Source = {
  name: "Randall et al. 2016",
  citation:
    "Randall LV, Green MJ, Chagunda MGG, Mason C, Green LE, Huxley JN 2016. Lameness in dairy heifers; impacts of hoof lesions present around first calving on future lameness, milk yield and culling risk. Prev Vet Med 133:52-63.",
  standing: "read",
};
