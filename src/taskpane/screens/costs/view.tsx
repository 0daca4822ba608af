import type { DaySerial } from "../../../core/shared/days";
import type { WorkbookWith } from "../../pane-workbook";
import { capitalised, counted, formatNumber } from "../../format";
import { Note, TextList } from "../../parts/blocks";
import { Fold } from "../../parts/fold";
import { blockOf } from "../../../blocks/gallery";
import { BlockFigures } from "../../parts/live-blocks/block-figures";
import { PutLiveBlock } from "../../parts/live-blocks/put-live-block";
import { isBusy, LiveStatus } from "../../parts/live-blocks/live-status";
import type { LiveEvent, LiveState } from "../../parts/live-blocks/state";
import { IntervalBars } from "../../parts/pictures/interval-bars";
import type { NumbersCell } from "../../parts/pictures/numbers-table";
import { TypedField } from "../../parts/typed-field";
import { milkPriceOf } from "../cells/milk-price";
import { moneyText } from "../cells/wording/money";
import { givenTo } from "./given";
import { type CostFacts, costFacts, currencyOf } from "./money-facts";
import { readPeriod, shownPeriod } from "./period";
import { basisWords, type Bill, bills, caseWords, type LesionCost, lesionCosts, NO_SUM, shortCaseWords } from "./words";

export interface CostsViewProps {
  readonly state: LiveState;
  readonly asOf: DaySerial;
  readonly workbook: WorkbookWith<"tables">;
  dispatch(event: LiveEvent): void;
}

/** What claw lesions cost, and what high counts cost, side by side and never as one sum. */
export function CostsView({ state, asOf, workbook, dispatch }: CostsViewProps) {
  const { reading, typed } = state;
  const shown = shownPeriod(typed, asOf);
  const period = readPeriod(shown);
  const set = (field: "from" | "to") => (text: string) => dispatch({ type: "typed", field, text });
  return (
    <div class="costs" aria-busy={isBusy(state)}>
      <h1>Costs</h1>
      <LiveStatus state={state} dispatch={dispatch} />
      <div class="typed-fields">
        <TypedField label="First day" type="date" value={shown.from} onText={set("from")} />
        <TypedField
          label="Last day"
          type="date"
          value={shown.to}
          problem={typeof period === "string" ? period : undefined}
          onText={set("to")}
        />
      </div>
      {reading.kind === "read" && (
        <Figures state={state} asOf={asOf} workbook={workbook} dispatch={dispatch} tables={reading.herd.tables} />
      )}
    </div>
  );
}

type Tables = Extract<LiveState["reading"], { kind: "read" }>["herd"]["tables"];

function Figures({ state, asOf, workbook, tables }: CostsViewProps & { readonly tables: Tables }) {
  const facts = costFacts(tables.get("Costs"));
  const milk = milkPriceOf(tables.get("Prices"));
  const figuresOf = (id: string): BlockFigures =>
    new BlockFigures(state.computed.get(id) ?? { block: blockOf(id), inputs: [], parts: [] });
  const put = (id: string) => {
    const computed = state.computed.get(id);
    const given = computed === undefined ? undefined : givenTo(computed.block, state.typed, asOf, milk);
    if (computed === undefined || given === undefined) return null;
    return <PutLiveBlock computed={computed} given={given} workbook={workbook} />;
  };
  const costs = lesionCosts(figuresOf("lesion-costs").rows("costs"));
  const side = figuresOf("side-by-side");
  const lesionBill = lesionAnswer(side, costs, facts);
  const both = bills(
    { ...lesionBill, words: lesionBill.short ?? lesionBill.words },
    cellAnswer(side, milk),
    facts?.sources ?? [],
  );
  if (!state.computed.has("side-by-side")) return null;
  return (
    <>
      <Fold
        title="Claw lesions by cost"
        answer={[lesionBill.amount, lesionBill.words].filter(Boolean).join(". ")}
        opened
      >
        {costs.length > 0 && <ByLesion costs={costs} facts={facts} />}
        <p class="quiet">
          New cases of those days, times the cost of a case under Costs. Published costs are a start: put the farm's own
          there. The cost of a case holds the lost milk of that cow.
        </p>
        {put("lesion-costs")}
      </Fold>
      <Fold title="Lameness and cell counts side by side" answer="Two bills of the same herd, without a sum." opened>
        <div class="costs-bills">
          {both.map((bill) => (
            <BillView key={bill.title} bill={bill} />
          ))}
        </div>
        <Note kind="caution" title="No total">
          <TextList texts={[NO_SUM, ...basisWords(facts, milk)]} />
        </Note>
        {put("side-by-side")}
      </Fold>
    </>
  );
}

const NO_COSTS =
  "The workbook has no table Costs with a cost for a lesion: make one, with a lesion and its cost per case in each row.";

function sentence(text: string | undefined): string | undefined {
  return text === undefined ? undefined : capitalised(text.replace(/([^.!?])$/, "$1."));
}

type Answer = Pick<Bill, "amount" | "words"> & { readonly short?: string };

function lesionAnswer(figures: BlockFigures, costs: readonly LesionCost[], facts: CostFacts | undefined): Answer {
  if (facts === undefined) return { amount: undefined, words: NO_COSTS };
  const [total, cases, unpriced] = ["lesions", "cases", "uncosted"].map((id) => figures.number(id));
  if (total === undefined || cases === undefined || unpriced === undefined)
    return { amount: undefined, words: sentence(figures.reason("lesions")) ?? "Not computed." };
  const amount = cases === unpriced ? undefined : moneyText(total, currencyOf(facts) ?? "");
  const counts = { priced: cases - unpriced, unpriced };
  return { amount, words: caseWords(counts, costs), short: shortCaseWords(counts) };
}

function cellAnswer(figures: BlockFigures, milk: ReturnType<typeof milkPriceOf>): Answer {
  const [money, days] = [figures.number("milk"), figures.input("days")];
  if (milk.litre === undefined) return { amount: undefined, words: milk.remark ?? "There is no price of a litre." };
  if (money === undefined || days === undefined)
    return { amount: undefined, words: sentence(figures.reason("milk")) ?? "Not computed." };
  return { amount: moneyText(money, milk.currency), words: `For ${counted(days, "day")} like the last milk test.` };
}

function BillView({ bill: { title, amount, words, inside, outside } }: { readonly bill: Bill }) {
  return (
    <section aria-label={title} class="costs-bill">
      <h3>{title}</h3>
      {amount !== undefined && <p class="costs-amount">{amount}</p>}
      <p>{words}</p>
      <p>
        <b>In it:</b> {inside.join("; ")}.
      </p>
      <p>
        <b>Not in it:</b> {outside.join("; ")}.
      </p>
    </section>
  );
}

/** Lesions drawn as bars; the table has all. */
const MOST_BARS = 8;

function ByLesion({ costs, facts }: { readonly costs: readonly LesionCost[]; readonly facts: CostFacts | undefined }) {
  const currency = currencyOf(facts) ?? "money";
  const priced = costs.filter(({ cost }) => cost !== undefined);
  return (
    <IntervalBars
      title="Cost by lesion"
      rowsAre="Lesion"
      unit={currency}
      format="#,##0"
      sentence={
        priced[0] === undefined
          ? "No lesion has a cost."
          : `The dearest is ${priced[0].name}: ${moneyText(priced[0].cost!, currency)}.`
      }
      rows={priced.slice(0, MOST_BARS).map(({ name, cases, perCase, cost, share }) => ({
        label: name,
        value: cost,
        remark: `${cases} × ${formatNumber(perCase!, "#,##0.##")}${share === undefined ? "" : `, ${formatNumber(share, "0%")}`}`,
      }))}
      numbers={{
        caption: "Cost by lesion",
        columns: [
          { heading: "Lesion" },
          { heading: "Cases", format: "0" },
          { heading: "A case", format: "#,##0.00" },
          { heading: `Cost, ${currency}`, format: "#,##0" },
          { heading: "Share", format: "0%" },
        ],
        rows: costs.map(({ name, cases, perCase, cost, share }): NumbersCell[] => [name, cases, perCase, cost, share]),
      }}
    />
  );
}
