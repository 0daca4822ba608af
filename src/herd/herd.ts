import type { MobilityScale } from "../core/claws/mobility";
import type { TableContent, TablePort } from "../workbook/table-port";
import { cowsTable, findingsTable, scoresTable } from "../workbook/tables";
import { CowList } from "./cow-list";
import { CowRows } from "./cow-rows";
import { scaleOf } from "./mapped-port/scale-of";
import { scoresTableOn } from "./scores-table";

/** Names of the tables that hold the adviser's rules. */
export const RULES_TABLE = "Rules";

/** What recording needs of a workbook, indexed by cow. */
export interface Herd {
  readonly cows: CowList;
  readonly findings: CowRows<typeof findingsTable>;
  readonly scores: CowRows<typeof scoresTable>;
  /** The scale on which the workbook scores mobility. */
  readonly scale: MobilityScale;
  /** The rules as they stand in the workbook; undefined where it has no such table. */
  readonly rules: TableContent | undefined;
  /** Names of our tables that the workbook does not have. */
  readonly missing: readonly string[];
}

/** Reads the herd; a table that is not there counts as blank and is listed. */
export async function readHerd(port: TablePort): Promise<Herd> {
  const names = new Set((await port.listTables()).map(({ name }) => name));
  const read = (name: string): Promise<TableContent> =>
    names.has(name) ? port.readTable(name) : Promise.resolve(blankTable(name));
  const [cows, findings, scores, rules, scale] = await Promise.all([
    read(cowsTable.name),
    read(findingsTable.name),
    read(scoresTable.name),
    names.has(RULES_TABLE) ? port.readTable(RULES_TABLE) : undefined,
    scaleOf(port),
  ]);
  return {
    cows: new CowList(cows),
    findings: new CowRows(findingsTable, findings),
    scores: new CowRows(scoresTableOn(scale), scores),
    scale,
    rules,
    missing: [cowsTable, findingsTable, scoresTable].map(({ name }) => name).filter((name) => !names.has(name)),
  };
}

function blankTable(name: string): TableContent {
  return { name, sheet: "", columns: [], rowCount: 0, rows: [] };
}
