/**
 * How the lesions of the invented herd behave. The frequencies are chosen so that the herd's rates fall inside the
 * published ranges that the tests name; the patterns (skin disease in heifers and while housed, ulcers in older cows
 * in mid lactation) follow the literature in kind, not in number.
 */
export interface LesionHabit {
  readonly lesion: string;
  /** New cases per 100 cow-years of a cow with every factor at 1. */
  readonly per100CowYears: number;
  readonly infectious: boolean;
  /** Factors for first, second, later lactations. */
  readonly lactations: readonly [number, number, number];
  /** Factors for up to 60, up to 150, later days in milk, and dry. */
  readonly stages: readonly [number, number, number, number];
  /** Months in which it is commoner, and by how much. */
  readonly season: { readonly months: readonly number[]; readonly factor: number };
  /** Share on hind feet, and on the outer claw of a hind foot; undefined where it lies on the skin. */
  readonly hind: number;
  readonly outer: number | undefined;
  readonly zones: readonly (readonly [number, number])[];
  /** Share of cases that make a cow lame. */
  readonly painful: number;
  readonly treatments: readonly (readonly [string, number])[];
}

const HOUSED = [11, 12, 1, 2, 3];
const LATE_SUMMER = [8, 9, 10];
const NO_SEASON = { months: [], factor: 1 };
const EVEN = [1, 1, 1, 0.6] as const;

const BLOCK = [
  ["trim, block, pain relief", 6],
  ["trim, block", 3],
  ["trim", 1],
] as const;
const TRIM = [["trim", 1]] as const;
const TOPICAL = [
  ["topical", 5],
  ["topical, bandage", 4],
  ["topical, pain relief", 1],
] as const;

export const LESION_HABITS: readonly LesionHabit[] = [
  {
    lesion: "DD",
    per100CowYears: 40,
    infectious: true,
    lactations: [1.7, 0.9, 0.6],
    stages: [1.4, 1.1, 0.7, 0.8],
    season: { months: HOUSED, factor: 1.9 },
    hind: 0.94,
    outer: undefined,
    zones: [
      [10, 9],
      [0, 1],
    ],
    painful: 0.45,
    treatments: TOPICAL,
  },
  {
    lesion: "SU",
    per100CowYears: 14,
    infectious: false,
    lactations: [0.15, 0.8, 1.6],
    stages: [0.6, 2.3, 0.8, 0.5],
    season: { months: LATE_SUMMER, factor: 1.8 },
    hind: 0.95,
    outer: 0.9,
    zones: [
      [4, 9],
      [5, 1],
    ],
    painful: 0.85,
    treatments: BLOCK,
  },
  {
    lesion: "WLA",
    per100CowYears: 13,
    infectious: false,
    lactations: [0.6, 1, 1.3],
    stages: [0.8, 1.2, 1.1, 0.6],
    season: { months: LATE_SUMMER, factor: 1.5 },
    hind: 0.85,
    outer: 0.85,
    zones: [
      [3, 7],
      [2, 3],
    ],
    painful: 0.9,
    treatments: BLOCK,
  },
  {
    lesion: "WLF",
    per100CowYears: 24,
    infectious: false,
    lactations: [0.8, 1, 1.1],
    stages: EVEN,
    season: NO_SEASON,
    hind: 0.8,
    outer: 0.8,
    zones: [
      [3, 6],
      [2, 3],
      [1, 1],
    ],
    painful: 0.1,
    treatments: TRIM,
  },
  {
    lesion: "SHD",
    per100CowYears: 42,
    infectious: false,
    lactations: [1.8, 0.9, 0.8],
    stages: [1.2, 1.8, 0.8, 0.5],
    season: NO_SEASON,
    hind: 0.8,
    outer: 0.8,
    zones: [
      [4, 5],
      [5, 3],
      [3, 2],
    ],
    painful: 0.05,
    treatments: TRIM,
  },
  {
    lesion: "SHC",
    per100CowYears: 16,
    infectious: false,
    lactations: [1.2, 1, 1],
    stages: [1, 1.8, 0.8, 0.5],
    season: NO_SEASON,
    hind: 0.9,
    outer: 0.85,
    zones: [[4, 1]],
    painful: 0.2,
    treatments: TRIM,
  },
  {
    lesion: "HHE",
    per100CowYears: 44,
    infectious: true,
    lactations: [0.8, 1, 1.1],
    stages: EVEN,
    season: { months: HOUSED, factor: 1.8 },
    hind: 0.9,
    outer: 0.5,
    zones: [[6, 1]],
    painful: 0.02,
    treatments: TRIM,
  },
  {
    lesion: "ID",
    per100CowYears: 22,
    infectious: true,
    lactations: [1.2, 1, 0.9],
    stages: EVEN,
    season: { months: HOUSED, factor: 1.8 },
    hind: 0.85,
    outer: undefined,
    zones: [[0, 1]],
    painful: 0.05,
    treatments: [["topical", 1]],
  },
  {
    lesion: "IP",
    per100CowYears: 7,
    infectious: true,
    lactations: [1, 1, 1],
    stages: [1.6, 1, 0.8, 0.8],
    season: { months: [6, 7, 8, 9], factor: 2 },
    hind: 0.7,
    outer: undefined,
    zones: [[0, 1]],
    painful: 1,
    treatments: [["vet called", 1]],
  },
  {
    lesion: "IH",
    per100CowYears: 7,
    infectious: true,
    lactations: [0.5, 1, 1.4],
    stages: EVEN,
    season: NO_SEASON,
    hind: 0.95,
    outer: undefined,
    zones: [[0, 1]],
    painful: 0.1,
    treatments: TRIM,
  },
  {
    lesion: "TU",
    per100CowYears: 1.6,
    infectious: false,
    lactations: [0.5, 1, 1.3],
    stages: EVEN,
    season: NO_SEASON,
    hind: 0.7,
    outer: 0.7,
    zones: [[1, 1]],
    painful: 0.9,
    treatments: BLOCK,
  },
  {
    lesion: "DS",
    per100CowYears: 5,
    infectious: false,
    lactations: [0.5, 1, 1.3],
    stages: EVEN,
    season: NO_SEASON,
    hind: 0.85,
    outer: 0.8,
    zones: [
      [5, 1],
      [4, 1],
    ],
    painful: 0.2,
    treatments: TRIM,
  },
  {
    lesion: "TS",
    per100CowYears: 4,
    infectious: false,
    lactations: [0.8, 1, 1.2],
    stages: EVEN,
    season: { months: LATE_SUMMER, factor: 1.5 },
    hind: 0.8,
    outer: 0.7,
    zones: [
      [1, 1],
      [5, 1],
    ],
    painful: 0.4,
    treatments: [["trim, pain relief", 1]],
  },
  {
    lesion: "CC",
    per100CowYears: 3,
    infectious: false,
    lactations: [0.3, 1, 1.5],
    stages: EVEN,
    season: NO_SEASON,
    hind: 0.95,
    outer: 0.95,
    zones: [],
    painful: 0,
    treatments: TRIM,
  },
];
