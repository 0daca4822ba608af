import type { FunctionSpec } from "./define";

/** The specs under the headings that help lists them by, in the order of the registry. */
export function byGroup(specs: readonly FunctionSpec[]): [group: string, members: FunctionSpec[]][] {
  const groups = new Map<string, FunctionSpec[]>();
  for (const spec of specs) {
    const members = groups.get(spec.group);
    if (members === undefined) groups.set(spec.group, [spec]);
    else members.push(spec);
  }
  return [...groups];
}
