import type { Source } from "../shared/source";

export const cookReinemann2007: Source = {
  name: "Cook & Reinemann 2007",
  citation:
    "Cook NB, Reinemann DJ 2007. A tool box for assessing cow, udder and teat hygiene. Footbath days a week by the share of cows with leg hygiene 3 or 4: under 25 % and over 75 % read, the steps between from memory.",
  standing: "memory",
};

/** Days a week with the footbath, up to and with this share of cows with soiled legs; under the first share as needed. */
export const bathDaysByShare: readonly { readonly share: number; readonly days: number }[] = [
  { share: 0.5, days: 2 },
  { share: 0.75, days: 5 },
  { share: 1, days: 7 },
];
export const AS_NEEDED_UNDER_SHARE = 0.25;
