import type { ComponentChildren } from "preact";
import type { FunctionCall, SelectedCell } from "../../../workbook/port";
import type { CallContent, Outcome } from "./call-content";
import type { Input } from "./inputs";
import { announcement, type Content, type ExplainState } from "./model";
import { capitalised } from "../../format";
import { Note, Section, TextList } from "../../parts/blocks";

interface ExplainProps {
  readonly state: ExplainState;
  choose(index: number): void;
}

/** Tells how the figure in the selected cell came about. */
export function ExplainScreen({ state, choose }: ExplainProps) {
  return (
    <>
      <h1>Explain a figure</h1>
      <p class="readers-only" role="status">
        {announcement(state)}
      </p>
      {state.cell && <CellName cell={state.cell} />}
      {state.calls.length > 1 && <CallChoice calls={state.calls} chosen={state.chosen} choose={choose} />}
      <ContentView content={state.content} />
    </>
  );
}

function CellName({ cell }: { readonly cell: SelectedCell }) {
  return (
    <div class="cell-name">
      <p>
        <strong>
          {cell.sheet}, {cell.address}
        </strong>{" "}
        {cell.shown === "" ? "is blank" : <>shows {cell.shown}</>}
      </p>
      {cell.formula !== undefined && <code>{cell.formula}</code>}
    </div>
  );
}

interface CallChoiceProps {
  readonly calls: readonly FunctionCall[];
  readonly chosen: number;
  choose(index: number): void;
}

function CallChoice({ calls, chosen, choose }: CallChoiceProps) {
  return (
    <fieldset class="choice">
      <legend>This formula uses {calls.length} HERD functions. Explain:</legend>
      {calls.map(({ functionId, argumentTexts }, index) => (
        <label key={index}>
          <input type="radio" name="call" checked={index === chosen} onChange={() => choose(index)} />
          <span>
            HERD.{functionId}
            <small>{argumentTexts.join(", ")}</small>
          </span>
        </label>
      ))}
    </fieldset>
  );
}

function ContentView({ content }: { readonly content: Content }) {
  switch (content.kind) {
    case "call":
      return <CallView call={content.call} />;
    case "reading":
      return <p class="quiet">Reading the cell …</p>;
    case "nothing selected":
      return <Pointer>No cell is selected yet.</Pointer>;
    case "no call":
      return <Pointer>{NO_CALL[content.holds]}</Pointer>;
    case "unknown function":
      return (
        <Note kind="error" title="Not known">
          <p>{content.functionName} is not one of the HERD functions. Check its spelling.</p>
        </Note>
      );
    case "failed":
      return (
        <Note kind="error" title="Could not be explained">
          <p>{content.message}</p>
        </Note>
      );
  }
}

const NO_CALL = {
  blank: "This cell is blank.",
  value: "This cell holds what was typed into it.",
  formula: "This formula uses no HERD function.",
} as const;

function Pointer({ children }: { readonly children: ComponentChildren }) {
  return (
    <div class="pointer">
      <p>{children}</p>
      <p>
        Select a cell with a HERD function in it. Its inputs, the working step by step and the sources are then told
        here.
      </p>
      <p class="quiet">
        To write one, type <code>=HERD.</code> into a cell and pick from the list.
      </p>
    </div>
  );
}

function CallView({ call }: { readonly call: CallContent }) {
  return (
    <>
      <Section title={call.functionName} strong>
        <p>{call.summary}</p>
      </Section>
      <OutcomeView outcome={call.outcome} />
      {call.remarks.length > 0 && (
        <Note kind="remark" title="Good to know">
          <TextList texts={call.remarks} />
        </Note>
      )}
      {call.cautions.length > 0 && (
        <Note kind="caution" title="Take care">
          <TextList texts={call.cautions} />
        </Note>
      )}
      <Section title="Inputs">
        <dl class="inputs">
          {call.inputs.map((input) => (
            <InputView key={input.name} input={input} outcome={call.outcome} />
          ))}
        </dl>
      </Section>
      {call.steps.length > 0 && (
        <Section title="Working">
          <ol class="steps">
            {call.steps.map(({ label, working, value }, index) => (
              <li key={index}>
                <span class="label">{capitalised(label)}</span>
                <span class="working">{working}</span>
                <span class="value">
                  <span aria-hidden="true">= </span>
                  {value}
                </span>
              </li>
            ))}
          </ol>
        </Section>
      )}
      {call.limits.length > 0 && (
        <Section title="What it cannot tell">
          <TextList texts={call.limits} />
        </Section>
      )}
      {call.sources.length > 0 && (
        <Section title="Sources">
          <ul class="sources">
            {call.sources.map(({ name, citation, standing }, index) => (
              <li key={index}>
                <span class="label">{name}</span> <span class="standing">{standing}</span>
                <p>{citation}</p>
              </li>
            ))}
          </ul>
        </Section>
      )}
    </>
  );
}

function OutcomeView({ outcome }: { readonly outcome: Outcome }) {
  switch (outcome.kind) {
    case "value":
      return (
        <Section title="Result">
          <p class="result">
            {outcome.text}
            {outcome.unit !== undefined && <small> {outcome.unit}</small>}
          </p>
          {outcome.details.map((detail) => (
            <p key={detail}>{detail}</p>
          ))}
        </Section>
      );
    case "refused":
      return (
        <Note kind="error" title={`No result: ${outcome.error}`}>
          <p>{outcome.message}</p>
          {outcome.argument !== undefined && (
            <p>
              Mend the input <strong>{outcome.argument}</strong>.
            </p>
          )}
        </Note>
      );
    case "unknown":
      return (
        <Note kind="error" title="No working">
          <p>{outcome.message}</p>
        </Note>
      );
  }
}

function InputView({ input, outcome }: { readonly input: Input; readonly outcome: Outcome }) {
  const isToldAbove = outcome.kind === "refused" && outcome.message === input.fault;
  return (
    <div class={input.fault === undefined ? "input" : "input faulty"}>
      <dt>
        {input.name}
        {input.text !== undefined && <code>{input.text}</code>}
      </dt>
      <dd>
        <span class="value">{input.value}</span>
        <span class="quiet">{input.description}</span>
        {input.fault !== undefined && (
          <span class="fault">
            <strong>To mend:</strong> {isToldAbove ? "see above" : input.fault}
          </span>
        )}
      </dd>
    </div>
  );
}
