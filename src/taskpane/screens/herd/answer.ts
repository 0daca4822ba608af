import type { ComputedBlock } from "../../../blocks/compute";
import { ENOUGH_EXAMINED } from "../../../blocks/herd/coverage";
import { formatNumber } from "../../format";
import type { CowGroup } from "./choices";
import { type Headline, headlineOf } from "./headline";
import { type LesionTable, lesionTableOf } from "./lesions";
import { BlockFigures } from "../../parts/live-blocks/block-figures";
import { blocksAbout, kindOf } from "./shown-blocks";

/**
 * The lesions of the cows chosen; why they cannot be told; undefined where these cows have no rates, or while they are
 * being computed: the figures of the cows chosen before may still be there.
 */
export function lesionTableIn(
  computed: ReadonlyMap<string, ComputedBlock>,
  group: CowGroup,
): LesionTable | string | undefined {
  const rates = blocksAbout(group).find((block) => kindOf(block) === "lesion-rates");
  const part = rates && computed.get(rates.id)?.parts.find(({ part }) => part.id === "lesions");
  if (part === undefined) return undefined;
  return part.kind === "refused" ? part.sentence : part.kind === "rows" ? lesionTableOf(part.rows) : undefined;
}

/** What the period comes down to; undefined while it is being computed. */
export function answerOf(computed: ReadonlyMap<string, ComputedBlock>, group: CowGroup): Headline | undefined {
  const table = lesionTableIn(computed, group);
  if (table === undefined) return undefined;
  if (typeof table === "string") return { first: "Which lesions dominate cannot be told.", rest: table };
  return headlineOf(table);
}

/** What to make of figures from a part of the herd; undefined where enough cows were examined. */
export function coverageWarning(computed: ComputedBlock | undefined): string | undefined {
  if (computed === undefined) return undefined;
  const figures = new BlockFigures(computed);
  const [milking, examined, share] = ["milking", "examined", "share"].map((id) => figures.number(id));
  if (milking === undefined || examined === undefined || share === undefined || share >= ENOUGH_EXAMINED)
    return undefined;
  const cows = `${formatNumber(examined, "#,##0")} of ${formatNumber(milking, "#,##0")} milking cows`;
  return `${cows} were examined in this time (${formatNumber(share, "0%")}). Below 80 % the shares may not be those of the herd: cows that are lifted because they are lame have more lesions.`;
}
