import { USUAL_GAP_DAYS } from "../../core/claws/new-cases";
import { cowRepeats } from "../../functions/claws/cow-repeats";
import { lesionBygroup } from "../../functions/claws/lesion-bygroup";
import { lesionMonths } from "../../functions/claws/lesion-months";
import { lesionTable } from "../../functions/claws/lesion-table";
import { AS_OF } from "../../workbook/tables";
import type { NewSheet } from "../../xlsx/write-model";
import { COLOURS, FORMATS, STYLES, withFormat } from "../look";
import { Page } from "../page";

const FINDINGS = ["Cow", "Foot", "Lesion", "Date"].map((name) => `Findings[${name}]`).join(",");
const COW_DAYS = "$B$7";
const GROUPS_AT = 20;
const GROUP_ROWS = 7;
/** Last on the sheet: it grows with the lesions that the herd has. */
const LESIONS_AT = 31;
const LESION_ROWS = 34;
const MONTHS_AT = 3;
const MONTHS = 14;
const REPEATS_AT = 21;

const left = { ...STYLES.computed, horizontal: "left" } as const;

/** How the claws of the herd are doing. */
export function clawsSheet(): NewSheet {
  const page = new Page("Claws", "Claws", "Rates by lesion against targets, who has them, and how the months went.");
  keyFigures(page);
  byMonth(page);
  byLactation(page);
  repeats(page);
  page.section(`A${LESIONS_AT}`, "New cases by lesion in the period", 11);
  const formula = `HERD.LESION.TABLE(${FINDINGS},$B$4,$B$5,${COW_DAYS},Targets[#All],$B$6)`;
  page.table(`A${LESIONS_AT + 1}`, formula, lesionTable, LESION_ROWS);
  page.height(LESIONS_AT + 1, 31);
  const first = LESIONS_AT + 2;
  const area = `A${first}:K${LESIONS_AT + LESION_ROWS}`;
  page.highlight({ area, formula: `$J${first}="above"`, style: STYLES.warn });
  return page.sheet({
    tabColour: COLOURS.deep,
    widths: [34, 34, 10, 10, 10, 12, 10, 10, 10, 15, 22, 3, 12, 12, 12, 12, 12, 16],
    frozenRows: 2,
    print: { landscape: true, area: `A1:K${LESIONS_AT + LESION_ROWS}`, pagesDown: 1 },
  });
}

function keyFigures(page: Page): void {
  page.input("A4", "From", { formula: `EDATE(${AS_OF},-12)` }, FORMATS.day);
  page.input("A5", "To", { formula: `${AS_OF}-1` }, FORMATS.day);
  page.input("A6", "A repeat within, days", USUAL_GAP_DAYS);
  page.figure("A7", "Cow-days at risk", "HERD.COW.DAYS(Cows[Entered],Cows[Left],B4,B5)", FORMATS.whole);
  const rate = (lesion: string): string => `HERD.LESION.RATE(${FINDINGS},"${lesion}",B4,B5,${COW_DAYS},B6)`;
  page.figure("A9", "New cases per 100 cow-years, all", rate("all"), FORMATS.one);
  page.figure("A10", "of these infectious", rate("infectious"), FORMATS.one);
  page.figure("A11", "of these horn", rate("horn"), FORMATS.one);
  page.put("A13", "Rates count cases, shares count cows.", STYLES.note);
  page.put("A14", "Small numbers move a lot by chance: read the limits.", STYLES.note);
  page.put("A15", "Cows are not all trimmed; those that are have more lesions.", STYLES.note);
}

/** First lactation first: where a lesion shows in heifers, look at how they are reared and brought in. */
function byLactation(page: Page): void {
  page.section(`A${GROUPS_AT}`, "Share of examined cows with a lesion, by lactation", 11);
  page.input(`A${GROUPS_AT + 1}`, "Lesion, a group, or all", "DD");
  const inPeriod = (column: string): string =>
    `FILTER(Findings[${column}],(Findings[Date]>=$B$4)*(Findings[Date]<=$B$5))`;
  const columns = ["Cow", "Lesion", "Lactation"].map(inPeriod).join(",");
  page.table(`A${GROUPS_AT + 2}`, `HERD.LESION.BYGROUP(${columns},B${GROUPS_AT + 1})`, lesionBygroup, GROUP_ROWS);
}

function byMonth(page: Page): void {
  page.section(`M${MONTHS_AT}`, "New cases by month", 6);
  const headings = MONTHS_AT + 1;
  const thisMonth = `DATE(YEAR(${AS_OF}),MONTH(${AS_OF}),1)`;
  const formula = `HERD.LESION.MONTHS(${FINDINGS},EDATE(${thisMonth},-${MONTHS}),${thisMonth}-1,$B$6)`;
  page.table(`M${headings}`, formula, lesionMonths, MONTHS + 1);
  for (let month = 1; month <= MONTHS; month++) page.put(`M${headings + month}`, null, withFormat(left, FORMATS.month));
  const last = headings + MONTHS;
  const series = (column: string, colour: string) => ({
    name: `Claws!$${column}$${headings}`,
    values: `Claws!$${column}$${headings + 1}:$${column}$${last}`,
    colour,
  });
  page.chart({
    type: "stacked columns",
    title: "New cases by month",
    description: `Stacked columns of new claw cases in each of ${MONTHS} months: horn, infectious, shape and other. The numbers stand in M${headings}:R${last}.`,
    over: "D3:K19",
    categories: `Claws!$M$${headings + 1}:$M$${last}`,
    categoryFormat: FORMATS.month,
    valueTitle: "new cases",
    valueFormat: "0",
    series: [
      series("N", COLOURS.deep),
      series("O", COLOURS.amber),
      series("P", COLOURS.grey),
      series("Q", COLOURS.line),
    ],
  });
}

function repeats(page: Page): void {
  page.section(`M${REPEATS_AT}`, "Cows with several new cases in the period", 6);
  page.input(`M${REPEATS_AT + 1}`, "New cases", 4);
  page.table(`M${REPEATS_AT + 2}`, `HERD.COW.REPEATS(${FINDINGS},$B$4,$B$5,N${REPEATS_AT + 1},$B$6)`, cowRepeats, 40);
}
