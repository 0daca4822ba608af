import type { Source } from "../shared/source";

export const tsuka2014: Source = {
  name: "Tsuka et al. 2014",
  citation:
    "Tsuka T, Murahata Y, Azuma K, et al. 2014. Quantitative evaluation of the relationship between dorsal wall length, sole thickness, and rotation of the distal phalanx in the bovine claw using computed tomography. J Dairy Sci 97:6271-6285.",
  standing: "read",
};

/** Length of the front wall and the thickness of the sole that goes with it, untrimmed hind claws. */
export interface WallAndSole {
  readonly wallMm: number;
  readonly soleMm: number;
}

export const wallAndSole: Readonly<Record<"inner" | "outer", readonly WallAndSole[]>> = {
  inner: [
    { wallMm: 72.1, soleMm: 5 },
    { wallMm: 75, soleMm: 6.1 },
    { wallMm: 79.8, soleMm: 7 },
  ],
  outer: [
    { wallMm: 72.7, soleMm: 5 },
    { wallMm: 75, soleMm: 6.4 },
    { wallMm: 78.4, soleMm: 7 },
  ],
};

/** A sole under `critical` goes soft; `recommended` is what should be left. */
export const soleLimitsMm = { critical: 5, recommended: 7 } as const;
