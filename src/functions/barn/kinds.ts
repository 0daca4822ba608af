import { number } from "../scalars";

/** Cows counted at one look. A 0 is a count. */
export const cowCount = number({ unit: "cows", min: 0, max: 100_000, whole: true, reason: "a count of cows" });

/** Cows of a group that cannot be empty. */
export const someCows = number({
  unit: "cows",
  min: 1,
  max: 100_000,
  whole: true,
  reason: "a count of cows",
  zeroIsBlank: true,
});

export const metres = (min: number, max: number) =>
  number({ unit: "m", min, max, reason: "metres, not cm or feet", zeroIsBlank: true });

export const hours = (zeroIsBlank: boolean) =>
  number({ unit: "hours", min: 0, max: 24, reason: "hours of one day", zeroIsBlank });

export const bathLitresKind = number({
  unit: "litres",
  min: 10,
  max: 10_000,
  reason: "baths hold some 80 to 1,500 litres",
  zeroIsBlank: true,
});
