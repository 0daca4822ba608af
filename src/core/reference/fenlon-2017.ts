import type { Source } from "../shared/source";

export const fenlon2017: Source = {
  name: "Fenlon 2017",
  citation:
    "Fenlon C, O'Grady L, McCoy F, Houtsma E, More SJ 2017. The impact of removal of the seasonality formula on the eligibility of Irish " +
    "herds to supply raw milk. Ir Vet J 70:9. Two ways to a three-month geometric mean; worked example in table 2.",
  standing: "read",
};

/** Table 2: seasonally adjusted tank counts of a sample herd by month, and the rolling mean for March both ways. */
export const FENLON_TABLE_2 = {
  january: [170.82, 210.6, 161.07, 156.78, 110.37, 134.55],
  february: [379.62, 242.72, 342.62, 489.88, 301.92, 372.96, 306.36],
  march: [659, 555, 394, 407, 288, 226, 287],
  monthlyGeometricMeans: [154.29, 340.76, 377.65],
  rollingOfMonthlyMeans: 270.79,
  rollingOfAllResults: 278.51,
} as const;
