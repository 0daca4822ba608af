import type { ComputedBlock, InputValues } from "../../../blocks/compute";
import type { FunctionSpec } from "../../../functions/define";
import type { WorkbookWith } from "../../pane-workbook";
import { PutInSheet } from "../put-in-sheet/put-in-sheet";
import { referencesOf } from "../put-in-sheet/workbook-references";
import { specOf } from "./use-live-blocks";

interface PutLiveBlockProps {
  readonly computed: ComputedBlock;
  /** What was put into its inputs. */
  readonly given: InputValues;
  readonly workbook: WorkbookWith<"tables">;
  /** Why it cannot be put now. */
  readonly unready?: string | undefined;
}

/** Puts a block into the sheet as the screen shows it. A host that cannot look for room has no button. */
export function PutLiveBlock({ computed, given, workbook, unready }: PutLiveBlockProps) {
  const { book } = workbook;
  if (book === undefined) return null;
  const { block, parts } = computed;
  const texts = new Map<string, FunctionSpec>();
  const known = { ...workbook, book };
  const references = async () => {
    const { wholeRegistry } = await import(/* webpackChunkName: "texts" */ "../../../functions/whole-registry");
    for (const spec of wholeRegistry) texts.set(spec.id, spec);
    return referencesOf(known);
  };
  const wanted = { block, given, computed: parts, references, specOf: (id: string) => texts.get(id) ?? specOf(id) };
  return <PutInSheet wanted={wanted} workbook={known} {...(unready === undefined ? {} : { unready })} />;
}
