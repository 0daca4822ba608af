import { defaultRecheckRules } from "../core/claws/recheck-rules";
import { cowsTable, findingsTable, scoresTable, testsTable } from "../workbook/tables";
import { cellAddress } from "../xlsx/address";
import type { NewSheet, NewWorkbook } from "../xlsx/write-model";
import { type InventedHerd, inventedHerd } from "./herd/invented-herd";
import { AS_OF_DAY } from "./herd/lives";
import { ACCENTS, COLOURS, STYLES } from "./look";
import { FARM } from "./page";
import { causesSheet } from "./sheets/causes";
import { cellsSheet } from "./sheets/cells";
import { clawsSheet } from "./sheets/claws";
import { costsSheet } from "./sheets/costs";
import { dataSheet } from "./sheets/data-sheet";
import { dueSheet } from "./sheets/due";
import { lameSheet } from "./sheets/lame";
import { listNames, listsSheet } from "./sheets/lists";
import { pricesSheet, rulesSheet, targetsSheet } from "./sheets/settings";
import { asOfName, startSheet } from "./sheets/start";
import { trimmingSheet } from "./sheets/trimming";

/** The sample workbook: a year of an invented herd, every figure computed by formulas. */
export function herdWorkbook(): NewWorkbook {
  return {
    title: `${FARM}: a sample herd workbook`,
    description: "All data are invented.",
    author: "Evenfoot",
    made: AS_OF_DAY,
    accents: ACCENTS,
    names: [asOfName, ...listNames],
    sheets: [
      startSheet(),
      dueSheet(),
      clawsSheet(),
      causesSheet(),
      lameSheet(),
      costsSheet(),
      cellsSheet(),
      trimmingSheet(),
      ...dataSheets(inventedHerd(defaultRecheckRules)),
      rulesSheet(),
      targetsSheet(),
      pricesSheet(),
      listsSheet(),
    ],
  };
}

const DATA_TAB = COLOURS.grey;
/** Width of a column that is as narrow as its heading allows. */
const AS_HEADING = 0;

function dataSheets({ cows, findings, scores, tests }: InventedHerd): NewSheet[] {
  return [
    dataSheet({
      table: cowsTable,
      rows: cows,
      title: "Cows",
      tabColour: DATA_TAB,
      widths: { cow: 9 },
      frozenColumns: 1,
      landscape: false,
    }),
    dataSheet({
      table: findingsTable,
      rows: findings,
      title: "Findings",
      tabColour: DATA_TAB,
      widths: {
        cow: AS_HEADING,
        foot: AS_HEADING,
        claw: AS_HEADING,
        zone: AS_HEADING,
        lesion: AS_HEADING,
        stage: AS_HEADING,
        measuredFrom: 14,
        treatment: 24,
        outcome: 13,
        note: 34,
        status: 14,
        toeAdvice: 22,
      },
      frozenColumns: 2,
      landscape: true,
      highlights: [{ formula: `LEFT($${columnOf("status")}5,7)="overdue"`, style: STYLES.warn }],
    }),
    dataSheet({
      table: scoresTable,
      rows: scores,
      title: "Mobility scores",
      tabColour: DATA_TAB,
      widths: {},
      frozenColumns: 2,
      landscape: false,
    }),
    dataSheet({
      table: testsTable,
      rows: tests,
      title: "Milk tests",
      tabColour: DATA_TAB,
      widths: {},
      frozenColumns: 2,
      landscape: false,
    }),
  ];
}

/** Letters of the column of a finding that holds this. */
function columnOf(key: (typeof findingsTable.columns)[number]["key"]): string {
  const place = findingsTable.columns.findIndex((column) => column.key === key);
  return cellAddress(0, place).replace(/\d+$/, "");
}
