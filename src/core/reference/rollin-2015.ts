/**
 * Rollin E, Dhuyvetter KC, Overton MW 2015. The cost of clinical mastitis in the first 30 days of lactation: an economic
 * modeling tool. Prev Vet Med 122:257-264. US dollars of 2015, a clinical case in the first 30 days.
 */

/** Cost of a case as printed, USD. */
export const ROLLIN_CASE_USD = {
  total: 444,
  direct: 128,
  indirect: 316,
  directParts: { diagnostics: 10, drugs: 36, milkNotSold: 25, veterinary: 4, labour: 21, death: 32 },
  indirectParts: { laterMilk: 125, culling: 182, reproduction: 9 },
} as const;
