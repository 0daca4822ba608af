import type { Block } from "./block";
import type { SpecOf } from "./expression/run";
import type { Names } from "./expression/names";

/** Names that only serve to read which functions a formula calls. */
const anyNames: Names = {
  column: (table, key) => `${table}[${key}]`,
  range: (table, key) => `${table}[${key}]`,
  ranges: (table, key) => [`${table}[${key}]`],
  settings: (table) => table,
  input: () => "A1",
  part: () => "A1",
  asOf: "AsOf",
  scale: "0-3",
};

/** The worksheet functions that a block calls, in the order of its formulas. */
export function functionsOf({ parts }: Block): readonly string[] {
  const texts = parts.flatMap((part) =>
    part.kind === "series"
      ? part.figures({ text: () => "A1", compute: () => null }).map((figure) => figure.text(anyNames))
      : [part.value.text(anyNames)],
  );
  const ids = texts.flatMap((text) => [...text.matchAll(/\bHERD\.([A-Z.]+)\(/g)].map(([, id]) => id!));
  return [...new Set(ids)];
}

/** The papers and standards behind a block, then its cautions, each a line to be read. */
export function sourceNotes(block: Block, specOf: SpecOf): readonly string[] {
  const specs = functionsOf(block).flatMap((id) => specOf(id) ?? []);
  const citations = new Set(specs.flatMap(({ sources }) => sources.map(({ citation }) => citation)));
  const cautions = new Set(specs.flatMap((spec) => spec.cautions));
  return [...[...cautions].map((text) => `Caution: ${text}`), ...[...citations].map((text) => `Source: ${text}`)];
}
