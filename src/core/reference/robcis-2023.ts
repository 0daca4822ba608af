import type { Source } from "../shared/source";

export const robcis2023: Source = {
  name: "Robcis et al. 2023",
  citation:
    "Robcis R, Ferchiou A, Berrada M, Ndiaye Y, Herman N, Lhermie G, Raboisson D 2023. Cost of lameness in dairy herds: an integrated bioeconomic modeling approach. J Dairy Sci 106:2519-2534. EUR 307.50 a case, EUR 12.10 a further week lame.",
  standing: "read",
};
