import type { ComponentChildren, FunctionComponent } from "preact";
import { Note, TextList } from "../../parts/blocks";
import { CheckSection } from "./check-view";
import { Progress } from "./controls";
import { FormulasSection } from "./formulas-view";
import { useKeptFocus } from "./kept-focus";
import { BlocksPart, CopyPart } from "./lazy-part";
import { ListsSection } from "./lists-view";
import { PastWrites, WriteNotice } from "./notice-view";
import { SECTIONS, type SectionId, type SetUpState } from "./state";
import { sectionState } from "./summaries";
import type { SetUpViewProps } from "./view-props";
import { WordsSection } from "./words-view";
import { isBusy } from "./write-model";

const TITLES: Readonly<Record<SectionId, string>> = {
  lists: "Your lists",
  words: "Your words",
  check: "Check the workbook",
  formulas: "Formulas",
  copy: "Copy from an old book",
  blocks: "Blocks and templates",
};

const CONTENT: Readonly<Record<SectionId, FunctionComponent<SetUpViewProps>>> = {
  lists: ListsSection,
  words: WordsSection,
  check: CheckSection,
  formulas: FormulasSection,
  copy: CopyPart,
  blocks: BlocksPart,
};

/** Setting the workbook up, part by part; every part can be opened at any time. */
export function SetUpView(props: SetUpViewProps) {
  const { state, dispatch } = props;
  const { reading, notice } = state;
  const focus = useKeptFocus(isBusy(state));
  return (
    <div class="set-up" onFocusIn={focus.onFocusIn} onPointerDown={focus.onPointerDown}>
      <h1>Set up</h1>
      <p>Evenfoot reads your own lists as they are. It renames and moves nothing of yours.</p>
      <p class="readers-only" role="status">
        {notice?.text ?? ""}
      </p>
      {reading.kind === "failed" && (
        <Note kind="error" title="The workbook could not be read">
          <p>{reading.message}</p>
          <ReadAgain {...props} />
        </Note>
      )}
      {reading.kind === "reading" && <Progress text="Reading the workbook …" />}
      {state.stale && reading.kind === "read" && (
        <div class="set-up-stale">
          <p>The workbook changed since it was read.</p>
          <ReadAgain {...props} />
        </div>
      )}
      {SECTIONS.map((section, index) => (
        <Part
          key={section}
          id={section}
          number={index + 1}
          state={state}
          press={() => dispatch({ type: "section pressed", section })}
        >
          {(reading.kind === "read" || section === "copy") && <Content section={section} {...props} />}
          {section !== SECTIONS.at(-1) && <Next after={section} {...props} />}
        </Part>
      ))}
      <PastWrites {...props} />
      <KeptWhere />
      {(notice !== undefined || state.work?.brokenOff === true) && <WriteNotice {...props} />}
    </div>
  );
}

interface PartProps {
  readonly id: SectionId;
  readonly number: number;
  readonly state: SetUpState;
  press(): void;
  readonly children: ComponentChildren;
}

function Part({ id, number, state, press, children }: PartProps) {
  const isOpen = state.open === id;
  return (
    <section class={isOpen ? "set-up-part opened" : "set-up-part"} aria-labelledby={`set-up-${id}`}>
      <h2>
        <button
          type="button"
          id={`set-up-${id}`}
          class="set-up-head"
          aria-expanded={isOpen}
          aria-controls={`set-up-${id}-content`}
          onClick={press}
        >
          <span class="set-up-number" aria-hidden="true">
            {number}
          </span>
          <span class="set-up-title">{TITLES[id]}</span>
          <span class="set-up-state">{sectionState(state, id)}</span>
        </button>
      </h2>
      <div id={`set-up-${id}-content`} class="set-up-content" hidden={!isOpen}>
        {isOpen && children}
      </div>
    </section>
  );
}

function Content({ section, ...props }: SetUpViewProps & { readonly section: SectionId }) {
  const Section = CONTENT[section];
  return <Section {...props} />;
}

function Next({ after, dispatch }: SetUpViewProps & { readonly after: SectionId }) {
  const next = SECTIONS[SECTIONS.indexOf(after) + 1]!;
  const press = (): void => {
    dispatch({ type: "section pressed", section: next });
    // The part that was left closes above: the keyboard and the eye go to the one that opens.
    requestAnimationFrame(() => {
      const head = document.getElementById(`set-up-${next}`);
      head?.focus();
      head?.scrollIntoView({ block: "start" });
    });
  };
  return (
    <p class="set-up-next">
      <button type="button" onClick={press}>
        Next: {TITLES[next]}
      </button>
    </p>
  );
}

function ReadAgain({ dispatch }: SetUpViewProps) {
  return (
    <button type="button" onClick={() => dispatch({ type: "reading asked" })}>
      Read again
    </button>
  );
}

/** What is kept, and where. */
function KeptWhere() {
  return (
    <details class="set-up-kept">
      <summary>What is kept where</summary>
      <TextList
        texts={[
          "What your columns mean stands on the sheet Mapping, your words on the sheet Words. You can see and change both.",
          "Your lists stay where they are. Cells are changed only when you press a button that says so.",
          "So that a change can be taken back, what a cell held before is kept on this computer.",
          "Nothing leaves this computer through Evenfoot. Where the workbook itself is kept, on a drive or in a cloud, is up to you.",
        ]}
      />
    </details>
  );
}
