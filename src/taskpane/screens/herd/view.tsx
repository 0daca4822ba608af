import type { ComputedBlock } from "../../../blocks/compute";
import type { WorkbookWith } from "../../pane-workbook";
import { Note } from "../../parts/blocks";
import { PutLiveBlock } from "../../parts/live-blocks/put-live-block";
import { isBusy, LiveStatus } from "../../parts/live-blocks/live-status";
import type { LiveEvent, LiveState } from "../../parts/live-blocks/state";
import { ChosenField } from "../../parts/typed-field";
import { answerOf, coverageWarning, lesionTableIn } from "./answer";
import { type Choices, choicesOf, daysOf, daysText, groupOf } from "./choices";
import { ChoicesView } from "./choices-view";
import { givenTo } from "./given";
import { LESION_CHOICES, USUAL_LESION } from "./lesion-choices";
import { Change, CHANGE_PARTS } from "./part-views/change";
import { NewAndRepeatPicture } from "./part-views/new-and-repeat";
import { blocksAbout, kindOf } from "./shown-blocks";
import { BlockSection } from "./section";

interface HerdViewProps {
  readonly state: LiveState;
  readonly workbook: WorkbookWith<"tables">;
  dispatch(event: LiveEvent): void;
}

/** The claws of the herd over a time: the answer first, then what stands behind it. */
export function HerdView(props: HerdViewProps) {
  return (
    <div class="herd" aria-busy={isBusy(props.state)}>
      <h1>The herd's claws</h1>
      <LiveStatus state={props.state} dispatch={props.dispatch} />
      <Content {...props} />
    </div>
  );
}

function Content(props: HerdViewProps) {
  const { reading } = props.state;
  if (reading.kind !== "read") return null;
  const { tables } = reading.herd;
  return tables.has("Findings") || tables.has("Scores") ? <Figures {...props} /> : <NoTables />;
}

function NoTables() {
  return (
    <Note kind="remark" title="There is nothing to look at yet">
      <p>
        The workbook has no list of findings and no list of mobility scores that Evenfoot knows. Open Set up: there you
        tell it which of your lists is which, or make new ones. What you enter under Record shows here.
      </p>
    </Note>
  );
}

function Figures(props: HerdViewProps) {
  const { state, workbook, dispatch } = props;
  const asOf = workbook.today();
  const choices = choicesOf(state.typed, asOf);
  const days = daysOf(choices, asOf);
  return (
    <>
      <ChoicesView choices={choices} wrong={"problem" in days ? days : undefined} dispatch={dispatch} />
      {!("problem" in days) && (
        <>
          <p class="quiet">{daysText(days)}, both days included.</p>
          <Answer computed={state.computed} group={choices.group} />
          {choices.group !== "all" && <GroupNote group={choices.group} />}
          {blocksAbout(choices.group).map(({ id }) => {
            const computed = state.computed.get(id);
            return computed === undefined ? null : <HerdSection key={id} {...props} computed={computed} />;
          })}
        </>
      )}
    </>
  );
}

/** What a group alone cannot be told. */
function GroupNote({ group }: Pick<Choices, "group">) {
  return (
    <p class="quiet">
      {group === "heifers"
        ? "Findings with the lactation heifer. The list of cows does not hold the days of heifers, so that there are counts and shares, and no rates. "
        : "Findings by the lactation written beside them. "}
      How many were examined, lame cows and the time before are told of all cows.
    </p>
  );
}

/** The answer before all figures, and what would make it doubtful. */
function Answer({
  computed,
  group,
}: Pick<Choices, "group"> & {
  readonly computed: LiveState["computed"];
}) {
  const answer = answerOf(computed, group);
  const warning = coverageWarning(computed.get("coverage"));
  return (
    <>
      <div role="status" class="herd-answer">
        {answer !== undefined && (
          <>
            <p class="herd-first">{answer.first}</p>
            {answer.rest !== "" && <p>{answer.rest}</p>}
          </>
        )}
      </div>
      {warning !== undefined && (
        <Note kind="caution" title="Too few cows examined">
          <p>{warning}</p>
        </Note>
      )}
    </>
  );
}

/** The section that is open when the screen is. */
const OPENED = "lesion-rates";

function HerdSection({ computed, ...props }: HerdViewProps & { readonly computed: ComputedBlock }) {
  const { state, workbook } = props;
  const { block } = computed;
  const given = givenTo(block, state.typed, workbook.today());
  return (
    <BlockSection
      computed={computed}
      opened={kindOf(block) === OPENED}
      left={leftOut(kindOf(block), state)}
      before={<Before {...props} computed={computed} />}
      after={given !== undefined && <PutLiveBlock computed={computed} given={given} workbook={workbook} />}
    />
  );
}

/** Parts of a block that its section does not list: there is nothing in them, or the section shows them otherwise. */
function leftOut(id: string, state: LiveState): readonly string[] {
  if (id === "against-before") return CHANGE_PARTS;
  return id === "lesions-by-lactation" && lesionOf(state) === USUAL_LESION ? ["chosen"] : [];
}

/** What a section shows beside its block. */
function Before({ computed, state, dispatch }: HerdViewProps & { readonly computed: ComputedBlock }) {
  const id = kindOf(computed.block);
  if (id === "against-before") return <Change computed={computed} />;
  if (id === "new-and-repeat") {
    const table = lesionTableIn(state.computed, groupOf(state.typed));
    return typeof table === "object" ? <NewAndRepeatPicture table={table} /> : null;
  }
  if (id !== "lesions-by-lactation") return null;
  return (
    <ChosenField
      label="Lesion beside digital dermatitis"
      value={lesionOf(state)}
      options={LESION_CHOICES}
      onValue={(text) => dispatch({ type: "typed", field: "lesion", text })}
    />
  );
}

function lesionOf({ typed }: LiveState): string {
  return typed["lesion"] ?? USUAL_LESION;
}
