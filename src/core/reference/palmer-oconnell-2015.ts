import type { Source } from "../shared/source";

export const palmerOConnell2015: Source = {
  name: "Palmer & O'Connell 2015",
  citation:
    "Palmer MA, O'Connell NE 2015. Digital dermatitis in dairy cows: a review of risk factors and potential sources of between-animal variation in susceptibility. Animals 5:512-535.",
  standing: "memory",
};
