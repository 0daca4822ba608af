import type { Example, ResultValue } from "../../src/functions/define";

/** Examples without printed decimals are whole numbers, dates or exact working; floating point costs less than this. */
const EXACT = 1e-9;

/** Compares a result with that of a worked example, cell by cell, at the decimals that its source prints. */
export function expectResult(got: unknown, { result, decimals }: Pick<Example, "result" | "decimals">): void {
  expectEqual(got, result, decimals);
}

function expectEqual(got: unknown, expected: ResultValue, decimals: number | undefined): void {
  if (typeof expected === "object") {
    expect(Array.isArray(got) ? got.length : got).toBe(expected.length);
    expected.forEach((row, r) =>
      row.forEach((cell, c) => expectEqual((got as typeof expected)[r]![c], cell, decimals)),
    );
  } else if (typeof expected === "number" && typeof got === "number") {
    const tolerance = decimals === undefined ? EXACT * Math.max(1, Math.abs(expected)) : 0.5 * 10 ** -decimals + EXACT;
    if (!(Math.abs(got - expected) <= tolerance)) expect(got).toBe(expected);
  } else {
    expect(got).toBe(expected);
  }
}

/** The values alone of what is handed to Excel, which wraps a date to bring its number format along. */
export function bareValues(handed: unknown): unknown {
  if (Array.isArray(handed)) return handed.map(bareValues);
  return typeof handed === "object" && handed !== null && "basicValue" in handed ? handed.basicValue : handed;
}
