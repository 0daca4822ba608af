import { formatNumber } from "../../../format";
import { cappedCondition, curedCondition, WHAT_IF_CAUTION, whatIfWords } from "../wording/what-if-words";
import { FieldOf, Put, Refused } from "./parts";
import type { SectionProps } from "./props";

/** The loss that would be left if some cows were cured, or if none were above a count. */
export function WhatIfSection(props: SectionProps) {
  const { figures, milkPrice, read } = props;
  const now = figures.number("now");
  const left = (then: number | undefined, condition: string): string | undefined =>
    now === undefined || then === undefined
      ? undefined
      : whatIfWords(condition, { now, then, unit: "litres", price: read.price, currency: milkPrice.currency });
  const tank = (id: string): string => {
    const count = figures.number(id);
    return count === undefined ? "" : ` The tank would then hold ${formatNumber(count, "#,##0")} thousand/mL.`;
  };
  const cured = left(figures.number("cured"), curedCondition(figures.input("highest") ?? 0, figures.number("from")));
  const below = left(figures.number("below"), cappedCondition(figures.input("ceiling") ?? 0));
  return (
    <>
      <FieldOf {...props} field="highest" label="Highest cows cured" />
      <p role="status">{cured !== undefined && cured + tank("curedTank")}</p>
      <Refused sentence={figures.reason("cured")} />
      <FieldOf {...props} field="ceiling" label="No cow above, thousand/mL" />
      <p role="status">{below !== undefined && below + tank("belowTank")}</p>
      {figures.reason("below") !== figures.reason("cured") && <Refused sentence={figures.reason("below")} />}
      <p class="quiet">{WHAT_IF_CAUTION}</p>
      <Put {...props} />
    </>
  );
}
