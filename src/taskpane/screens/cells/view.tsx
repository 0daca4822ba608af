import { useMemo } from "preact/hooks";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import type { WorkbookWith } from "../../pane-workbook";
import { Note } from "../../parts/blocks";
import { Fold } from "../../parts/fold";
import { blockOf } from "../../../blocks/gallery";
import { BlockFigures } from "../../parts/live-blocks/block-figures";
import { isBusy, LiveStatus } from "../../parts/live-blocks/live-status";
import type { LiveEvent, LiveState } from "../../parts/live-blocks/state";
import { ChosenField } from "../../parts/typed-field";
import { answerOf } from "./answer";
import { type Field, givenTo, readFields } from "./given";
import { milkPriceOf } from "./milk-price";
import { Bill, billOf } from "./sections/bill";
import { Changes, changesAnswer, Dry, dryAnswer } from "./sections/changes-section";
import { Limit, limitAnswer } from "./sections/limit-section";
import { LinkSection, linkAnswer } from "./sections/link-section";
import { FieldOf } from "./sections/parts";
import type { SectionProps } from "./sections/props";
import { Tank, tankAnswer } from "./sections/tank-section";
import { Top, topWords } from "./sections/top";
import { WhatIfSection } from "./sections/what-if";
import { shownFields } from "./shown";
import { testDays } from "./test-days";

export interface CellsViewProps {
  readonly state: LiveState;
  readonly asOf: DaySerial;
  readonly workbook: WorkbookWith<"tables">;
  dispatch(event: LiveEvent): void;
}

/** What cell counts cost, which cows make most of it, and what moved. */
export function CellsView(props: CellsViewProps) {
  const { reading } = props.state;
  return (
    <div class="cells" aria-busy={isBusy(props.state)}>
      <h1>Cell counts</h1>
      <LiveStatus state={props.state} dispatch={props.dispatch} />
      {reading.kind === "read" && <Figures {...props} tests={reading.herd.tables.get("Tests")} />}
    </div>
  );
}

type Tables = Extract<LiveState["reading"], { kind: "read" }>["herd"]["tables"];

function Figures(props: CellsViewProps & { readonly tests: ReturnType<Tables["get"]> }) {
  const { state, asOf, workbook, dispatch, tests } = props;
  const days = useMemo(() => testDays(tests, asOf), [tests, asOf]);
  if (state.reading.kind !== "read") return null;
  if (tests === undefined) return <NoTests />;
  if (days.length === 0) return <NoTest upTo={asOf} />;
  const milkPrice = milkPriceOf(state.reading.herd.tables.get("Prices"));
  const read = readFields(state.typed, milkPrice);
  const shown = shownFields(state, milkPrice);
  const type = (field: Field, text: string): void => dispatch({ type: "typed", field, text });
  const fields = { read, shown, type, milkPrice, workbook };
  const propsOf = (id: string): SectionProps => {
    const block = blockOf(id);
    const figures = new BlockFigures(state.computed.get(id) ?? { block, inputs: [], parts: [] });
    return { ...fields, figures, given: givenTo(block, read) };
  };
  return (
    <>
      <div class="typed-fields">
        <ChosenField
          label="Milk test of"
          value={state.typed["test"] ?? String(days[0])}
          options={days.map((day) => [String(day), isoDate(day)])}
          onValue={(day) => type("test", day)}
        />
        <FieldOf {...fields} field="days" label="Days like it" />
        <FieldOf
          {...fields}
          field="milkPrice"
          label={`Price of a litre${milkPrice.currency === "" ? "" : `, ${milkPrice.currency}`}`}
        />
      </div>
      {milkPrice.remark !== undefined && read.price === undefined && <p class="quiet">{milkPrice.remark}</p>}
      <Headline props={propsOf("yearly-bill")} />
      <Sections propsOf={propsOf} />
    </>
  );
}

/** The answer that the screen is opened for. */
function Headline({ props }: { readonly props: SectionProps }) {
  const bill = billOf(props);
  const reason = bill === undefined ? props.figures.reason("summary") : "reason" in bill ? bill.reason : undefined;
  return (
    <div role="status" class="cells-answer">
      {bill !== undefined && "headline" in bill && (
        <>
          <p class="cells-first">{bill.headline}</p>
          <p>Milk that goes with high counts; it is not promised back.</p>
        </>
      )}
      {reason !== undefined && (
        <Note kind="caution" title="No total for this test">
          <p>{reason}</p>
        </Note>
      )}
    </div>
  );
}

function Sections({ propsOf }: { propsOf(id: string): SectionProps }) {
  const [top, bill, whatIf, tank, byTest] = [
    propsOf("top-cows"),
    propsOf("yearly-bill"),
    propsOf("what-if"),
    propsOf("tank-and-cows"),
    propsOf("cells-by-test"),
  ];
  const [changes, dry, link, limit] = [
    propsOf("cell-changes"),
    propsOf("dry-period"),
    propsOf("lame-and-high"),
    propsOf("legal-limit"),
  ];
  return (
    <>
      <Fold title="The cows behind most of it" answer={answerOf(top, topWords)} opened>
        <Top {...top} />
      </Fold>
      <Fold title="What it costs">
        <Bill {...bill} />
      </Fold>
      <Fold title="What if">
        <WhatIfSection {...whatIf} />
      </Fold>
      <Fold title="The tank against the cows" answer={answerOf(tank, tankAnswer)}>
        <Tank {...tank} byTest={byTest} />
      </Fold>
      <Fold title="Since the test before" answer={answerOf(changes, changesAnswer)}>
        <Changes {...changes} />
      </Fold>
      <Fold title="Over the dry period" answer={answerOf(dry, dryAnswer)}>
        <Dry {...dry} />
      </Fold>
      <Fold title="Lame cows and high counts" answer={answerOf(link, linkAnswer)}>
        <LinkSection {...link} />
      </Fold>
      <Fold title="The legal limit" answer={answerOf(limit, limitAnswer)}>
        <Limit {...limit} />
      </Fold>
    </>
  );
}

function NoTests() {
  return (
    <Note kind="remark" title="There is nothing to look at yet">
      <p>
        The workbook has no list of milk tests that Evenfoot knows. Open Set up: there you tell it which of your lists
        holds the counts, or make a new one.
      </p>
    </Note>
  );
}

function NoTest({ upTo }: { readonly upTo: DaySerial }) {
  return (
    <Note kind="remark" title="There is nothing to look at yet">
      <p>The list of milk tests holds no test up to {isoDate(upTo)}. Enter one: day, cow, lactation, milk and count.</p>
    </Note>
  );
}
