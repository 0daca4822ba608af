import type { FunctionSpec } from "./define";

/**
 * Every function's id with its arguments in order; an optional one stands in brackets. Formulas in saved workbooks
 * rest on these, so once released they may only be added to.
 */
export type NameLock = Readonly<Record<string, readonly string[]>>;

type Signature = Pick<FunctionSpec, "id"> & {
  readonly parameters: readonly Pick<FunctionSpec["parameters"][number], "name" | "optional">[];
};

export function nameLock(specs: readonly Signature[]): NameLock {
  return Object.fromEntries(specs.map(({ id, parameters }) => [id, parameters.map(lockedName)]));
}

/**
 * What in the specs would break formulas already written, one sentence each: a function or argument that is gone,
 * renamed or moved, an argument that became required, a new argument that is not optional.
 */
export function lockBreaks(locked: NameLock, specs: readonly Signature[]): string[] {
  const present = nameLock(specs);
  return Object.entries(locked).flatMap(([id, was]) => {
    const is = present[id];
    return is === undefined ? [`${id} is locked and must stay`] : signatureBreaks(id, was, is);
  });
}

function signatureBreaks(id: string, was: readonly string[], is: readonly string[]): string[] {
  const moved = was.flatMap((name, index) => {
    const now = is[index];
    // An argument may become optional, since formulas that give it still work.
    if (now === name || now === `[${name}]`) return [];
    return [`${id} argument ${index + 1} must stay ${name}; is ${now ?? "gone"}`];
  });
  const added = is
    .slice(was.length)
    .flatMap((name) => (isOptional(name) ? [] : [`${id} may get new arguments only as optional ones; ${name} is not`]));
  return [...moved, ...added];
}

function lockedName({ name, optional }: Signature["parameters"][number]): string {
  return optional ? `[${name}]` : name;
}

function isOptional(name: string): boolean {
  return name.startsWith("[");
}
