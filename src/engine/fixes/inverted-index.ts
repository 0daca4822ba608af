import { isRealNum } from "@univerjs/core";
import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";

type Value = string | number | boolean | null | undefined;
/** The rows of one column that hold a value, by value. */
type ColumnIndex = Map<unknown, Set<number>>;

interface IndexInternals {
  readonly _cache: Map<string, Map<string, Map<number, ColumnIndex>>>;
  shouldContinueBuildingCache(unitId: string, sheetId: string, column: number, row: number): boolean;
  set(unitId: string, sheetId: string, column: number, value: Value, row: number, isForceUpdate?: boolean): void;
}

/** The key of blank cells, which the engine keeps to itself; found by letting it enter one. */
function blankKey(index: IndexInternals): unknown {
  index.set("", "", 0, null, 0, true);
  const [key] = index._cache.get("")?.get("")?.get(0)?.keys() ?? [];
  index._cache.delete("");
  return key;
}

/**
 * The engine looks a computed cell up under every value of its column before it enters the new one, so that the cost
 * grows with the square of the rows. Here each column also knows under which value a row stands.
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
}

function entry<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  let value = map.get(key);
  if (value === undefined) map.set(key, (value = make()));
  return value;
}

/** Numbers and texts that spell them are one; the case of texts does not matter. */
function indexKey(value: Value, blank: unknown): unknown {
  if (value === null || value === undefined || value === "") return blank;
  if (isRealNum(value) && Number(value).toString() === value.toString()) return Number(value) === 0 ? 0 : Number(value);
  return typeof value === "string" ? value.toLowerCase() : value;
}
