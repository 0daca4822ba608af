import { changingContract } from "./changing";
import { formulaContract } from "./formulas";
import { readingContract } from "./reading";
import { rangeContract } from "./ranges";
import type { SheetsHost } from "./test-sheets";

/** What every host of the book port must do. */
export function bookPortContract(host: SheetsHost): void {
  describe(`sheets in ${host.name}: reading`, () => readingContract(host));
  describe(`sheets in ${host.name}: changing cells`, () => changingContract(host));
  describe(`sheets in ${host.name}: ranges and tables`, () => rangeContract(host));
  describe(`sheets in ${host.name}: formulas`, () => formulaContract(host));
}
