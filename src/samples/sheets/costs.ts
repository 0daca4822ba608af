import { publishedCosts } from "../../core/money/published-costs";
import { costTable } from "../../functions/money/cost-table";
import { printedCosts } from "../../functions/money/kinds";
import type { NewSheet } from "../../xlsx/write-model";
import { COLOURS, STYLES } from "../look";
import { Page } from "../page";
import { settings } from "./settings";

const ROWS = 34;

/** What the new cases of the period cost, by the costs a case that stand beside it. */
export function costsSheet(): NewSheet {
  const page = new Page(
    "Costs",
    "What claw lesions cost",
    "New cases of the period on Claws, times the cost of a case.",
  );
  settings(page, "Costs", "A5", printedCosts(publishedCosts[0]!));
  page.section("A4", "Cost of a case", 5);
  page.section("G4", "In the period", 6);
  const isNew =
    "(HERD.LESION.NEWCASE(Findings[Cow],Findings[Foot],Findings[Lesion],Findings[Date],Claws!$B$6)=1)" +
    "*(Findings[Date]>=Claws!$B$4)*(Findings[Date]<=Claws!$B$5)";
  page.table("G5", `HERD.COST.TABLE(FILTER(Findings[Lesion],${isNew}),Costs[#All])`, costTable, ROWS);
  const notes = [
    "Published costs, as a start: put the farm's own numbers in.",
    "One currency and one year: nothing is converted.",
    "A case's cost holds her lost milk: do not add it to Cells.",
  ];
  notes.forEach((note, index) => page.put(`A${13 + index}`, note, STYLES.note));
  return page.sheet({
    tabColour: COLOURS.deep,
    widths: [12, 15, 11, 9, 26, 3, 10, 34, 10, 15, 13, 14],
    frozenRows: 5,
    print: { landscape: true, pagesDown: 1 },
  });
}
