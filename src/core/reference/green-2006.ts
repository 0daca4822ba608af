import type { Source } from "../shared/source";

/** Below about 100 thousand the link of count and milk is mostly dilution; leaving that out overestimates the loss. */
export const green2006: Source = {
  name: "Green 2006",
  citation:
    "Green LE, Schukken YH, Green MJ 2006. On distinguishing cause and consequence: do high somatic cell counts lead to lower milk yield " +
    "or does high milk yield lead to lower somatic cell count? Prev Vet Med 76:74-89. 850 cows, 5 farms; findings read, title and pages from memory.",
  standing: "read",
};
