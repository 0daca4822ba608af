import type { FunctionComponent } from "preact";
import type { ComputedRows } from "../rows";
import { ByGroup } from "./by-group";
import { Causes } from "./causes";
import { LameSummary } from "./lame-summary";
import { LameTrend } from "./lame-trend";
import { LesionRates } from "./lesion-rates";
import { LesionShares } from "./lesion-shares";
import { Months } from "./months";
import { PlainRows } from "./plain-rows";
import { RepeatCows } from "./repeat-cows";
import type { RowsViewProps } from "./view-props";

/** How the result of a worksheet function is shown. */
const VIEWS: Readonly<Record<string, FunctionComponent<RowsViewProps>>> = {
  "LESION.TABLE": LesionRates,
  "LESION.SHARES": LesionShares,
  "LESION.MONTHS": Months,
  "LESION.BYGROUP": ByGroup,
  "COW.REPEATS": RepeatCows,
  "CAUSE.REVIEW": Causes,
  "LAME.SUMMARY": LameSummary,
};

/** The view of a table or series; without one of its own it is shown as rows. */
export function viewOf({ part }: ComputedRows): FunctionComponent<RowsViewProps> {
  if (part.kind === "table") return VIEWS[part.of] ?? PlainRows;
  return part.columns.some(({ heading }) => /lame/i.test(heading)) ? LameTrend : PlainRows;
}
