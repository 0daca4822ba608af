import { recheckList } from "../../functions/claws/recheck-list";
import { AS_OF } from "../../workbook/tables";
import type { NewSheet } from "../../xlsx/write-model";
import { COLOURS, FORMATS, STYLES, withFormat } from "../look";
import { Page } from "../page";
import { SCORED_ON } from "./lame";

const FIRST_ROW = 11;
/** Rows that a list may fill and still look right. */
const ROWS = 60;
const LAST_ROW = FIRST_ROW + ROWS;

/** What has to be done on the as-of day and in the days after it. */
export function dueSheet(): NewSheet {
  const page = new Page(
    "Due",
    "What is due",
    "A list for the parlour wall: print it in the morning. It grows and shrinks by itself.",
  );
  page.figure("A4", "As of", AS_OF, FORMATS.day);
  page.input("A5", "Days ahead, feet", 7);
  page.input("A6", "Days ahead, trims", 28);
  const over = `E${FIRST_ROW + 1}:E${LAST_ROW}`;
  page.figure("D4", "Overdue", `COUNTIF(${over},">0")`);
  page.figure("D5", "Today", `COUNTIF(${over},0)`);
  page.figure("D6", "To come", `COUNTIF(${over},"<0")`);
  feet(page);
  trims(page);
  lame(page);
  return page.sheet({
    tabColour: COLOURS.amber,
    widths: [18, 12, 28, 12, 11, 3, 9, 10, 12, 12, 3, 9, 9],
    frozenRows: FIRST_ROW,
    print: { landscape: true, titleRows: `${FIRST_ROW}:${FIRST_ROW}` },
  });
}

function feet(page: Page): void {
  page.section(`A${FIRST_ROW - 2}`, "Feet to look at", 5);
  page.put(`A${FIRST_ROW - 1}`, "Open findings by the days under Rules, the longest overdue first.", STYLES.note);
  const of = (...names: string[]): string => names.map((name) => `Findings[${name}]`).join(",");
  const findings = of("Cow", "Foot", "Lesion", "Date", "Treatment", "Closed on");
  const formula = `HERD.RECHECK.LIST(${findings},${AS_OF},Rules[#All],B5,${of("Seen again", "Next look")})`;
  page.table(`A${FIRST_ROW}`, formula, recheckList, ROWS);
  const days = `$E${FIRST_ROW + 1}`;
  const area = `A${FIRST_ROW + 1}:E${LAST_ROW}`;
  page.highlight({ area, formula: `AND(ISNUMBER(${days}),${days}>0)`, style: STYLES.warn });
  page.highlight({ area, formula: `AND(ISNUMBER(${days}),${days}=0)`, style: { bold: true } });
}

function trims(page: Page): void {
  page.section(`G${FIRST_ROW - 2}`, "Routine trims", 4);
  page.put(`G${FIRST_ROW - 1}`, "Cows here by their next trim.", STYLES.note);
  page.headings(`G${FIRST_ROW}`, ["Cow", "Group", "Last trim", "Next trim"]);
  const wanted = `(Cows[Left]="")*ISNUMBER(Cows[Next trim])*(Cows[Next trim]<=${AS_OF}+B6)`;
  const cell = { ...STYLES.computed, horizontal: "left" } as const;
  const day = withFormat(cell, FORMATS.day);
  page.fill(
    `G${FIRST_ROW + 1}`,
    `IFERROR(SORT(FILTER(HSTACK(Cows[Cow],Cows[Group],IF(Cows[Last trim]="","",Cows[Last trim]),Cows[Next trim]),${wanted}),4),"none")`,
    [cell, cell, day, day],
    ROWS,
  );
}

function lame(page: Page): void {
  page.section(`L${FIRST_ROW - 2}`, "Lame, not treated", 2);
  page.put(`L${FIRST_ROW - 1}`, "Lame at the last scoring of the herd, no open finding.", STYLES.note);
  page.headings(`L${FIRST_ROW}`, ["Cow", "Score"]);
  const cell = { ...STYLES.computed, horizontal: "left" } as const;
  const formula = [
    `LET(last,HERD.LAME.SCORING(${SCORED_ON})`,
    `lame,FILTER(Scores[[Cow]:[Score]],(Scores[Date]=last)*ISNUMBER(Scores[Score])*(Scores[Score]>=2))`,
    `open,FILTER(Findings[Cow],(Findings[Closed on]="")*(Findings[Lesion]<>"none"),0)`,
    `IFERROR(SORT(FILTER(lame,ISNA(MATCH(CHOOSECOLS(lame,1),open,0))),2,-1),"none"))`,
  ].join(",");
  page.fill(`L${FIRST_ROW + 1}`, formula, [cell, cell], ROWS);
}
