import { SCORING_NOTE } from "../../blocks/herd/scorings";
import { lameSummary } from "../../functions/claws/lame-summary";
import type { NewSheet } from "../../xlsx/write-model";
import { COLOURS, FORMATS, STYLES, withFormat } from "../look";
import { below, Page } from "../page";

const NAME = "Lame cows";
const SCALE = '"0-3"';
const HEADINGS_AT = 12;
/** A year of scorings every second week. */
const SCORINGS = 26;

/** The day of each score. */
export const SCORED_ON = 'FILTER(Scores[Date],ISNUMBER(Scores[Score]),"")';

const left = { ...STYLES.computed, horizontal: "left" } as const;

/** The share of lame cows, last scored and over a year. */
export function lameSheet(): NewSheet {
  const page = new Page(NAME, NAME, "Cows that walked lame when scored; 2 and 3 on the scale 0-3.");
  page.figure("A4", "Last scoring", `HERD.LAME.SCORING(${SCORED_ON})`, FORMATS.day);
  page.table("A6", `HERD.LAME.SUMMARY(FILTER(Scores[Score],Scores[Date]=B4),${SCALE})`, lameSummary, 2);
  page.put("A8", "Who was lame and is not treated yet stands on Due.", STYLES.note);
  page.put("A9", SCORING_NOTE, STYLES.note);
  page.section(`A${HEADINGS_AT - 1}`, `The last ${SCORINGS} scorings`, 3);
  page.headings(`A${HEADINGS_AT}`, ["Scored on", "Lame share"]);
  const first = `A${HEADINGS_AT + 1}`;
  for (let index = 0; index < SCORINGS; index++) {
    const [day, next] = [below(first, index), below(first, index + 1)];
    const before = `IF(${next}="","",IFNA(HERD.LAME.SCORING(${SCORED_ON},${next}-1),""))`;
    page.formula(day, index === SCORINGS - 1 ? "B4" : before, withFormat(left, FORMATS.day));
    const share = `IF(${day}="","",HERD.LAME.SHARE(FILTER(Scores[Score],Scores[Date]=${day}),${SCALE}))`;
    page.formula(below(`B${HEADINGS_AT + 1}`, index), share, withFormat(left, FORMATS.share));
  }
  const last = HEADINGS_AT + SCORINGS;
  const range = (column: string): string => `'${NAME}'!$${column}$${HEADINGS_AT + 1}:$${column}$${last}`;
  page.chart({
    type: "lines",
    title: "Share of lame cows",
    description: `Line of the share of cows scored 2 or 3 at the last ${SCORINGS} scorings. The numbers stand in A${HEADINGS_AT}:B${last}.`,
    over: "D10:L32",
    categories: range("A"),
    categoryFormat: FORMATS.dayOfYear,
    labelEvery: 2,
    valueTitle: "lame",
    valueFormat: "0%",
    series: [{ name: `'${NAME}'!$B$${HEADINGS_AT}`, values: range("B"), colour: COLOURS.deep }],
  });
  return page.sheet({
    tabColour: COLOURS.deep,
    widths: [14, 12, 11, 13, 11, 11, 11, 11, 11, 11, 11, 11],
    frozenRows: 2,
    print: { landscape: true, pagesDown: 1 },
  });
}
