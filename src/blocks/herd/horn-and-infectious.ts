import type { Block, Figure } from "../block";
import { call } from "../expression/call";
import { column } from "../expression/columns";
import { literal } from "../expression/expression";
import { input, part } from "../expression/places";
import { findingsOfPeriod, from, gap, period, to } from "./inputs";
import { cowDays, findings } from "./lesion-rates";

const KINDS = [
  { lesion: "all", label: "all lesions" },
  { lesion: "infectious", label: "infectious" },
  { lesion: "horn", label: "horn" },
] as const;

const rates = KINDS.map(({ lesion, label }): Figure => ({
  kind: "figure",
  id: `rate ${lesion}`,
  label: `New cases per 100 cow-years, ${label}`,
  value: call("LESION.RATE", ...findings, literal(lesion), from, to, part("cowDays"), input("gapDays")),
  format: "0.0",
}));

const shares = KINDS.map(({ lesion, label }): Figure => ({
  kind: "figure",
  id: `share ${lesion}`,
  label: `Share of cows examined, ${label}`,
  value: call(
    "LESION.SHARE",
    findingsOfPeriod(column("Findings", "cow")),
    findingsOfPeriod(column("Findings", "lesion")),
    literal(lesion),
  ),
  format: "0.0%",
}));

export const hornAndInfectious: Block = {
  id: "horn-and-infectious",
  title: "Infectious against horn lesions",
  about: "Infectious lesions come from outside (wet, dirty floors, carriers); horn lesions arise inside the claw.",
  screen: "herd",
  inputs: [...period, gap],
  parts: [
    { kind: "figure", id: "cowDays", label: "Cow-days at risk", value: cowDays, format: "#,##0" },
    ...rates,
    ...shares,
  ],
  charts: [],
  notes: ["Rates count cases, shares count cows."],
};
