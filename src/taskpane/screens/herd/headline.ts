import { FEW_CASES } from "../../../core/claws/lesion-rate";
import { capitalised, formatNumber } from "../../format";
import { listed } from "../../parts/listed";
import { type LesionCases, type LesionTable, parentsOf, targetedIn } from "./lesions";

/** Lesions dominate when together they make half of the cases. */
const HALF = 0.5;
/** A reader keeps three names. */
const MOST_NAMES = 3;

/** An answer in a line, and what else there is to say of it. */
export interface Headline {
  readonly first: string;
  readonly rest: string;
}

/** Which lesions dominate the period, and how they stand to their targets: the answer before all figures. */
export function headlineOf(table: LesionTable): Headline {
  const { all } = table;
  if (all === undefined || all.newCases === 0) {
    return { first: "No new case of a claw lesion was recorded in this time.", rest: "" };
  }
  const lesions = parentsOf(table).filter(({ newCases }) => newCases > 0);
  if (all.newCases < FEW_CASES) {
    const cases = all.newCases === 1 ? "1 new case was" : `${all.newCases} new cases were`;
    return {
      first: `Only ${cases} recorded: ${listed(lesions.map(named))}.`,
      rest: "That is too few to say which lesion dominates.",
    };
  }
  const leading = leadingOf(lesions, all.newCases);
  const together = leading.reduce((sum, { newCases }) => sum + newCases, 0);
  const share = Math.round((100 * together) / all.newCases);
  const verb = leading.length === 1 ? "makes" : "make";
  const names = capitalised(listed(leading.map(({ name }) => name.toLowerCase())));
  const first = `${names} ${verb} ${share} % of ${formatNumber(all.newCases, "#,##0")} new cases.`;
  return { first, rest: againstTargets(targetedIn(table)) };
}

function named({ name, newCases }: LesionCases): string {
  return `${name.toLowerCase()} ${newCases}`;
}

function leadingOf(lesions: readonly LesionCases[], all: number): readonly LesionCases[] {
  const leading: LesionCases[] = [];
  let cases = 0;
  for (const lesion of lesions) {
    if (leading.length === MOST_NAMES || cases >= HALF * all) break;
    leading.push(lesion);
    cases += lesion.newCases;
  }
  return leading;
}

function againstTargets(targeted: readonly LesionCases[]): string {
  if (targeted.length === 0) return "The workbook has no targets to measure them against.";
  const above = targeted.filter(({ against }) => against === "above");
  const open = targeted.filter(({ against }) => against === "within chance");
  const told: string[] = [];
  if (above.length > 0) {
    const figures = above.map(({ name, rate, target }) => {
      return `${name.toLowerCase()} (${formatNumber(rate, "0.0")} against ${formatNumber(target!)} per 100 cow-years)`;
    });
    told.push(`Above target, more than chance explains: ${listed(figures)}.`);
  } else told.push("No lesion lies above its target by more than chance explains.");
  if (open.length > 0) told.push(`Too close to tell: ${listed(open.map(({ name }) => name.toLowerCase()))}.`);
  return told.join(" ");
}
