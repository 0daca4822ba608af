/** A spec file as the generator finds it: its area folder and its name without the ending. */
export interface SpecFile {
  readonly area: string;
  readonly name: string;
}

/** Files of an area folder that hold no spec. */
export const HELPER_FILES = new Set([
  "kinds",
  "kinds-of-care",
  "kinds-of-trimming",
  "kinds-of-findings",
  "limit-specs",
  "kinds-of-scores",
  "kinds-of-loss",
  "kinds-of-tests",
]);

/** Specs of this area are made by a function that is handed all other specs. */
const CATALOGUE_AREA = "about";

/** cell-score -> cellScore, the name under which the file exports its spec. */
function exportName(fileName: string): string {
  return fileName.replace(/-([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());
}

/** Text of registry.ts for the spec files found. */
export function registrySource(files: readonly SpecFile[]): string {
  const sorted = [...files].sort((a, b) => (`${a.area}/${a.name}` < `${b.area}/${b.name}` ? -1 : 1));
  const imports = sorted.map(({ area, name }) => `import { ${exportName(name)} } from "./${area}/${name}";`);
  const plain = sorted.filter(({ area }) => area !== CATALOGUE_AREA).map(({ name }) => `  ${exportName(name)},`);
  const about = sorted
    .filter(({ area }) => area === CATALOGUE_AREA)
    .map(({ name }) => `  ${exportName(name)}(described),`);
  return [
    "// Written by `npm run generate` from the files of this folder. Do not edit.",
    ...imports,
    'import type { FunctionSpec } from "./define";',
    "",
    "const described: readonly FunctionSpec[] = [",
    ...plain,
    "];",
    "",
    "/** Every worksheet function. */",
    about.length === 0
      ? "export const registry: readonly FunctionSpec[] = described;"
      : ["export const registry: readonly FunctionSpec[] = [", "  ...described,", ...about, "];"].join("\n"),
    "",
  ].join("\n");
}
