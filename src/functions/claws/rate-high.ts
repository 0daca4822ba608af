import { rateLimit } from "./limit-specs";

const where = "R 4.2.2, poisson.test";

export const rateHigh = rateLimit("high", [
  {
    arguments: [12, 0.85],
    result: 24.661,
    decimals: 3,
    origin: "oracle",
    where: `${where}; 12 new cases in 85 cow-years, per 100`,
  },
  { arguments: [0, 1], result: 3.689, decimals: 3, origin: "oracle", where },
]);
