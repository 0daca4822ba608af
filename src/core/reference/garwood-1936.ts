import type { Source } from "../shared/source";

export const garwood1936: Source = {
  name: "Garwood 1936",
  citation: "Garwood F 1936. Fiducial limits for the Poisson distribution. Biometrika 28:437-442.",
  standing: "memory",
};
