import type { Source } from "../shared/source";

export const cook2005: Source = {
  name: "Cook, Bennett & Nordlund 2005",
  citation:
    "Cook NB, Bennett TB, Nordlund KV 2005. Monitoring indices of cow comfort in free-stall-housed dairy herds. J Dairy Sci 88:3876-3885. With the indices of Overton MW, Moore DA, Sischo WM 2003.",
  standing: "read",
};

/** Thresholds of the stall indices, each at its own time of day. */
export const stallThresholds = { comfortOver: 0.85, standingUnder: 0.2, useOver: 0.75 } as const;
