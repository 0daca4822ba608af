import type { IUnitRange } from "@univerjs/core";
import { FormulaDependencyGenerator } from "@univerjs/engine-formula";
import type { RangesOfFormulas, ReadNode } from "../internals";

/** What a parsed formula reads, by the cell it stands in. */
type ByCell = Map<string, readonly IUnitRange[]>;

interface Known {
  /** The sheets with their sizes, on which addresses depend. */
  readonly sheets: string;
  readonly ranges: WeakMap<object, ByCell>;
}

/** The engine's codes of an address, and of two of them joined by a colon. */
const ADDRESS = 1;
const JOINED = 10;

/**
 * At every change the engine works out anew which cells each formula of the workbook reads. Of a formula that is parsed
 * as before, in the same cell of sheets of the same size, it is known. A formula is parsed anew when a name or a table
 * changes.
 */
export function fixKnownRanges(): void {
  const prototype = FormulaDependencyGenerator.prototype as unknown as RangesOfFormulas;
  const knownBy = new WeakMap<RangesOfFormulas, Known>();
  const { _generateTreeList: generate, _getRangeListByNode: readRanges } = prototype;
  prototype._generateTreeList = function (this: RangesOfFormulas, ...parameters) {
    const sheets = sheetsOf(this);
    if (knownBy.get(this)?.sheets !== sheets) knownBy.set(this, { sheets, ranges: new WeakMap() });
    return generate.apply(this, parameters);
  };
  prototype._getRangeListByNode = async function (this: RangesOfFormulas, formula) {
    const { node, refOffsetX, refOffsetY } = formula;
    const known = node ? knownBy.get(this)?.ranges : undefined;
    if (known === undefined || node === null) return readRanges.call(this, formula);
    const { currentUnitId, currentSubUnitId, currentRow, currentColumn } = this._runtimeService;
    const cell = `${currentUnitId}!${currentSubUnitId}!${currentRow},${currentColumn}+${refOffsetY},${refOffsetX}`;
    const found = known.get(node)?.get(cell);
    if (found !== undefined) return [...found];
    const ranges = await readRanges.call(this, formula);
    if (isPlain(this, node)) {
      const byCell: ByCell = known.get(node) ?? new Map<string, readonly IUnitRange[]>();
      known.set(node, byCell.set(cell, [...ranges]));
    }
    return ranges;
  };
}

function sheetsOf({ _currentConfigService: config }: RangesOfFormulas): string {
  const units = Object.entries(config.getUnitData()).map(([unitId, sheets]) => [
    unitId,
    Object.entries(sheets ?? {}).map(([id, { rowCount, columnCount }]) => [
      id,
      config.getSheetName(unitId, id),
      rowCount,
      columnCount,
    ]),
  ]);
  return JSON.stringify(units);
}

/** Whether all that the formula reads is written as addresses. What functions give depends on what cells hold. */
function isPlain(generator: RangesOfFormulas, node: object): boolean {
  const read: ReadNode[] = [];
  generator._nodeTraversalRef(node, read);
  return read.every((part) => {
    const ends = part.nodeType === JOINED ? part.getChildren() : [part];
    return ends.every(({ nodeType }) => nodeType === ADDRESS);
  });
}
