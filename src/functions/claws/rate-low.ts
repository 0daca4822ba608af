import { rateLimit } from "./limit-specs";

const where = "R 4.2.2, poisson.test";

export const rateLow = rateLimit("low", [
  {
    arguments: [12, 0.85],
    result: 7.295,
    decimals: 3,
    origin: "oracle",
    where: `${where}; 12 new cases in 85 cow-years, per 100`,
  },
  { arguments: [0, 50], result: 0, origin: "oracle", where },
]);
