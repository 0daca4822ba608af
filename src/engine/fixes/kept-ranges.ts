import { DependencyManagerService } from "@univerjs/engine-formula";
import type { DependencyRanges, RangeTree } from "../internals";

/**
 * At every change the engine enters once more what each formula of the workbook reads, beside what it entered before:
 * the search for what depends on a cell takes longer with every cell typed. What is entered already is left out here.
 */
export function fixKeptRanges(): void {
  const prototype = DependencyManagerService.prototype as unknown as DependencyRanges;
  const entered = new WeakMap<DependencyRanges, Map<number, Set<string>>>();
  const forget = (service: DependencyRanges): void => void entered.delete(service);
  const { addDependencyRTreeCache, reset, _removeDependencyRTreeCache, _removeDependencyRTreeCacheById } = prototype;
  prototype.addDependencyRTreeCache = function (this: DependencyRanges, tree) {
    let known = entered.get(this);
    if (known === undefined) entered.set(this, (known = new Map()));
    let keys = known.get(tree.treeId);
    if (keys === undefined) known.set(tree.treeId, (keys = new Set()));
    const added = tree.rangeList.filter((range) => {
      const key = rangeKey(range);
      if (keys.has(key)) return false;
      keys.add(key);
      return true;
    });
    if (added.length > 0) addDependencyRTreeCache.call(this, { treeId: tree.treeId, rangeList: added });
  };
  prototype.reset = function (this: DependencyRanges) {
    forget(this);
    reset.call(this);
  };
  prototype._removeDependencyRTreeCache = function (this: DependencyRanges, treeId) {
    entered.get(this)?.delete(treeId);
    _removeDependencyRTreeCache.call(this, treeId);
  };
  prototype._removeDependencyRTreeCacheById = function (this: DependencyRanges, unitId, sheetId) {
    forget(this);
    _removeDependencyRTreeCacheById.call(this, unitId, sheetId);
  };
}

/** What tells apart the cells of one range from those of another. */
export function rangeKey({ unitId, sheetId, range }: RangeTree["rangeList"][number]): string {
  const { startRow, startColumn, endRow, endColumn } = range;
  return `${unitId}!${sheetId}!${startRow},${startColumn},${endRow},${endColumn}`;
}
