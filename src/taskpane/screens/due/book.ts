import type { MobilityScale } from "../../../core/claws/mobility";
import { scaleOf } from "../../../herd/mapped-port/scale-of";
import { cowsTable, findingsTable, scoresTable } from "../../../workbook/tables";
import type { TableContent, TablePort } from "../../../workbook/table-port";

/** The tables that say what is due, as they stand in the workbook; undefined where there is none of that name. */
export interface DueBook {
  readonly cows: TableContent | undefined;
  readonly findings: TableContent | undefined;
  readonly scores: TableContent | undefined;
  readonly rules: TableContent | undefined;
  readonly trimRules: TableContent | undefined;
  /** The scale on which the workbook scores mobility. */
  readonly scale: MobilityScale;
}

type TableKey = Exclude<keyof DueBook, "scale">;

const NAMES: Readonly<Record<TableKey, string>> = {
  cows: cowsTable.name,
  findings: findingsTable.name,
  scores: scoresTable.name,
  rules: "Rules",
  trimRules: "TrimRules",
};

/** The tables that the screen reads. */
export const DUE_TABLES: readonly string[] = Object.values(NAMES);

/** Reads the tables from the workbook. */
export async function readBook(port: TablePort): Promise<DueBook> {
  const present = new Set((await port.listTables()).map(({ name }) => name));
  const read = async (key: TableKey): Promise<TableContent | undefined> =>
    present.has(NAMES[key]) ? port.readTable(NAMES[key]) : undefined;
  const [cows, findings, scores, rules, trimRules, scale] = await Promise.all([
    read("cows"),
    read("findings"),
    read("scores"),
    read("rules"),
    read("trimRules"),
    scaleOf(port),
  ]);
  return { cows, findings, scores, rules, trimRules, scale };
}
