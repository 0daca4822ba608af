import { disorders } from "../../src/core/claws/disorder-key";
import { lesionNewcase } from "../../src/functions/claws/lesion-newcase";
import { evaluate } from "../../src/functions/evaluate";
import { range } from "./call";
import { cowDaysOf, type Findings, PERIOD } from "./herd-data";
import { benchSheet, type BenchSheet, type Figures } from "./sheet";

export function lesionTableArguments(findings: Findings): readonly unknown[] {
  const { cows, feet, lesions, dates } = findings;
  return [cows, feet, lesions, dates].map<unknown>(range).concat(PERIOD.from, PERIOD.to, cowDaysOf(cows.length));
}

/** The figures of HERD.LESION.TABLE that COUNTIFS can count. */
export function lesionFigures(value: unknown): Figures {
  const [, ...rows] = value as readonly (readonly unknown[])[];
  const figures: Record<string, number> = {};
  for (const [code, , newCases, repeats, , rate] of rows) {
    [newCases, repeats, rate].forEach((figure, index) => {
      figures[`${String(code)} ${FIGURES[index]!}`] = figure as number;
    });
  }
  return figures;
}

const FIGURES = ["new", "repeats", "rate"];

/**
 * The same table built with COUNTIFS, as far as COUNTIFS goes. Which record is a new case cannot be counted in a
 * formula of reasonable length, so the sheet has the column of HERD.LESION.NEWCASE ready as values; the number of
 * different cows with a lesion and the exact limits of the rate are left out. All of that favours the formulas.
 */
export function lesionSheet(findings: Findings): BenchSheet {
  const { cows, feet, lesions, dates } = findings;
  const marks = evaluate(lesionNewcase, [cows, feet, lesions, dates].map(range)).value as (number | "")[][];
  const newCase = marks.map(([mark]) => (mark === "" ? null : (mark ?? null)));
  return benchSheet({ lesion: lesions, date: dates, "new case": newCase }, ([lesion, date, mark], address) => {
    const countifs = (code: string, isNew: number): string =>
      `COUNTIFS(${lesion},"${code}",${date},">=${PERIOD.from}",${date},"<=${PERIOD.to}",${mark},${isNew})`;
    const counts = disorders.flatMap(({ code }) => [countifs(code, 1), countifs(code, 0)]);
    const cell = (disorder: number, isNew: number): string => address(2 * disorder + (isNew === 1 ? 0 : 1));
    const sums = tableLines().map(({ places }) => [1, 0].map((isNew) => places.map((place) => cell(place, isNew)).join("+"))); // oxfmt-ignore
    const lines = sums.flatMap(([newCases, repeats], line) => {
      const cases = address(counts.length + FIGURES.length * line);
      return [newCases!, repeats!, `${cases}/(${cowDaysOf(cows.length)}/365.25)*100`];
    });
    return [...counts, ...lines];
  });
}

/** The lines of the table: every parent with its forms, and all. */
function tableLines(): { readonly name: string; readonly places: readonly number[] }[] {
  const all = [...disorders.keys()];
  const parents = disorders.filter(({ parent }) => parent === undefined);
  const formsOf = (code: string): number[] =>
    all.filter((place) => [disorders[place]!.code, disorders[place]!.parent].includes(code));
  return [...parents.map(({ code }) => ({ name: code, places: formsOf(code) })), { name: "all", places: all }];
}

/** The figures that the formulas computed, of lesions with a case; the values stand in the order of the formulas. */
export function figuresOfFormulas(values: readonly unknown[]): Figures {
  const figures: Record<string, number> = {};
  tableLines().forEach(({ name }, line) => {
    const start = 2 * disorders.length + FIGURES.length * line;
    if (name !== "all" && values[start] === 0 && values[start + 1] === 0) return;
    FIGURES.forEach((figure, index) => (figures[`${name} ${figure}`] = Number(values[start + index])));
  });
  return figures;
}
