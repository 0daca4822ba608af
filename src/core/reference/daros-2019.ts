import type { Source } from "../shared/source";

/** Lame: two consecutive scores of 3, or any above; sound: two consecutive of 2 or less; one alone changes nothing. */
export const daros2019: Source = {
  name: "Daros et al. 2019",
  citation:
    "Daros RR, Eriksson HK, Weary DM, von Keyserlingk MAG 2019. Lameness during the dry period: epidemiology and associated factors. J Dairy Sci 102:11414-11427.",
  standing: "read",
};
