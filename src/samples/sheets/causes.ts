import { causeReview } from "../../functions/claws/cause-review";
import type { NewSheet } from "../../xlsx/write-model";
import { COLOURS, FORMATS, STYLES } from "../look";
import { ALIGNED, Page, resultColumns } from "../page";

const ROWS = 14;
const TABLE_AT = 7;

/** Where in the barn the findings of the period point to. */
export function causesSheet(): NewSheet {
  const page = new Page(
    "Where to look",
    "Where to look",
    "What the lesions, their zones and the cows that have them point to. It ranks; it does not diagnose.",
  );
  page.figure("A4", "From", "Claws!B4", FORMATS.day);
  page.figure("A5", "To", "Claws!B5", FORMATS.day);
  const inPeriod = (column: string): string =>
    `FILTER(Findings[${column}],(Findings[Date]>=$B$4)*(Findings[Date]<=$B$5))`;
  const columns = ["Lesion", "Zone", "Lactation", "Days in milk"].map(inPeriod).join(",");
  const styles = resultColumns(causeReview).map(({ type, format }) => ({
    ...STYLES.computed,
    ...(type === "number" ? ALIGNED.number : ALIGNED.text),
    wrap: true,
    ...(format === undefined ? {} : { numberFormat: format }),
  }));
  page.fill(`A${TABLE_AT}`, `HERD.CAUSE.REVIEW(${columns})`, styles, ROWS, STYLES.computedHeading);
  page.height(TABLE_AT, 31);
  for (let row = TABLE_AT + 1; row < TABLE_AT + ROWS; row++) page.height(row, 62);
  return page.sheet({
    tabColour: COLOURS.deep,
    widths: [26, 44, 44, 9, 11, 24, 34],
    frozenRows: TABLE_AT,
    print: { landscape: true, pagesDown: 1 },
  });
}
