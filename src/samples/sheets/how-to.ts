import { USUAL_GAP_DAYS } from "../../core/claws/new-cases";
import { AS_OF } from "../../workbook/tables";
import type { NewSheet } from "../../xlsx/write-model";
import { COLOURS, FORMATS, STYLES } from "../look";
import { Page } from "../page";

const HOW_TO = "Start";

/** Cells of the template that every block follows, by the name of the input. */
export const COMMON_INPUTS: Readonly<Record<string, string>> = {
  from: `${HOW_TO}!$B$6`,
  to: `${HOW_TO}!$B$7`,
  gapDays: `${HOW_TO}!$B$8`,
};

const STEPS: readonly string[] = [
  "Save this file under the client's name. Keep the empty one.",
  "Cows: one row for each cow. Then Findings, Scores and Tests: one row for each finding, score and milk test. Paste or type below the headings.",
  "A client who has a book already: in the pane, Set up copies the findings over and lists what it left out, and why.",
  "Rules, Targets, Prices, Costs: what stands there is published or empty. Put the farm's own numbers in; every figure follows.",
  "The figures show #N/A until their rows are there. Hold the pointer on the mark, or select the cell and open Explain, to read what is missing.",
  "Before a visit: in the pane, Set up checks the book for doubtful cells. Then Herd, Cells and Costs, or the sheets named below.",
];

const CAUTIONS: readonly string[] = [
  "Diagnosis, medicines and courses of treatment are the licensed veterinarian's. A cow that bears no weight, a swollen joint, a dead toe: call today.",
  "Withdrawal times for milk and meat stand on the label; nothing here knows them. Type them in.",
  "Knives and grinders cut people and cows: trained hands, gloves, eye protection. Never cut a claw that is short or a sole that yields.",
  "Milk lost is what published studies found to go with high counts. It is an association, and part of it may be dilution.",
];

/** A sheet named, and what stands on it. */
export interface SheetNote {
  readonly sheet: string;
  readonly about: string;
}

/** The first sheet of a template: the day, the period that all blocks follow, the steps, the sheets, the cautions. */
export function howToSheet(data: readonly SheetNote[], blocks: readonly SheetNote[]): NewSheet {
  const page = new Page(HOW_TO, "A herd workbook for a client", "Empty: it fills from the farm's own rows.");
  page.input("A5", "As of", { formula: "TODAY()" }, FORMATS.day);
  page.put("C5", "Every sheet counts from this day. For a visit write its date here.", STYLES.note);
  page.input("A6", "Period from", { formula: `EDATE(${AS_OF},-12)` }, FORMATS.day);
  page.put("C6", "The year up to yesterday, unless you write other days.", STYLES.note);
  page.input("A7", "Period to", { formula: `${AS_OF}-1` }, FORMATS.day);
  page.input("A8", "A repeat within, days", USUAL_GAP_DAYS);
  page.put("C8", "A record of the same lesion on the same foot within these days is the same case. A setting, no standard.", STYLES.note); // oxfmt-ignore
  let row = 10;
  row = numbered(page, row, "How to use it", STEPS);
  row = links(page, row + 1, "What is typed in", data);
  row = links(page, row + 1, "What follows by itself", blocks);
  numbered(page, row + 1, "Cautions", CAUTIONS);
  return page.sheet({
    tabColour: COLOURS.warnInk,
    widths: [24, 14, 100],
    frozenRows: 2,
    print: { landscape: false, pagesDown: 1 },
  });
}

/** Characters that fit on a line over the three columns. */
const LINE = 150;

function numbered(page: Page, row: number, title: string, lines: readonly string[]): number {
  page.section(`A${row}`, title, 3);
  lines.forEach((line, index) => page.paragraph(`A${row + 1 + index}`, 3, line.length > LINE ? 2 : 1, line));
  return row + 1 + lines.length;
}

function links(page: Page, row: number, title: string, notes: readonly SheetNote[]): number {
  page.section(`A${row}`, title, 3);
  notes.forEach(({ sheet, about }, index) => {
    const at = row + 1 + index;
    page.put(`A${at}`, { text: sheet, to: `'${sheet.replace(/'/g, "''")}'!A1` }, STYLES.link);
    page.put(`C${at}`, about, STYLES.text);
  });
  return row + 1 + notes.length;
}
