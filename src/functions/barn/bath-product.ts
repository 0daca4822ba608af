import { bathProductAmount, bathProducts, FORMALDEHYDE_IN_STOCK, productBasis } from "../../core/barn/footbath";
import { cook2012 } from "../../core/reference/cook-2012";
import { solano2017 } from "../../core/reference/solano-2017";
import { definition } from "../../core/shared/source";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { choice, number } from "../scalars";
import { bathLitresKind } from "./kinds";

const percentKind = number({
  unit: "%",
  min: 0.5,
  max: 10,
  reason: "5 means 5 %; stronger baths burn skin",
  zeroIsBlank: true,
});
const productKind = choice(bathProducts, { "copper sulfate": "copper sulphate", bluestone: "copper sulphate" });

export const bathProduct = defineFunction({
  id: "BATH.PRODUCT",
  group: "Barn and footbath",
  summary: "Product for one fill of a footbath: kg of copper sulphate, or litres of formalin stock.",
  parameters: {
    litres: required(bathLitresKind, "Litres of the bath"),
    percent: required(percentKind, "Strength in percent: 5 for 5 %"),
    product: required(productKind, "Product"),
  },
  result: { shape: "scalar", type: "number", unit: "kg or litres", format: "0.0" },
  sources: [
    solano2017,
    cook2012,
    definition("Copper sulphate w/v: kg of the pentahydrate in 100 L. Formalin v/v: litres of 37 % stock in 100 L."),
  ],
  limits: [
    "A percentage of formalin is one of the stock, not of formaldehyde: 4 % formalin is 1.48 % formaldehyde.",
    "Trials used 5 % copper sulphate; formalin is used at 3 to 5 %.",
  ],
  cautions: [
    "Formalin irritates, sensitises and is a carcinogen: gloves, goggles, open air, no mixing in a closed room; label and local limits come first.",
    "Copper sulphate is poisonous to sheep, water life and soil; its use and disposal are regulated in many places. Wear gloves and goggles.",
  ],
  examples: [
    {
      arguments: [225, 5, "copper sulphate"],
      result: 11.25,
      origin: "hand",
      where: "Solano et al. 2017: 5 % of 225 L, w/v",
    },
    { arguments: [225, 4, "formalin"], result: 9, origin: "hand", where: "4 % of 225 L, v/v" },
    {
      arguments: [340.687, 5, "copper sulphate"],
      result: 17,
      decimals: 0,
      origin: "printed",
      where: "Cook et al. 2012: 90 gal (340.7 L) at 5 % take 37 lb (16.8 to 17.2 kg)",
    },
  ],
  compute({ litres, percent, product }, remarks) {
    remarks.add(productBasis[product].basis);
    return bathProductAmount(litres, percent);
  },
  steps({ litres, percent, product }, result) {
    const { unit, basis } = productBasis[product];
    return [
      { label: "Basis", working: product, value: basis },
      { label: "Product", working: `${litres} L × ${percent} / 100`, value: `${figure(Number(result))} ${unit}` },
      ...(product === "formalin"
        ? [
            {
              label: "Formaldehyde",
              working: `${percent} % × ${FORMALDEHYDE_IN_STOCK}`,
              value: `${figure(percent * FORMALDEHYDE_IN_STOCK)} %`,
            },
          ]
        : []),
    ];
  },
});
