import { Note, Section, TextList } from "../../parts/blocks";
import { Choices, fieldId, TextField } from "./controls";
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

/** The words of the scale 0-3, Reader et al. 2011. */
const SCORES = [
  { value: "0", label: "0", about: "good" },
  { value: "1", label: "1", about: "imperfect" },
  { value: "2", label: "2", about: "lame" },
  { value: "3", label: "3", about: "severe" },
];

export function ScorePart(props: PartProps) {
  return (
    <Choices
      {...bound(props, "score", "Mobility score before trimming")}
      value={props.state.entry.score}
      columns={4}
      choices={SCORES}
    />
  );
}
