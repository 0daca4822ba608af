import fc from "fast-check";

/** What the tests draw is the same in every run, so that a test that fails has changed. RANDOM_SEED draws other things. */
export const RANDOM_SEED = Number(process.env["RANDOM_SEED"] ?? 20_261_127);

fc.configureGlobal({ seed: RANDOM_SEED });

export default fc;
