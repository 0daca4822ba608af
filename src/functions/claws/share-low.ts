import { shareLimit } from "./limit-specs";

const where = 'R 4.2.2 with epiR 2.0.57, epi.conf(method = "wilson")';

export const shareLow = shareLimit("low", [
  {
    arguments: [11, 45],
    result: 0.1424,
    decimals: 4,
    origin: "oracle",
    where: `${where}; cows cured by trimming alone in Thomas et al. 2015`,
  },
  { arguments: [0, 20], result: 0, origin: "oracle", where },
  {
    arguments: [4145, 14_700],
    result: 0.2748,
    decimals: 4,
    origin: "oracle",
    where: `${where}; lame cows in Griffiths et al. 2018`,
  },
]);
