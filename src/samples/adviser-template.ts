import type { Block } from "../blocks/block";
import { gallery } from "../blocks/gallery";
import { months } from "../blocks/herd/months";
import { ownReferences } from "../blocks/references/own";
import type { TableInfo } from "../workbook/table-port";
import { day } from "../core/shared/days";
import { publishedCosts } from "../core/money/published-costs";
import { printedCosts } from "../functions/money/kinds";
import { registry } from "../functions/registry";
import type { TableDefinition } from "../workbook/table-definition";
import { cowsTable, findingsTable, scoresTable, testsTable } from "../workbook/tables";
import type { NewSheet, NewWorkbook } from "../xlsx/write-model";
import { ACCENTS, COLOURS, STYLES } from "./look";
import { Page } from "./page";
import { blockSheet } from "./sheets/block-sheet";
import { dataSheet } from "./sheets/data-sheet";
import { COMMON_INPUTS, howToSheet } from "./sheets/how-to";
import { listNames, listsSheet } from "./sheets/lists";
import { pricesSheet, rulesSheet, settings, targetsSheet } from "./sheets/settings";
import { asOfName } from "./sheets/start";

const MADE = day("2026-09-01");
const FOOTER = "&C&A&RPage &P of &N";

const DATA: readonly TableDefinition[] = [cowsTable, findingsTable, scoresTable, testsTable];

/** An empty workbook for a client: the lists, the settings, and every block of the gallery on a sheet of its own. */
export function adviserTemplate(): NewWorkbook {
  const lists = [...DATA.map(emptySheet), rulesSheet(), targetsSheet(), pricesSheet(), costsSheet(), listsSheet()];
  const blocks = blockSheets(lists);
  const about = new Map(DATA.map((table) => [table.name, table.about]));
  return {
    title: "A herd workbook for a client",
    description: "Empty lists, settings and live figures.",
    author: "Evenfoot",
    made: MADE,
    accents: ACCENTS,
    names: [asOfName, ...listNames],
    sheets: [
      howToSheet(
        lists.map(({ name }) => ({ sheet: name, about: about.get(name) ?? SETTINGS[name] ?? "" })),
        blocks.map(({ sheet, about: what }) => ({ sheet: sheet.name, about: what })),
      ),
      ...blocks.map(({ sheet }) => sheet),
      ...lists,
    ].map((sheet) => ({ ...sheet, print: { ...sheet.print, footer: FOOTER } })),
  };
}

const SETTINGS: Readonly<Record<string, string>> = {
  Rules: "Days to each recheck by lesion; days for routine trims.",
  Targets: "Rates that the herd should not exceed.",
  Prices: "Milk price and others: an example stands there, write the farm's own over it.",
  Costs: "What a case costs, by lesion: published, as a start.",
  Lists: "Lesion codes and treatments that the lists offer.",
};

function emptySheet(table: TableDefinition): NewSheet {
  return dataSheet({
    table,
    rows: [{}],
    title: table.name,
    tabColour: COLOURS.grey,
    widths: { note: 34, treatment: 24, measuredFrom: 14, status: 14, toeAdvice: 22 },
    frozenColumns: 2,
    landscape: table.columns.length > 8,
  });
}

function costsSheet(): NewSheet {
  const page = new Page("Costs", "Costs", "What a case costs. Published, as a start: put the farm's own numbers in.");
  settings(page, "Costs", "A4", printedCosts(publishedCosts[0]!));
  const notes = [
    "One currency and one year: nothing is converted.",
    "A case's cost holds her lost milk: do not add it to what high cell counts cost.",
  ];
  notes.forEach((note, index) => page.put(`G${4 + index}`, note, STYLES.note));
  return page.sheet({
    tabColour: COLOURS.sandEdge,
    widths: [12, 15, 11, 9, 26, 3, 60],
    frozenRows: 4,
    print: { landscape: true, pagesDown: 1 },
  });
}

/** Sheets whose block has a title longer than a sheet's name may be, by the id of the block. */
const SHORT_NAMES: Readonly<Record<string, string>> = {
  "lesion-rates": "Lesions and rates",
  "lesion-shares": "Lesions and shares",
  "lesions-by-lactation": "Heifers first",
  "new-and-repeat": "New and repeated cases",
  "horn-and-infectious": "Infectious and horn",
  "yearly-bill": "Milk and money",
  "against-before": "Against the time before",
  "legal-limit": "Three-month mean",
  "cell-changes": "New and lasting cases",
  "tank-and-cows": "Tank and average cow",
  "side-by-side": "Lameness beside counts",
};

/** It shows whole months, fourteen of them: the period of the first sheet begins and ends within one. */
const WHOLE_MONTHS = months.id;

/** The cell of the first sheet that an input follows. */
function linkOf({ id }: Block, input: string): readonly (readonly [input: string, cell: string])[] {
  const cell = COMMON_INPUTS[input];
  const isOwnPeriod = id === WHOLE_MONTHS && (input === "from" || input === "to");
  return cell === undefined || isOwnPeriod ? [] : [[input, cell]];
}

function blockSheets(lists: readonly NewSheet[]): readonly { readonly sheet: NewSheet; readonly about: string }[] {
  const references = ownReferences(lists.flatMap(tablesOf), true);
  const specs = new Map(registry.map((spec) => [spec.id, spec]));
  return gallery.map((block) => {
    const linked = Object.fromEntries(block.inputs.flatMap(({ name }) => linkOf(block, name)));
    const name = SHORT_NAMES[block.id] ?? block.title;
    return {
      sheet: blockSheet(name, block, { references, specOf: (id) => specs.get(id)!, linked }),
      about: block.about,
    };
  });
}

function tablesOf({ name: sheet, tables }: NewSheet): TableInfo[] {
  return tables.map(({ name, columns, rows }) => ({
    name,
    sheet,
    columns: columns.map(({ heading, formula }) => ({ heading, calculated: formula !== undefined })),
    rowCount: rows.length,
  }));
}
