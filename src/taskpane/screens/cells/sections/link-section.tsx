import { isoDate } from "../../../../core/shared/days";
import { TwoByTwo } from "../../../parts/pictures/two-by-two";
import { type Link, linkOf, linkWords } from "../wording/link-words";
import { Put, Refused, Sentences } from "./parts";
import type { SectionProps } from "./props";

function linkIn({ figures }: SectionProps): Link | undefined {
  const spilled = figures.spilled("link");
  return spilled === undefined ? undefined : linkOf(spilled);
}

export function linkAnswer(props: SectionProps): string | undefined {
  const link = linkIn(props);
  return link === undefined ? props.figures.reason("link") : linkWords(link)[0];
}

/** Lame cows and high counts: four numbers that show what goes together, and no cause. */
export function LinkSection(props: SectionProps) {
  const { figures } = props;
  const link = linkIn(props);
  if (link === undefined) return <Refused sentence={figures.reason("link")} />;
  const scored = figures.input("scored");
  const { lame, sound } = link;
  return (
    <>
      <TwoByTwo
        title={`Scored ${scored === undefined ? "last" : isoDate(scored)}`}
        rows={[
          { name: "lame cows", having: lame.high, not: lame.low },
          { name: "other cows", having: sound.high, not: sound.low },
        ]}
        having="high count"
        not="low count"
      />
      <Sentences texts={linkWords(link).slice(1)} />
      <p class="quiet">Milk lost to lameness and to high counts overlaps in the same cows: do not add the two.</p>
      <Put {...props} />
    </>
  );
}
