import { shareLimit } from "./limit-specs";

const where = 'R 4.2.2 with epiR 2.0.57, epi.conf(method = "wilson")';

export const shareHigh = shareLimit("high", [
  {
    arguments: [23, 41],
    result: 0.7011,
    decimals: 4,
    origin: "oracle",
    where: `${where}; cows cured by trim, block and pain relief in Thomas et al. 2015`,
  },
  { arguments: [0, 20], result: 0.1611, decimals: 4, origin: "oracle", where },
  { arguments: [1, 1], result: 1, origin: "oracle", where },
]);
