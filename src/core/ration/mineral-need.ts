import { type Mineral, nasemNeeds } from "../reference/nasem-2021";
import { nrcNeeds } from "../reference/nrc-2001";
import { DomainError } from "../shared/domain-error";

export { type Mineral, minerals } from "../reference/nasem-2021";

export const systems = ["NASEM 2021", "NRC 2001"] as const;
export type NeedSystem = (typeof systems)[number];

export interface CowToFeed {
  readonly weightKg: number;
  readonly milkKg: number;
  /** Dry matter eaten a day. */
  readonly intakeKg: number;
  readonly daysPregnant?: number | undefined;
}

/** What a cow needs of a mineral, part by part, mg a day. */
export interface MineralNeedParts {
  readonly maintenanceMg: number;
  readonly milkMg: number;
  readonly pregnancyMg: number;
  readonly absorbedShare: number;
  /** What must be fed: the parts together, divided by the share that is absorbed. */
  readonly fedMg: number;
}

/** Need of a mineral without growth, mg a day. Source: NASEM 2021 or NRC 2001. */
export function mineralNeed(mineral: Mineral, cow: CowToFeed, system: NeedSystem): MineralNeedParts {
  const need = system === "NASEM 2021" ? nasemNeeds[mineral] : nrcNeeds[mineral];
  const maintenanceMg = need.perKgWeight * cow.weightKg + need.perKgIntake * cow.intakeKg;
  const milkMg = need.perKgMilk * cow.milkKg;
  const pregnancyMg =
    cow.daysPregnant === undefined ? 0 : pregnancyNeed(mineral, cow.weightKg, cow.daysPregnant, system);
  const { absorbedShare } = need;
  return {
    maintenanceMg,
    milkMg,
    pregnancyMg,
    absorbedShare,
    fedMg: (maintenanceMg + milkMg + pregnancyMg) / absorbedShare,
  };
}

function pregnancyNeed(mineral: Mineral, weightKg: number, daysPregnant: number, system: NeedSystem): number {
  if (system === "NRC 2001") {
    throw new DomainError(
      "unavailable",
      'daysPregnant must be left out with NRC 2001, for which no figure of pregnancy is at hand: use "NASEM 2021"',
    );
  }
  const stage = nasemNeeds[mineral].pregnancy.filter(({ fromDay }) => daysPregnant >= fromDay).at(-1);
  return (stage?.perKgWeight ?? 0) * weightKg;
}
