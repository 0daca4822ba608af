import { isoDate } from "../../../../core/shared/days";
import { FAUTEUX_LEVELS } from "../../../../core/reference/fauteux-2014";
import { counted } from "../../../format";
import { IntervalBars } from "../../../parts/pictures/interval-bars";
import { CHANGE_NAMES, type ShareRow, shareRows } from "../wording/change-words";
import { shareText } from "../wording/money";
import { FieldOf, Put, Refused } from "./parts";
import type { SectionProps } from "./props";

/** Rows of the function that the picture shows; the others follow from them. */
const DRAWN = ["new", "recovered", "lasting", "high now"] as const;
const DRY_DRAWN = ["new", "cured", "high both times", "first calvers high"] as const;

export function changesAnswer({ figures }: SectionProps): string | undefined {
  const rows = rowsIn(figures.spilled("changes"));
  const [fresh, recovered, lasting] = DRAWN.map((name) => rows.find((row) => row.name === name));
  if (fresh === undefined || recovered === undefined || lasting === undefined) return figures.reason("changes");
  return `${counted(fresh.cows, "new case")}, ${recovered.cows} recovered, ${lasting.cows} lasting.`;
}

/** What became of the cows since the test before. */
export function Changes(props: SectionProps) {
  const { figures } = props;
  const before = figures.number("before");
  return (
    <>
      {figures.isComputed && (
        <p>
          {before === undefined
            ? "There is no test before this one: every cow counts as tested for the first time."
            : `Against the test of ${isoDate(before)}.`}
        </p>
      )}
      <FieldOf {...props} field="limit" label="High from, thousand/mL" />
      <Shares {...props} part="changes" title="Cows of those at risk" drawn={DRAWN} />
      <p class="quiet">
        Published means a month in lactation: {shareText(FAUTEUX_LEVELS.newPerMonth)} of low cows new,{" "}
        {shareText(FAUTEUX_LEVELS.curePerMonth)} of high cows recovered (Fauteux 2014). Leave the count before out of a
        cow that calved in between.
      </p>
      <Put {...props} />
    </>
  );
}

export function dryAnswer({ figures }: SectionProps): string | undefined {
  const rows = rowsIn(figures.spilled("dry"));
  const [fresh, cured] = DRY_DRAWN.map((name) => rows.find((row) => row.name === name));
  if (fresh === undefined || cured === undefined) return figures.reason("dry");
  const of = ({ cows, of: all }: ShareRow): string => `${cows} of ${all ?? 0}`;
  return `${of(fresh)} low cows came back high, ${of(cured)} high cows came back low.`;
}

/** What the dry period brought and cured. */
export function Dry(props: SectionProps) {
  return (
    <>
      <p>{props.figures.computed.block.about}</p>
      <Shares {...props} part="dry" title="Cows of those at risk" drawn={DRY_DRAWN} />
      <p class="quiet">
        The last test before calving against the first from day 5 on; in the first days the count is high by nature.
        Published: {shareText(FAUTEUX_LEVELS.dryHealthy)} of cows low both times, {shareText(FAUTEUX_LEVELS.dryLasting)}{" "}
        high both times (Fauteux 2014).
      </p>
      <Put {...props} />
    </>
  );
}

interface SharesProps extends SectionProps {
  readonly part: string;
  readonly title: string;
  readonly drawn: readonly string[];
}

function Shares({ figures, part, title, drawn }: SharesProps) {
  const rows = rowsIn(figures.spilled(part)).filter(({ name }) => drawn.includes(name));
  if (rows.length === 0) return <Refused sentence={figures.reason(part)} />;
  const leftOut = figures.remarks(part);
  return (
    <>
      <IntervalBars
        title={title}
        unit="share of the cows"
        format="0%"
        rowsAre="Cows"
        rows={rows.map(({ name, cows, of, share, low, high, note }) => ({
          label: nameIn(part, name),
          value: share,
          low,
          high,
          remark: `${cows} of ${of ?? 0} ${note.replace(/^of /, "")}`,
        }))}
      />
      {leftOut.map((text) => (
        <p key={text} class="quiet">
          {text}.
        </p>
      ))}
    </>
  );
}

function nameIn(part: string, name: string): string {
  if (part === "dry" && name === "new") return "New: dried off low, high after calving";
  return CHANGE_NAMES[name] ?? name;
}

function rowsIn(spilled: Parameters<typeof shareRows>[0] | undefined): readonly ShareRow[] {
  return spilled === undefined ? [] : shareRows(spilled);
}
