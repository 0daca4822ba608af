import type { Block } from "../../../blocks/block";
import { cellBlockOf } from "../../../blocks/cell-block";
import type { ComputedBlock, InputValues } from "../../../blocks/compute";
import { layOutBlock } from "../../../blocks/layout";
import { ownReferences } from "../../../blocks/references/own";
import { functionsOf } from "../../../blocks/sources";
import type { FunctionSpec } from "../../../functions/define";
import { asTableError } from "../../../workbook/table-error";
import { messageOf } from "../../message-of";
import type { WorkbookWith } from "../../pane-workbook";
import { referencesOf } from "../../parts/put-in-sheet/workbook-references";
import { dayOf, type DrawnUp, namedThings } from "./report";
import type { ReportEvent, ReportState } from "./state";
import { joined, saveTitle, sheetName, writtenWords } from "./written";

interface ReportToWrite {
  readonly report: DrawnUp | undefined;
  readonly state: ReportState;
  readonly computed: ComputedBlock | undefined;
  readonly given: InputValues;
}

/** Writes the report onto a sheet of its own: its sentences, and below them its figures as live formulas. */
export async function writeReport(
  workbook: WorkbookWith<"tables">,
  { report, state, computed, given }: ReportToWrite,
): Promise<ReportEvent> {
  if (report === undefined || "problem" in report || computed === undefined) {
    // Between two tries the days may have become others, or the workbook another.
    const why = report !== undefined && "problem" in report ? report.problem : "The report is being drawn up anew.";
    return { type: "write refused", message: `Nothing was written. ${why}` };
  }
  const { tables, today } = workbook;
  const sheet = sheetName(dayOf(computed, "visit") ?? today(), state.writing?.attempt ?? 0);
  const words = writtenWords(report, namedThings(report, state.chosen), state);
  const at = { row: words.length + 1, column: 0 };
  try {
    const { book } = workbook;
    // A host without sheets and cells has no lists of the farm's own either.
    const references =
      book === undefined
        ? ownReferences(await tables.listTables(), (await workbook.holdsItsDay?.()) ?? false)
        : await referencesOf({ ...workbook, book });
    const texts = await wholeSpecs();
    const laidOut = layOutBlock(computed.block, {
      references,
      specOf: (id) => texts.get(id),
      at,
      given,
      computed: computed.parts,
    });
    const id = crypto.randomUUID();
    await tables.writeBlock({ ...joined(sheet, words, cellBlockOf(laidOut, sheet, at)), id, title: saveTitle(sheet) });
    return { type: "written", sheet };
  } catch (error) {
    const known = asTableError(error);
    if (known?.kind === "occupied" || known?.kind === "name-taken") return { type: "name taken" };
    return { type: "write refused", message: messageOf(error) };
  }
}

/** Takes a written report out of the workbook; refused where someone changed it meanwhile. */
export async function takeReportBack({ tables }: WorkbookWith<"tables">, id: string): Promise<ReportEvent> {
  try {
    await tables.takeBack(id);
    return { type: "taken back" };
  } catch (error) {
    return {
      type: "write refused",
      message: `Not taken back. ${messageOf(error)}`,
    };
  }
}

/** Names of the papers and standards behind a block, each once; [] where the texts cannot be loaded. */
export async function sourcesOf(block: Block): Promise<readonly string[]> {
  try {
    const texts = await wholeSpecs();
    const sources = functionsOf(block).flatMap((id) => texts.get(id)?.sources ?? []);
    const papers = sources.filter(({ standing }) => standing === "read" || standing === "memory");
    return [...new Set(papers.map(({ name }) => name))];
  } catch {
    return [];
  }
}

/** The worksheet functions with the texts that computing does not need. */
async function wholeSpecs(): Promise<ReadonlyMap<string, FunctionSpec>> {
  const { wholeRegistry } = await import(/* webpackChunkName: "texts" */ "../../../functions/whole-registry");
  return new Map(wholeRegistry.map((spec) => [spec.id, spec]));
}
