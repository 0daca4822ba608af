import { bathLitres } from "../../core/barn/footbath";
import { cook2012 } from "../../core/reference/cook-2012";
import { solano2017 } from "../../core/reference/solano-2017";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { metres } from "./kinds";

export const bathVolume = defineFunction({
  id: "BATH.VOLUME",
  group: "Barn and footbath",
  summary: "Litres that fill a footbath to a depth.",
  parameters: {
    lengthM: required(metres(0.5, 20), "Length of the bath"),
    widthM: required(metres(0.3, 5), "Width of the bath"),
    depthM: required(metres(0.02, 0.5), "Depth of the liquid"),
  },
  result: { shape: "scalar", type: "number", unit: "litres", format: "0" },
  sources: [cook2012, solano2017],
  limits: [
    "For upright walls. A bath of 3.0 to 3.7 m by 0.5 to 0.6 m, at least 10 cm deep, wets every hind foot twice.",
  ],
  cautions: ["A bath prevents; it does not treat open lesions."],
  examples: [
    { arguments: [3, 0.5, 0.15], result: 225, origin: "hand", where: "Solano et al. 2017: 3 × 0.5 × 0.15 m × 1000" },
    { arguments: [2.4, 0.6, 0.1], result: 144, origin: "hand", where: "2.4 × 0.6 × 0.1 m = 0.144 m³" },
  ],
  compute: ({ lengthM, widthM, depthM }) => bathLitres(lengthM, widthM, depthM),
  steps: ({ lengthM, widthM, depthM }, result) => [
    {
      label: "Volume",
      working: `${lengthM} × ${widthM} × ${depthM} m × 1000`,
      value: `${figure(Number(result), 1)} litres`,
    },
  ],
});
