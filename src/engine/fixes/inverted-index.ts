import { CELL_INVERTED_INDEX_CACHE, ERROR_TYPE_SET, type ErrorType } from "@univerjs/engine-formula";

type Value = string | number | boolean | null | undefined;
/** The rows of one column that hold a value, by value. */
type ColumnIndex = Map<unknown, Set<number>>;
/** First and last row of a part of a column. */
type RowRange = readonly [number, number];

/** Which rows of a column the index answers for, and which it does not. */
interface RowsToUse {
  readonly rowsInCache: readonly RowRange[];
  readonly rowsNotInCache: readonly RowRange[];
}

interface IndexInternals {
  readonly _cache: Map<string, Map<string, Map<number, ColumnIndex>>>;
  shouldContinueBuildingCache(unitId: string, sheetId: string, column: number, row: number): boolean;
  set(unitId: string, sheetId: string, column: number, value: Value, row: number, isForceUpdate?: boolean): void;
  canUseCache(unitId: string, sheetId: string, column: number, firstRow: number, lastRow: number): RowsToUse;
  getCellPositions(
    unitId: string,
    sheetId: string,
    column: number,
    value: Value,
    rowsInCache: readonly RowRange[],
  ): { readonly errorType: unknown; readonly matchingRows: readonly number[] } | undefined;
}

/** The key of blank cells, which the engine keeps to itself; found by letting it enter one. */
function blankKey(index: IndexInternals): unknown {
  index.set("", "", 0, null, 0, true);
  const [key] = index._cache.get("")?.get("")?.get(0)?.keys() ?? [];
  index._cache.delete("");
  return key;
}

/**
 * Three mends of the index by which a column is compared with one value.
 *
 * The engine looks a computed cell up under every value of its column before it enters the new one, so that the cost
 * grows with the square of the rows. Here each column also knows under which value a row stands.
 *
 * It holds 0 for equal to "", and the text "1" for equal to the number 1, once a column has been read before. Source:
 * Microsoft, "Calculation operators and precedence in Excel", and ISO/IEC 29500-1, 18.17.2.2: a number never equals a
 * text; a blank cell equals 0, "" and FALSE.
 *
 * It compares the errors of a column that has been read before as if they were texts, or passes over them. Here such a
 * column is compared cell by cell, and every error is the outcome of its row, as LibreOffice 7.4 has it.
 */
export function fixInvertedIndex(): void {
  const index = CELL_INVERTED_INDEX_CACHE as unknown as IndexInternals;
  const blank = blankKey(index);
  const places = new WeakMap<ColumnIndex, Map<number, Set<number>>>();
  index.set = function (unitId, sheetId, column, value, row, isForceUpdate = false): void {
    if (!isForceUpdate && !index.shouldContinueBuildingCache(unitId, sheetId, column, row)) return;
    const sheets = entry(index._cache, unitId, () => new Map<string, Map<number, ColumnIndex>>());
    const columns = entry(sheets, sheetId, () => new Map<number, ColumnIndex>());
    const values = entry(columns, column, (): ColumnIndex => new Map());
    let rows = places.get(values);
    if (rows === undefined) places.set(values, (rows = new Map()));
    if (isForceUpdate) rows.get(row)?.delete(row);
    const list = entry(values, indexKey(value, blank), () => new Set<number>());
    list.add(row);
    rows.set(row, list);
  };
  const { canUseCache } = index;
  index.canUseCache = function (unitId, sheetId, column, firstRow, lastRow) {
    const values = index._cache.get(unitId)?.get(sheetId)?.get(column);
    if (values !== undefined && holdsAnError(values)) return { rowsInCache: [], rowsNotInCache: [] };
    return canUseCache.call(this, unitId, sheetId, column, firstRow, lastRow);
  };
  index.getCellPositions = function (unitId, sheetId, column, value, rowsInCache) {
    const values = index._cache.get(unitId)?.get(sheetId)?.get(column);
    if (values === undefined) return undefined;
    if (ERROR_TYPE_SET.has(value as ErrorType)) return { errorType: value, matchingRows: [] };
    const matchingRows = keysEqualTo(value, blank).flatMap((key) =>
      [...(values.get(key) ?? [])].filter((row) => rowsInCache.some(([first, last]) => row >= first && row <= last)),
    );
    return { errorType: null, matchingRows };
  };
}

function holdsAnError(values: ColumnIndex): boolean {
  for (const error of ERROR_TYPE_SET) if ((values.get(error)?.size ?? 0) > 0) return true;
  return false;
}

/** What a blank cell equals. */
const LIKE_BLANK = [0, "", false] as const;

function keysEqualTo(value: Value, blank: unknown): readonly unknown[] {
  const key = indexKey(value, blank);
  if (key === blank) return [blank, ...LIKE_BLANK];
  return LIKE_BLANK.some((like) => like === key) ? [key, blank] : [key];
}

function entry<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  let value = map.get(key);
  if (value === undefined) map.set(key, (value = make()));
  return value;
}

/** The case of texts does not matter; errors are told by theirs. */
function indexKey(value: Value, blank: unknown): unknown {
  if (value === null || value === undefined) return blank;
  return typeof value === "string" && !ERROR_TYPE_SET.has(value as ErrorType) ? value.toLowerCase() : value;
}
