import { blockContract } from "./blocks";
import { lookContract } from "./looks";
import { largeContract } from "./large";
import { makingContract } from "./making";
import { refusalContract } from "./refusals";
import { savingContract } from "./saving";
import { takingBackContract } from "./taking-back";
import type { TestHost } from "./test-book";
import { togetherContract } from "./together";
import { valuesContract } from "./values";

/** What every host of the table port must do. `runs` is how many orders of events are tried. */
export function tablePortContract(host: TestHost, { runs }: { readonly runs: number }): void {
  describe(`tables in ${host.name}: saving`, () => savingContract(host));
  describe(`tables in ${host.name}: taking back`, () => takingBackContract(host));
  describe(`tables in ${host.name}: refusing`, () => refusalContract(host));
  describe(`tables in ${host.name}: values`, () => valuesContract(host));
  describe(`tables in ${host.name}: several users`, () => togetherContract(host, runs));
  describe(`tables in ${host.name}: making tables and blocks`, () => makingContract(host));
  describe(`tables in ${host.name}: blocks taken back`, () => blockContract(host));
  describe(`tables in ${host.name}: looks of blocks`, () => lookContract(host));
  describe(`tables in ${host.name}: large tables`, () => largeContract(host));
}
