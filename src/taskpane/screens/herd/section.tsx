import type { ComponentChildren } from "preact";
import { useMemo } from "preact/hooks";
import type { ComputedBlock, ComputedPart } from "../../../blocks/compute";
import { valueText } from "../../format";
import { TextList } from "../../parts/blocks";
import { Fold } from "../../parts/fold";
import { viewOf } from "./part-views/view-of";
import { sectionAnswer } from "./section-answers";

interface BlockSectionProps {
  readonly computed: ComputedBlock;
  /** Whether it is open before the user says so. */
  readonly opened: boolean;
  /** Parts that are not shown. */
  readonly left?: readonly string[];
  /** Drawn before its tables, and at its end. */
  readonly before?: ComponentChildren;
  readonly after?: ComponentChildren;
}

/** A block as a part of the screen: its answer in a line, and below it, once opened, what stands behind it. */
export function BlockSection({ computed, opened, left = [], before, after }: BlockSectionProps) {
  const { block, inputs } = computed;
  const parts = computed.parts.filter(({ part }) => !left.includes(part.id));
  const figures = parts.filter((part) => part.kind === "figure");
  const answer = useMemo(() => sectionAnswer(computed), [computed]);
  const problems = inputs.flatMap(({ problem }) => (problem === undefined ? [] : [problem]));
  return (
    <Fold title={block.title} answer={answer} opened={opened}>
      <p class="quiet">{block.about}</p>
      {problems.length > 0 && <TextList texts={problems} />}
      {figures.length > 0 && (
        <dl class="herd-figures">
          {figures.map((figure) => (
            <FigureLine key={figure.part.id} figure={figure} />
          ))}
        </dl>
      )}
      {before}
      {parts.map((part) => (part.kind === "figure" ? null : <PartView key={part.part.id} part={part} />))}
      <ReadingHelp parts={parts} notes={block.notes} />
      {after}
    </Fold>
  );
}

function FigureLine({ figure: { part, value } }: { readonly figure: Extract<ComputedPart, { kind: "figure" }> }) {
  const isDay = part.format !== undefined && /y/.test(part.format);
  const text = value === null || value === "" ? "–" : valueText(value, isDay ? "date" : "number", part.format);
  return (
    <div class={typeof value === "string" ? "words" : undefined}>
      <dt>
        {part.label}
        {part.note !== undefined && <span class="quiet">{part.note}</span>}
      </dt>
      <dd>
        <b>{text}</b>
        {part.unit !== undefined && ` ${part.unit}`}
      </dd>
    </div>
  );
}

function PartView({ part }: { readonly part: Exclude<ComputedPart, { kind: "figure" }> }) {
  if (part.kind === "refused") {
    const name = part.part.kind === "figure" ? part.part.label : part.part.title;
    return (
      <p class="herd-refused">
        <b>{name}:</b> {part.sentence}
      </p>
    );
  }
  const View = viewOf(part);
  return <View part={part} />;
}

/** What the figures cannot tell, and which rows were left out. */
function ReadingHelp({ parts, notes }: { readonly parts: readonly ComputedPart[]; readonly notes: readonly string[] }) {
  const remarks = new Set(parts.flatMap((part) => (part.kind === "refused" ? [] : part.remarks)));
  const texts = [...notes, ...remarks];
  if (texts.length === 0) return null;
  return (
    <div class="quiet">
      <TextList texts={texts.map((text) => (/[.!?]$/.test(text) ? text : `${text}.`))} />
    </div>
  );
}
