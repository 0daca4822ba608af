import type { HerdTables } from "../../../blocks/data";
import { listed } from "../../parts/listed";
import type { ThingFacts } from "./things";

type Tables = HerdTables["tables"];

/** What the lists hold, in a reader's words. */
const ROWS = { Findings: "findings", Cows: "cows", Scores: "mobility scores", Tests: "milk tests" } as const;
type List = keyof typeof ROWS;

/** The lists that what is due is drawn from. */
const DUE_LISTS = ["Findings", "Cows", "Scores"] as const satisfies readonly List[];
const LISTS = Object.keys(ROWS) as readonly List[];

/** Whether the workbook tells anything of what is due. */
export function tellsDue(tables: Tables): boolean {
  return withoutRows(DUE_LISTS, tables).length < DUE_LISTS.length;
}

/** What is said where nothing is due: that nothing is known is told apart from it. */
export function nothingDue(tables: Tables): string {
  const lacking = withoutRows(DUE_LISTS, tables);
  if (lacking.length === 0) return "Nothing is due.";
  const words = tellsDue(tables)
    ? "Nothing is due, as far as the workbook tells: it has"
    : "What is due cannot be told: the workbook has";
  return `${words} ${noRows(lacking)}.`;
}

/** What is said where nothing stands out: that nothing is known is told apart from it. */
export function nothingStandsOut(facts: ThingFacts, tables: Tables): string {
  const parts: readonly (readonly [string, boolean])[] = [
    ["lame cows and feet overdue", facts.due !== undefined],
    ["lesions", facts.lesions.length > 0],
    ["cell counts", facts.rolling !== undefined || facts.top !== undefined],
    ["how many cows were examined", facts.examined !== undefined],
  ];
  const untold = parts.filter(([, isTold]) => !isTold).map(([name]) => name);
  if (untold.length === 0) return "Nothing stands out.";
  if (untold.length < parts.length)
    return `Nothing stands out in what the workbook tells. It does not tell: ${listed(untold)}.`;
  const lacking = withoutRows(LISTS, tables);
  const why = lacking.length === 0 ? "see below what is not in the report" : `the workbook has ${noRows(lacking)}`;
  return `What stands out cannot be told: ${why}.`;
}

function withoutRows<Name extends List>(lists: readonly Name[], tables: Tables): readonly Name[] {
  return lists.filter((list) => (tables.get(list)?.rowCount ?? 0) === 0);
}

function noRows(lists: readonly List[]): string {
  return listed(lists.map((list) => `no ${ROWS[list]}`));
}

/** As many lines as find room; the last one says how many more there are. */
export function linesThatFit(texts: readonly string[], most: number): readonly string[] {
  if (texts.length <= most) return texts;
  const shown = texts.slice(0, most - 1);
  return [...shown, `and ${texts.length - shown.length} more, in the pane.`];
}
