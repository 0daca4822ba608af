import { cellChange } from "../../functions/cells/cell-change";
import { cellSummary } from "../../functions/cells/cell-summary";
import { cellTop } from "../../functions/cells/cell-top";
import type { CellValue } from "../../functions/cell";
import type { NewSheet } from "../../xlsx/write-model";
import { COLOURS, FORMATS, STYLES, withFormat } from "../look";
import { ALIGNED, below, Page } from "../page";

const SUMMARY_AT = 13;
const CHANGES_AT = 38;
const TESTS_AT = 51;
/** Last on the sheet: the list is as long as the user asks for. */
const TOP_AT = 68;
/** A year of monthly tests and the two before it. */
const TESTS = 14;

const left = { ...STYLES.computed, horizontal: "left" } as const;

/** A column of the Tests table at one test. */
function ofTest(column: string, day: string): string {
  return `FILTER(Tests[${column}],Tests[Date]=${day})`;
}

/** What high cell counts go with: milk, money, and which cows. */
export function cellsSheet(): NewSheet {
  const page = new Page("Cells", "Cells", "What the cell counts of the latest test stand for, and how they moved.");
  page.figure("A4", "Latest test", "MAX(Tests[Date])", FORMATS.day);
  page.input("A5", "Days", 365);
  page.put("C5", "365 if so many cows are in milk every day; 305 if the dry ones are counted too.", STYLES.note);
  page.figure("A6", "Milk price, a litre", 'XLOOKUP("Milk",Prices[Item],Prices[Price])', FORMATS.money);
  page.put("C6", "Change it on the Prices sheet.", STYLES.note);
  const [counts, lactations, milk] = ["Count", "Lactation", "Milk kg"].map((column) => ofTest(column, "$B$4"));
  page.figure(
    "A8",
    "Milk lost over those days, litres",
    `HERD.CELL.HERDLOSS(${counts},${lactations},B5)`,
    FORMATS.whole,
  );
  page.figure("A9", "Its price", `HERD.CELL.HERDCOST(${counts},${lactations},B5,B6)`, FORMATS.whole);
  page.figure("A10", "Tank estimate, thousand cells/mL", `HERD.TANK.ESTIMATE(${counts},${milk})`, FORMATS.whole);
  page.put(
    "C8",
    "Milk that goes with high counts; part of it may be dilution. It is not milk that comes back next week.",
    STYLES.note,
  );
  page.section(`A${SUMMARY_AT - 1}`, "The latest test in full, low to high between published models", 4);
  summary(page, `HERD.CELL.SUMMARY(${counts},${lactations},${milk},B5,B6)`);
  changes(page);
  byTest(page);
  top(page);
  return page.sheet({
    tabColour: "#4F8A8B",
    widths: [34, 15, 13, 17, 16, 19, 20, 3, 12, 12, 12, 12, 12, 12],
    frozenRows: 2,
    print: { landscape: true, pagesDown: 2 },
  });
}

/** The rows of the summary are of different units; their order and units are those of the function's own example. */
function summary(page: Page, formula: string): void {
  const at = `A${SUMMARY_AT}`;
  const [example] = cellSummary.examples;
  const rows = example?.result as readonly (readonly CellValue[])[];
  page.table(at, formula, cellSummary, rows.length);
  rows.slice(1).forEach(([figure, , unit], index) => {
    const format = figure === CENTRAL_A_COW ? FORMATS.two : (UNIT_FORMATS[String(unit)] ?? FORMATS.whole);
    page.put(below(`B${SUMMARY_AT}`, index + 1), null, { ...STYLES.computed, ...ALIGNED.number, numberFormat: format });
  });
}

const CENTRAL_A_COW = "central, a cow and day";
const UNIT_FORMATS: Readonly<Record<string, string>> = { share: FORMATS.share, score: FORMATS.two };

function byTest(page: Page): void {
  page.section(`A${TESTS_AT}`, `The last ${TESTS} tests`, 7);
  const headings = TESTS_AT + 1;
  page.headings(`A${headings}`, ["Test", "Geometric mean", "Tank estimate", "Litres lost a day"]);
  page.fill(`A${headings + 1}`, `TAKE(SORT(UNIQUE(Tests[Date])),-${TESTS})`, [withFormat(left, FORMATS.day)], TESTS);
  for (let index = 0; index < TESTS; index++) {
    const day = `$A${headings + 1 + index}`;
    const [counts, lactations, milk] = ["Count", "Lactation", "Milk kg"].map((column) => ofTest(column, day));
    const whole = withFormat(left, FORMATS.whole);
    page.formula(below(`B${headings + 1}`, index), `HERD.CELL.MEAN(${counts})`, whole);
    page.formula(below(`C${headings + 1}`, index), `HERD.TANK.ESTIMATE(${counts},${milk})`, whole);
    page.formula(below(`D${headings + 1}`, index), `HERD.CELL.HERDLOSS(${counts},${lactations},1)`, whole);
  }
  const last = headings + TESTS;
  const range = (column: string): string => `Cells!$${column}$${headings + 1}:$${column}$${last}`;
  const name = (column: string): string => `Cells!$${column}$${headings}`;
  page.chart({
    type: "lines",
    title: "Cell counts by test",
    description: `Two lines over ${TESTS} monthly tests, in thousand cells/mL: the tank estimate above, the geometric mean of the cows below. The numbers stand in A${headings}:C${last}.`,
    over: "I3:N20",
    categories: range("A"),
    categoryFormat: FORMATS.month,
    valueTitle: "thousand cells/mL",
    valueFormat: "0",
    series: [
      { name: name("C"), values: range("C"), colour: COLOURS.deep },
      { name: name("B"), values: range("B"), colour: COLOURS.amber, dashed: true },
    ],
  });
  page.chart({
    type: "columns",
    title: "Milk that goes with high counts, litres a day",
    description: `Columns of the litres lost a day at each of ${TESTS} monthly tests. The numbers stand in A${headings}:D${last}.`,
    over: "I22:N37",
    categories: range("A"),
    categoryFormat: FORMATS.month,
    valueTitle: "litres a day",
    valueFormat: "0",
    series: [{ name: name("D"), values: range("D"), colour: COLOURS.deep }],
  });
}

function changes(page: Page): void {
  page.section(`A${CHANGES_AT}`, "Against the test before", 7);
  page.figure(`A${CHANGES_AT + 1}`, "Test before", 'MAXIFS(Tests[Date],Tests[Date],"<"&B4)', FORMATS.day);
  const before = `$B$${CHANGES_AT + 1}`;
  // A cow stands once in each test; one without a test before, or without a count in it, gets 0, which is no count.
  const previous = `SUMIFS(Tests[Count],Tests[Cow],${ofTest("Cow", "$B$4")},Tests[Date],${before})`;
  page.table(`A${CHANGES_AT + 2}`, `HERD.CELL.CHANGE(${previous},${ofTest("Count", "$B$4")})`, cellChange, 10);
}

function top(page: Page): void {
  page.section(`A${TOP_AT}`, "The cows with the greatest loss at the latest test", 7);
  page.input(`A${TOP_AT + 1}`, "Cows to list", 10);
  const columns = ["Cow", "Count", "Lactation", "Milk kg"].map((column) => ofTest(column, "$B$4")).join(",");
  page.height(TOP_AT + 2, 31);
  page.table(`A${TOP_AT + 2}`, `HERD.CELL.TOP(${columns},B${TOP_AT + 1},B6)`, cellTop, 21);
}
