import type { IUnitRange } from "@univerjs/core";
import { FormulaDependencyGenerator } from "@univerjs/engine-formula";
import type { OrderOfFormulas } from "../internals";
import { rangeKey } from "./kept-ranges";

/**
 * Before it computes, the engine looks up for every formula which others read what it fills, and then does so again to
 * see whether they run in a circle. Nothing changes in between: the second time the first answer is taken.
 */
export function fixOneSearch(): void {
  const prototype = FormulaDependencyGenerator.prototype as unknown as OrderOfFormulas;
  const { _calculateRunList: order, _checkIsCycleDependency: isInCircle } = prototype;
  const found = new WeakMap<OrderOfFormulas, Readers>();
  prototype._calculateRunList = function (this: OrderOfFormulas, trees) {
    const readers: Readers = new Map();
    found.set(this, readers);
    return searchingOnce(this, readers, () => order.call(this, trees));
  };
  prototype._checkIsCycleDependency = function (this: OrderOfFormulas, trees) {
    const readers: Readers = found.get(this) ?? new Map<string, ReadonlySet<number>>();
    found.delete(this);
    return searchingOnce(this, readers, () => isInCircle.call(this, trees));
  };
}

/** Which formulas read what one fills, by the key of its cells. */
type Readers = Map<string, ReadonlySet<number>>;

function searchingOnce<T>({ _dependencyManagerService: service }: OrderOfFormulas, readers: Readers, run: () => T): T {
  const { searchDependency: search } = service;
  service.searchDependency = (ranges: readonly IUnitRange[], except?: ReadonlySet<number>) => {
    const key = ranges.map(rangeKey).join();
    let all = readers.get(key);
    if (all === undefined) readers.set(key, (all = search.call(service, ranges)));
    const wanted = new Set<number>();
    for (const id of all) if (!except?.has(id)) wanted.add(id);
    return wanted;
  };
  try {
    return run();
  } finally {
    service.searchDependency = search;
  }
}
