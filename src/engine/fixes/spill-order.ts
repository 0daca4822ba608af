import type { ICellData, IRange, IUnitRange, Nullable } from "@univerjs/core";
import { CalculateFormulaService, FORMULA_REF_TO_ARRAY_CACHE, FormulaRuntimeService } from "@univerjs/engine-formula";
import type { CalculationInternals, SpillRanges } from "../internals";

/**
 * The engine computes everything once and then, once more, the ordinary formulas that read a filled cell. A formula
 * that fills cells and itself reads filled cells kept what it had seen in the first run, and so did all that follows
 * from it. Here the run is repeated for the readers of whatever came out different, until nothing does. After a run of
 * all formulas the engine ran all of them again; the repeats are for the readers alone.
 */
export function fixSpillOrder(): void {
  const prototype = CalculateFormulaService.prototype as unknown as CalculationInternals;
  prototype._executeStep = async function (this: CalculationInternals) {
    const first = await this._apply();
    if (first === undefined) return undefined;
    let before = new Map<string, Spill>();
    let pending: readonly IUnitRange[] = [
      ...formerRanges(this),
      ...this._getArrayFormulaDirtyRangeAndExcludedRange({}, first.runtimeFeatureRange).dirtyRanges,
    ];
    for (let run = 0; run < MOST_RUNS; run++) {
      const now = spillsOf(this);
      const changed = [...now].filter(([anchor, spill]) => !isSame(spill, before.get(anchor)));
      const ranges = [...pending, ...changed.flatMap(([, spill]) => filledRanges(spill))];
      if (ranges.length === 0 || !isRead(this, ranges)) return true;
      FORMULA_REF_TO_ARRAY_CACHE.clear();
      this._currentConfigService._forceCalculate = false;
      this._currentConfigService.loadDirtyRangesAndExcludedCell(ranges, {});
      if ((await this._apply(true)) === undefined) return undefined;
      before = now;
      pending = [];
    }
    return true;
  };
  clearWhatNoLongerFills();
}

/** Formulas that feed each other in a circle would never come to rest; chains of this length do not occur. */
const MOST_RUNS = 20;

interface Spill {
  readonly unitId: string;
  readonly sheetId: string;
  readonly range: IRange;
  readonly values: readonly Nullable<ICellData>[];
}

function spillsOf({ _runtimeService: runtime }: CalculationInternals): Map<string, Spill> {
  const spills = new Map<string, Spill>();
  const cells = runtime.getRuntimeArrayFormulaCellData();
  forEachRange(runtime.getUnitArrayFormula(), (unitId, sheetId, range) => {
    const matrix = cells?.[unitId]?.[sheetId];
    const values: Nullable<ICellData>[] = [];
    for (let row = range.startRow; row <= range.endRow; row++) {
      for (let column = range.startColumn; column <= range.endColumn; column++)
        values.push(matrix?.getValue(row, column));
    }
    spills.set(`${unitId}!${sheetId}!${range.startRow},${range.startColumn}`, { unitId, sheetId, range, values });
  });
  return spills;
}

function forEachRange(ranges: SpillRanges, visit: (unitId: string, sheetId: string, range: IRange) => void): void {
  for (const [unitId, sheets] of Object.entries(ranges ?? {})) {
    for (const [sheetId, rows] of Object.entries(sheets ?? {})) {
      for (const columns of Object.values(rows)) {
        for (const range of Object.values(columns as Record<string, IRange>)) visit(unitId, sheetId, range);
      }
    }
  }
}

function isSame(spill: Spill, other: Spill | undefined): boolean {
  if (other === undefined || other.values.length !== spill.values.length) return false;
  if (spill.range.endRow !== other.range.endRow || spill.range.endColumn !== other.range.endColumn) return false;
  return spill.values.every((cell, index) => cell?.v === other.values[index]?.v && cell?.t === other.values[index]?.t);
}

/** The cells that a formula fills apart from its own, whose readers the engine finds by itself. */
function filledRanges({ unitId, sheetId, range }: Pick<Spill, "unitId" | "sheetId" | "range">): IUnitRange[] {
  const { startRow, startColumn, endRow, endColumn } = range;
  const parts: IRange[] = [];
  if (endColumn > startColumn) parts.push({ startRow, endRow: startRow, startColumn: startColumn + 1, endColumn });
  if (endRow > startRow) parts.push({ startRow: startRow + 1, endRow, startColumn, endColumn });
  return parts.map((part) => ({ unitId, sheetId, range: part }));
}

/** What formulas computed in this run filled before it: they may now fill less. */
function formerRanges({ _currentConfigService: config, _runtimeService: runtime }: CalculationInternals): IUnitRange[] {
  const former: IUnitRange[] = [];
  const now = runtime.getUnitArrayFormula();
  const cleared = runtime.getRuntimeClearArrayFormulaCellData();
  forEachRange(config.getArrayFormulaRange(), (unitId, sheetId, range) => {
    const { startRow, startColumn } = range;
    const isComputed =
      now?.[unitId]?.[sheetId]?.[startRow]?.[startColumn] ??
      cleared?.[unitId]?.[sheetId]?.getValue(startRow, startColumn);
    if (isComputed) former.push(...filledRanges({ unitId, sheetId, range }));
  });
  return former;
}

/** Whether any formula may read these cells. Where addresses are computed, nobody knows beforehand. */
function isRead(service: CalculationInternals, ranges: readonly IUnitRange[]): boolean {
  const dependencies = service._formulaDependencyGenerator._dependencyManagerService;
  // Formulas that read a single cell are found only while this is open.
  dependencies.openKdTree();
  const readers = dependencies.searchDependency(ranges);
  dependencies.closeKdTree();
  if (readers.size > 0) return true;
  return Object.values(service._currentConfigService.getFormulaData() ?? {}).some((sheets) =>
    Object.values(sheets ?? {}).some((rows) =>
      Object.values(rows).some((columns) =>
        Object.values(columns as Record<string, Nullable<{ f?: string }>>).some((cell) =>
          /\b(OFFSET|INDIRECT)\s*\(/i.test(cell?.f ?? ""),
        ),
      ),
    ),
  );
}

/** A formula computed again may fill fewer cells than the first time: the others are emptied. */
function clearWhatNoLongerFills(): void {
  const prototype = FormulaRuntimeService.prototype;
  const setCell = prototype.setRuntimeData;
  prototype.setRuntimeData = function (value): void {
    const { currentUnitId: unitId, currentSubUnitId: sheetId, currentRow: row, currentColumn: column } = this;
    const ranges = (this.getUnitArrayFormula() as SpillRanges)?.[unitId]?.[sheetId] as
      | Record<number, Record<number, IRange>>
      | undefined;
    const range = ranges?.[row]?.[column];
    if (range !== undefined) {
      const cells = this.getRuntimeArrayFormulaCellData()[unitId]?.[sheetId];
      for (let at = range.startRow; at <= range.endRow; at++) {
        for (let across = range.startColumn; across <= range.endColumn; across++) cells?.realDeleteValue(at, across);
      }
      Reflect.deleteProperty(ranges![row]!, column);
    }
    setCell.call(this, value);
  };
}
