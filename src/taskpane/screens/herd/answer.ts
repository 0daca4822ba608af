import type { ComputedBlock } from "../../../blocks/compute";
import { formatNumber } from "../../format";
import { type Headline, headlineOf } from "./headline";
import { type LesionTable, lesionTableOf } from "./lesions";
import { BlockFigures } from "../../parts/live-blocks/block-figures";

/** The table of lesions among the computed blocks. */
export function lesionTableIn(computed: ReadonlyMap<string, ComputedBlock>): LesionTable | string | undefined {
  for (const { parts } of computed.values()) {
    for (const part of parts) {
      if (part.part.kind !== "table" || part.part.of !== "LESION.TABLE") continue;
      return part.kind === "refused" ? part.sentence : part.kind === "rows" ? lesionTableOf(part.rows) : undefined;
    }
  }
  return undefined;
}

/** What the period comes down to; undefined while it is being computed. */
export function answerOf(computed: ReadonlyMap<string, ComputedBlock>): Headline | undefined {
  const table = lesionTableIn(computed);
  if (table === undefined) return undefined;
  if (typeof table === "string") return { first: "Which lesions dominate cannot be told.", rest: table };
  return headlineOf(table);
}

/** Below this share of the milking cows the lesions found may not be those of the herd. Common practice, no source. */
const ENOUGH = 0.8;

/** What to make of figures from a part of the herd; undefined where enough cows were examined. */
export function coverageWarning(computed: ComputedBlock | undefined): string | undefined {
  if (computed === undefined) return undefined;
  const figures = new BlockFigures(computed);
  const [milking, examined, share] = ["milking", "examined", "share"].map((id) => figures.number(id));
  if (milking === undefined || examined === undefined || share === undefined || share >= ENOUGH) return undefined;
  const cows = `${formatNumber(examined, "#,##0")} of ${formatNumber(milking, "#,##0")} milking cows`;
  return `${cows} were examined in this time (${formatNumber(share, "0%")}). Below 80 % the shares may not be those of the herd: cows that are lifted because they are lame have more lesions.`;
}
