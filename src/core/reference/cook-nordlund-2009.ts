import type { Source } from "../shared/source";

export const cookNordlund2009: Source = {
  name: "Cook & Nordlund 2009",
  citation:
    "Cook NB, Nordlund KV 2009. The influence of the environment on dairy cow behavior, claw health and herd lameness dynamics. Vet J 179:360-369.",
  standing: "memory",
};
