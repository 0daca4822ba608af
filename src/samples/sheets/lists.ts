import { disorders } from "../../core/claws/disorder-key";
import { TREATMENTS } from "../../workbook/tables";
import type { NewName, NewSheet } from "../../xlsx/write-model";
import { COLOURS, STYLES } from "../look";
import { Page } from "../page";
import { LESION_CODES, TABLE_STYLE, TREATMENT_LIST } from "./data-sheet";

const FIRST_ROW = 5;
const SOUND = "none";

/** The words that the tables take. */
export function listsSheet(): NewSheet {
  const page = new Page("Lists", "Lists", "Codes and words that the lists of the other sheets offer.");
  const known = (name: string): string => `IF([@Code]="${SOUND}","",HERD.LESION.${name}([@Code]))`;
  const column = (heading: string, formula?: string) => ({
    heading,
    headingStyle: formula === undefined ? STYLES.heading : STYLES.computedHeading,
    style: formula === undefined ? STYLES.label : STYLES.computed,
    ...(formula === undefined ? {} : { formula }),
  });
  page.addTable({
    name: "Lesions",
    at: "A4",
    styleName: TABLE_STYLE,
    columns: [
      column("Code"),
      column("Lesion", known("NAME")),
      column("Kind", known("GROUP")),
      column("Counted with", known("PARENT")),
    ],
    rows: [SOUND, ...disorders.map(({ code }) => code)].map((code) => [code, null, null, null]),
  });
  page.addTable({
    name: "Treatments",
    at: "F4",
    styleName: TABLE_STYLE,
    columns: [{ ...column("Treatment") }],
    rows: TREATMENTS.map((treatment) => [treatment]),
  });
  page.put(
    "A3",
    "Codes and names: ICAR claw disorder key, quoted from memory. none stands for a cow that was examined and sound.",
    STYLES.note,
  );
  return page.sheet({
    tabColour: COLOURS.grey,
    widths: [10, 36, 14, 14, 3, 28],
    frozenRows: 4,
    print: { landscape: false, titleRows: "4:4" },
  });
}

export const listNames: readonly NewName[] = [
  { name: LESION_CODES, refersTo: `Lists!$A$${FIRST_ROW}:$A$${FIRST_ROW + disorders.length}` },
  { name: TREATMENT_LIST, refersTo: `Lists!$F$${FIRST_ROW}:$F$${FIRST_ROW + TREATMENTS.length - 1}` },
];
