import { lesionTable } from "../../functions/claws/lesion-table";
import { AS_OF } from "../../workbook/tables";
import type { NewSheet } from "../../xlsx/write-model";
import { COLOURS, FORMATS, STYLES, withFormat } from "../look";
import { below, Page } from "../page";

const FINDINGS = ["Cow", "Foot", "Lesion", "Date"].map((name) => `Findings[${name}]`).join(",");
const SCALE = '"0-3"';
const COW_DAYS = "$B$7";

const LESIONS_AT = 20;
const GROUPS_AT = 44;
const MONTHS_AT = 51;
const MONTHS = 14;
const SCORINGS_AT = 69;
/** A year of scorings every second week. */
const SCORINGS = 26;

/** How the claws of the herd are doing. */
export function clawsSheet(): NewSheet {
  const page = new Page(
    "Claws",
    "Claws",
    "Rates by lesion against targets, who has them, month by month, and lame cows.",
  );
  keyFigures(page);
  page.section(`A${LESIONS_AT}`, "New cases by lesion in the period", 11);
  page.table(
    `A${LESIONS_AT + 1}`,
    `HERD.LESION.TABLE(${FINDINGS},$B$4,$B$5,${COW_DAYS},Targets[#All],$B$6)`,
    lesionTable,
    21,
  );
  page.highlight({
    area: `A${LESIONS_AT + 2}:K${LESIONS_AT + 21}`,
    formula: `$J${LESIONS_AT + 2}="above"`,
    style: STYLES.warn,
  });
  byLactation(page);
  byMonth(page);
  byScoring(page);
  return page.sheet({
    tabColour: COLOURS.deep,
    widths: [34, 34, 10, 10, 10, 12, 10, 10, 10, 12, 22],
    frozenRows: 2,
    print: { landscape: true },
  });
}

function keyFigures(page: Page): void {
  page.input("A4", "From", { formula: `EDATE(${AS_OF},-12)` }, FORMATS.day);
  page.input("A5", "To", { formula: `${AS_OF}-1` }, FORMATS.day);
  page.input("A6", "A repeat within, days", 28);
  page.figure("A7", "Cow-days at risk", "HERD.COW.DAYS(Cows[Entered],Cows[Left],B4,B5)", FORMATS.whole);
  const rate = (lesion: string): string => `HERD.LESION.RATE(${FINDINGS},"${lesion}",B4,B5,${COW_DAYS},B6)`;
  page.figure("A9", "New cases per 100 cow-years, all", rate("all"), FORMATS.one);
  page.figure("A10", "of these infectious", rate("infectious"), FORMATS.one);
  page.figure("A11", "of these horn", rate("horn"), FORMATS.one);
  page.figure("A13", "Last scoring", "MAX(Scores[Date])", FORMATS.day);
  const scores = "FILTER(Scores[Score],Scores[Date]=B13)";
  page.figure("A14", "Cows scored", `COUNT(${scores})`);
  page.figure("A15", "Lame (score 2 or 3)", `HERD.LAME.SHARE(${scores},${SCALE})`, FORMATS.share);
  page.figure("A16", "95 % limits: low", "HERD.SHARE.LOW(ROUND(B15*B14,0),B14)", FORMATS.share);
  page.figure("A17", "high", "HERD.SHARE.HIGH(ROUND(B15*B14,0),B14)", FORMATS.share);
  page.put(
    "A18",
    "Rates count cases; a share counts cows. Small numbers move a lot by chance: read the limits.",
    STYLES.note,
  );
}

/** Heifers first: where an infection shows in them, look at how they are reared. */
function byLactation(page: Page): void {
  page.section(`A${GROUPS_AT}`, "Share of examined cows with a lesion, by lactation", 11);
  page.headings(`A${GROUPS_AT + 1}`, ["Lactation", "Cows examined", "DD", "U", "WL", "SH"]);
  const groups = [
    ["first", "=1"],
    ["second", "=2"],
    ["later", ">=3"],
  ] as const;
  groups.forEach(([name, condition], index) => {
    const row = GROUPS_AT + 2 + index;
    const wanted = `(Findings[Lactation]${condition})*(Findings[Date]>=$B$4)*(Findings[Date]<=$B$5)`;
    page.put(`A${row}`, name, STYLES.label);
    page.formula(`B${row}`, `COUNT(UNIQUE(FILTER(Findings[Cow],${wanted})))`, {
      ...STYLES.computed,
      horizontal: "left",
    });
    ["C", "D", "E", "F"].forEach((column) =>
      page.formula(
        `${column}${row}`,
        `HERD.LESION.SHARE(FILTER(Findings[Cow],${wanted}),FILTER(Findings[Lesion],${wanted}),${column}$${GROUPS_AT + 1})`,
        withFormat(STYLES.computed, FORMATS.share),
      ),
    );
  });
}

function byMonth(page: Page): void {
  page.section(`A${MONTHS_AT}`, "New cases by month", 11);
  const headings = MONTHS_AT + 1;
  page.headings(`A${headings}`, ["Month", "infectious", "horn", "other"]);
  const isNew = `(HERD.LESION.NEWCASE(${FINDINGS},$B$6)=1)`;
  for (let month = 0; month < MONTHS; month++) {
    const row = headings + 1 + month;
    const back = month - MONTHS;
    page.formula(`A${row}`, `EDATE(DATE(YEAR(${AS_OF}),MONTH(${AS_OF}),1),${back})`, {
      ...withFormat(STYLES.computed, FORMATS.month),
      horizontal: "left",
    });
    const inMonth = `(Findings[Date]>=$A${row})*(Findings[Date]<EDATE($A${row},1))`;
    const kind = (column: string): string => `(Findings[Kind]=${column}$${headings})`;
    const style = { ...STYLES.computed, horizontal: "left" } as const;
    page.formula(`B${row}`, `SUMPRODUCT(${inMonth}*${kind("B")}*${isNew})`, style);
    page.formula(`C${row}`, `SUMPRODUCT(${inMonth}*${kind("C")}*${isNew})`, style);
    page.formula(`D${row}`, `SUMPRODUCT(${inMonth}*(${kind("D")}+(Findings[Kind]="shape"))*${isNew})`, style);
  }
  const last = headings + MONTHS;
  page.chart({
    type: "stacked columns",
    title: "New cases by month",
    description: `Stacked columns of new claw cases in each of ${MONTHS} months: infectious, horn and other. The numbers stand in A${headings}:D${last}.`,
    over: "D3:K19",
    categories: `Claws!$A$${headings + 1}:$A$${last}`,
    categoryFormat: FORMATS.month,
    valueTitle: "new cases",
    valueFormat: "0",
    series: [
      { name: `Claws!$C$${headings}`, values: `Claws!$C$${headings + 1}:$C$${last}`, colour: COLOURS.deep },
      { name: `Claws!$B$${headings}`, values: `Claws!$B$${headings + 1}:$B$${last}`, colour: COLOURS.amber },
      { name: `Claws!$D$${headings}`, values: `Claws!$D$${headings + 1}:$D$${last}`, colour: COLOURS.grey },
    ],
  });
}

function byScoring(page: Page): void {
  page.section(`A${SCORINGS_AT}`, `Lame cows at the last ${SCORINGS} scorings`, 11);
  const headings = SCORINGS_AT + 1;
  page.headings(`A${headings}`, ["Scored on", "Lame share"]);
  const left = { ...STYLES.computed, horizontal: "left" } as const;
  page.fill(
    `A${headings + 1}`,
    `TAKE(SORT(UNIQUE(Scores[Date])),-${SCORINGS})`,
    [withFormat(left, FORMATS.day)],
    SCORINGS,
  );
  for (let index = 0; index < SCORINGS; index++) {
    const date = below(`A${headings + 1}`, index);
    page.formula(
      below(`B${headings + 1}`, index),
      `HERD.LAME.SHARE(FILTER(Scores[Score],Scores[Date]=${date}),${SCALE})`,
      withFormat(left, FORMATS.share),
    );
  }
  const last = headings + SCORINGS;
  page.chart({
    type: "lines",
    title: "Share of lame cows",
    description: `Line of the share of cows scored 2 or 3 at the last ${SCORINGS} scorings. The numbers stand in A${headings}:B${last}.`,
    over: `D${SCORINGS_AT + 1}:K${SCORINGS_AT + 18}`,
    categories: `Claws!$A$${headings + 1}:$A$${last}`,
    categoryFormat: FORMATS.day,
    valueTitle: "lame",
    valueFormat: "0%",
    series: [{ name: `Claws!$B$${headings}`, values: `Claws!$B$${headings + 1}:$B$${last}`, colour: COLOURS.deep }],
  });
}
