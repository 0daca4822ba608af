import { AS_OF } from "../../workbook/tables";
import type { NewSheet } from "../../xlsx/write-model";
import { AS_OF_DAY } from "../herd/lives";
import { COLOURS, FORMATS, STYLES } from "../look";
import { FARM, Page } from "../page";

const AS_OF_CELL = "B5";
export const asOfName = { name: AS_OF, refersTo: `Start!$${AS_OF_CELL[0]}$${AS_OF_CELL[1]}` };

const TO_TRY: readonly (readonly [who: string, sheet: string, what: string])[] = [
  [
    "Farm secretary",
    "Findings",
    "Click into the first empty row under the table and type a date, a cow, a foot and a lesion, such as 2026-09-01, 321, LH, DD. Her recheck date and its status appear, and she joins the list on Due.",
  ],
  [
    "Adviser",
    "Rules",
    "Change the first recheck of DD from 7 to 5 days: the dates on Findings and Due move. On Targets write a rate for the whole herd: Claws says where it stands.",
  ],
  [
    "Farmer",
    "Prices",
    "Change the price of milk: Cells shows what the counts of the latest test cost in a year, and which cows make most of it.",
  ],
  [
    "Anyone",
    "Claws",
    "Select a figure that a HERD function computes and open Explain in the pane: the numbers that went in, the working, the source, what the figure cannot tell.",
  ],
];

const SHEETS: readonly (readonly [sheet: string, what: string])[] = [
  ["Due", "Feet to look at, routine trims, lame cows not yet treated: for today and the days ahead."],
  ["Claws", "New cases by lesion against targets, by lactation, by month."],
  ["Where to look", "What the findings of the period point to in the barn."],
  ["Lame cows", "The share of lame cows at each scoring."],
  ["Costs", "What the new cases of the period cost, by lesion."],
  ["Cells", "Milk and money that go with high cell counts, the tank, the cows that weigh most."],
  ["Trimming", "Toe lengths, a trimming plan for one foot, dates after a treatment."],
  ["Cows", "The herd, one row a cow."],
  ["Findings", "What was found on feet and what was done."],
  ["Scores", "Mobility scores, every second week."],
  ["Tests", "Monthly milk tests."],
  ["Rules", "Days to each recheck by lesion; days for routine trims."],
  ["Targets", "Rates that the herd should not exceed."],
  ["Prices", "Milk price and others."],
  ["Lists", "Lesion codes and treatments that the lists offer."],
];

const CAUTIONS = [
  "Diagnosis, medicines and courses of treatment are the licensed veterinarian's. A cow that bears no weight, a swollen joint, a dead toe: call today.",
  "Withdrawal times for milk and meat stand on the label; nothing here knows them. Type them in.",
  "Knives and grinders cut people and cows: trained hands, gloves, eye protection. Never cut a claw that is short or a sole that yields.",
  "A list of dates is an aid to memory. Local welfare and transport rules come first.",
  "Milk lost is what published studies found to go with high counts. It is an association, and part of it may be dilution.",
];

/** The first sheet: that the data are invented, the as-of day, what to try, what to beware of. */
export function startSheet(): NewSheet {
  const page = new Page(
    "Start",
    "A herd workbook with HERD functions",
    "Claw health and milk quality in the farm's own spreadsheet.",
  );
  page.paragraph(
    "A3",
    3,
    2,
    `All data in this workbook are invented. ${FARM}, its cows, findings, scores, tests and prices do not exist.`,
    STYLES.banner,
  );
  page.input("A5", "As of", AS_OF_DAY, FORMATS.day);
  page.put(
    "C5",
    "Every sheet counts from this day. In a workbook of your own put =TODAY() here, in this one cell.",
    STYLES.note,
  );
  let row = list(
    page,
    7,
    "What to try",
    TO_TRY.map(([who, sheet, what]) => [{ text: who, sheet }, sheet, what]),
  );
  row = list(
    page,
    row + 1,
    "The sheets",
    SHEETS.map(([sheet, what]) => [{ text: sheet, sheet }, "", what]),
  );
  row = legend(page, row + 1);
  page.section(`A${row + 1}`, "Cautions", 3);
  CAUTIONS.forEach((caution, index) => page.paragraph(`A${row + 2 + index}`, 3, caution.length > 140 ? 2 : 1, caution));
  return page.sheet({
    tabColour: COLOURS.warnInk,
    widths: [24, 14, 92],
    frozenRows: 3,
    print: { landscape: false, pagesDown: 1 },
  });
}

type Line = readonly [{ readonly text: string; readonly sheet: string }, string, string];

function list(page: Page, row: number, title: string, lines: readonly Line[]): number {
  page.section(`A${row}`, title, 3);
  lines.forEach(([{ text, sheet }, second, what], index) => {
    const at = row + 1 + index;
    page.put(`A${at}`, { text, to: `'${sheet}'!A1` }, STYLES.link);
    page.put(`B${at}`, second, { ...STYLES.text, colour: COLOURS.quiet });
    page.put(`C${at}`, what, STYLES.text);
    page.height(at, what.length > 100 ? 31 : 16);
  });
  return row + 1 + lines.length;
}

function legend(page: Page, row: number): number {
  page.section(`A${row}`, "How to read it", 3);
  const lines = [
    ["sand", STYLES.input, "A cell to be changed."],
    ["dark heading", STYLES.heading, "A column that is typed in."],
    ["pale heading", STYLES.computedHeading, "A column or list that formulas fill: leave it alone, it follows."],
    [
      "shows #NAME?",
      STYLES.warn,
      "The Evenfoot add-in, which brings the HERD functions, is not loaded. Load it, then recalculate.",
    ],
  ] as const;
  lines.forEach(([sample, style, what], index) => {
    page.put(`A${row + 1 + index}`, sample, style);
    page.put(`C${row + 1 + index}`, what, STYLES.text);
  });
  return row + 1 + lines.length;
}
