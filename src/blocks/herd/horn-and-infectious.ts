import type { Block, Figure } from "../block";
import { call } from "../expression/call";
import { literal } from "../expression/expression";
import { input, part } from "../expression/places";
import { type CowsLookedAt, findings, findingsOf, named, wholeHerd } from "./cows-looked-at";
import { from, gap, period, to } from "./inputs";

const KINDS = [
  { lesion: "all", label: "all lesions" },
  { lesion: "infectious", label: "infectious" },
  { lesion: "horn", label: "horn" },
] as const;

function ratesOf({ counted, cowDays }: CowsLookedAt): readonly Figure[] {
  if (cowDays === undefined) return [];
  const days: Figure = { kind: "figure", id: "cowDays", label: "Cow-days at risk", value: cowDays, format: "#,##0" };
  const rates = KINDS.map(({ lesion, label }): Figure => ({
    kind: "figure",
    id: `rate ${lesion}`,
    label: `New cases per 100 cow-years, ${label}`,
    value: call("LESION.RATE", ...findings, literal(lesion), from, to, part("cowDays"), input("gapDays"), counted),
    format: "0.0",
  }));
  return [days, ...rates];
}

function sharesOf(cows: CowsLookedAt): readonly Figure[] {
  return KINDS.map(({ lesion, label }): Figure => ({
    kind: "figure",
    id: `share ${lesion}`,
    label: `Share of cows examined, ${label}`,
    value: call("LESION.SHARE", findingsOf(cows, "cow"), findingsOf(cows, "lesion"), literal(lesion)),
    format: "0.0%",
  }));
}

export function hornAndInfectiousOf(cows: CowsLookedAt): Block {
  return {
    ...named(cows, "horn-and-infectious", "Infectious against horn lesions"),
    about: "Infectious lesions come from outside (wet, dirty floors, carriers); horn lesions arise inside the claw.",
    screen: "herd",
    inputs: [...period, gap],
    parts: [...ratesOf(cows), ...sharesOf(cows)],
    charts: [],
    notes: ["Rates count cases, shares count cows."],
  };
}

export const hornAndInfectious = hornAndInfectiousOf(wholeHerd);
