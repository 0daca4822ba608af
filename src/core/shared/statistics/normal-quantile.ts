// oxfmt-ignore
const CENTRE = {
  top: [
    3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946,
    45921.95393154987, 67265.7709270087, 33430.57558358813, 2509.0809287301227,
  ],
  bottom: [
    1, 42.31333070160091, 687.1870074920579, 5394.196021424751,
    21213.794301586597, 39307.89580009271, 28729.085735721943, 5226.495278852854,
  ],
};
// oxfmt-ignore
const SIDES = {
  top: [
    1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045,
    1.2704582524523684, 0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
  ],
  bottom: [
    1, 2.053191626637759, 1.6763848301838038, 0.6897673349851,
    0.14810397642748008, 0.015198666563616457, 0.0005475938084995345, 1.0507500716444169e-9,
  ],
};

/** Half-width of the middle part, in probability, and the offsets of the algorithm. */
const CENTRE_HALF_WIDTH = 0.425;
const CENTRE_OFFSET = 0.180625;
const SIDES_OFFSET = 1.6;

/**
 * The value below which a standard normal variable falls with this probability, for probabilities from 1e-10 to
 * 1 - 1e-10, to about 16 figures.
 * Source: Wichura MJ 1988, Algorithm AS 241: the percentage points of the normal distribution, Appl Stat 37:477-484
 * (routine PPND16, without its far tails; its constants rounded to the nearest double).
 */
export function normalQuantile(probability: number): number {
  const q = probability - 0.5;
  if (Math.abs(q) <= CENTRE_HALF_WIDTH) return q * ratio(CENTRE, CENTRE_OFFSET - q * q);
  const distance = Math.sqrt(-Math.log(q < 0 ? probability : 1 - probability));
  return Math.sign(q) * ratio(SIDES, distance - SIDES_OFFSET);
}

/** Normal quantile that leaves (1 - level) / 2 above it: 1.96 for 0.95. */
export function twoSidedQuantile(level: number): number {
  return normalQuantile((1 + level) / 2);
}

function ratio({ top, bottom }: typeof CENTRE, x: number): number {
  return polynomial(top, x) / polynomial(bottom, x);
}

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}
