import type { Source } from "../shared/source";

export const wilson1927: Source = {
  name: "Wilson 1927",
  citation:
    "Wilson EB 1927. Probable inference, the law of succession, and statistical inference. J Am Stat Assoc 22:209-212.",
  standing: "memory",
};
