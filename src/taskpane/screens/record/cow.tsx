import type { MobilityScale } from "../../../core/claws/mobility";
import { Note, Section, TextList } from "../../parts/blocks";
import { Choices, fieldId, TextField } from "./controls";
import { scaleOf } from "./mobility";
import type { Notice } from "./notices";
import { bound, type PartProps } from "./parts";
import { cowToTake, suggestedCows } from "./suggestions";

const LIST = `${fieldId("cow")}-list`;

/** The cow: found by what is typed, then what the workbook tells of her. */
export function CowPart(props: PartProps) {
  const { state, content, send } = props;
  const { entry, herd, phase } = state;
  const cows = phase.kind === "typing" ? suggestedCows(state) : [];
  const reached = cowToTake(state);
  return (
    <>
      <TextField
        {...bound(props, "cow", "Cow")}
        value={entry.cowText}
        hint={herd === undefined ? "Reading the workbook ..." : "Number or name, then Enter"}
        extra={{
          role: "combobox",
          "aria-expanded": cows.length > 0,
          "aria-controls": LIST,
          "aria-autocomplete": "list",
          "aria-activedescendant": cows[reached] === undefined ? undefined : `${LIST}-${reached}`,
        }}
      />
      <ul id={LIST} class="suggestions" role="listbox" aria-label="Cows" hidden={cows.length === 0}>
        {cows.map((cow, index) => (
          <li
            key={cow.name}
            id={`${LIST}-${index}`}
            role="option"
            aria-selected={index === reached}
            onPointerDown={(event) => event.preventDefault()}
            onClick={() => send({ type: "chose", field: "cow", value: cow.name })}
          >
            <strong>{cow.name}</strong>
            <small>
              {[
                cow.lactation === null ? "" : `lactation ${cow.lactation}`,
                cow.left === null ? (cow.group ?? "") : "left the herd",
              ]
                .filter((part) => part !== "")
                .join(" · ")}
            </small>
          </li>
        ))}
      </ul>
      {content.at !== undefined && <CowFactsCard {...props} />}
    </>
  );
}

function CowFactsCard({ state, content }: PartProps) {
  return (
    <Section title={`Cow ${content.at?.cow?.name ?? state.entry.cow}`} strong>
      <p>{content.cowLine}</p>
      {content.open.length > 0 && (
        <>
          <h3>Open</h3>
          <Lines lines={content.open} />
        </>
      )}
      {content.earlier.length > 0 && (
        <>
          <h3>Before</h3>
          <Lines lines={content.earlier} />
        </>
      )}
      <Notices notices={content.past} />
    </Section>
  );
}

function Lines({ lines }: { readonly lines: readonly string[] }) {
  return (
    <ul class="lines">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

export function Notices({ notices }: { readonly notices: readonly Notice[] }) {
  return (
    <>
      {notices.map(({ kind, title, texts }) => (
        <Note key={title} kind={kind} title={title}>
          <TextList texts={texts} />
        </Note>
      ))}
    </>
  );
}

/** A score and its word. */
type Step = readonly [score: string, word: string];

/** The words of the scales: 0-3 Reader et al. 2011; 1-5 Sprecher et al. 1997, half points Flower & Weary 2006. */
const SCORES: Readonly<Record<MobilityScale, { readonly columns: 3 | 4; readonly steps: readonly Step[] }>> = {
  "0-3": {
    columns: 4,
    steps: [
      ["0", "good"],
      ["1", "imperfect"],
      ["2", "lame"],
      ["3", "severe"],
    ],
  },
  "1-5": {
    columns: 3,
    steps: [
      ["1", "normal"],
      ["1.5", "1 to 2"],
      ["2", "mildly lame"],
      ["2.5", "2 to 3"],
      ["3", "moderate"],
      ["3.5", "3 to 4"],
      ["4", "lame"],
      ["4.5", "4 to 5"],
      ["5", "severe"],
    ],
  },
};

export function ScorePart(props: PartProps) {
  const { columns, steps } = SCORES[scaleOf(props.state)];
  return (
    <Choices
      {...bound(props, "score", "Mobility score before trimming")}
      value={props.state.entry.score}
      columns={columns}
      choices={steps.map(([value, about]) => ({ value, label: value, about }))}
    />
  );
}
