/**
 * The house as data: which folder may import which, and which packages. A folder not named here may not exist.
 * "A: [B]" means files of A may import files of B; a folder may always import itself.
 */
export interface Layer {
  readonly folder: string;
  readonly mayImport: readonly string[];
  readonly packages: readonly (string | RegExp)[];
}

const univer = /^@univerjs\//;

export const layers: readonly Layer[] = [
  { folder: "core/shared", mayImport: [], packages: [/^@stdlib\//] },
  { folder: "core/reference", mayImport: ["core/shared"], packages: [] },
  { folder: "core/claws", mayImport: ["core/shared", "core/reference"], packages: [] },
  { folder: "core/cells", mayImport: ["core/shared", "core/reference"], packages: [] },
  { folder: "core/barn", mayImport: ["core/shared", "core/reference"], packages: [] },
  { folder: "core/ration", mayImport: ["core/shared", "core/reference"], packages: [] },
  { folder: "core/money", mayImport: ["core/shared", "core/reference"], packages: [] },
  { folder: "functions", mayImport: ["core"], packages: [/^zod(\/mini)?$/] },
  { folder: "workbook/office", mayImport: ["workbook", "core/shared"], packages: [/^@borgar\/fx/] },
  { folder: "workbook/grid", mayImport: ["workbook", "core/shared", "engine"], packages: [univer] },
  { folder: "workbook/file", mayImport: ["workbook", "core/shared", "xlsx"], packages: [] },
  { folder: "workbook/memory", mayImport: ["workbook", "core/shared"], packages: [] },
  { folder: "workbook", mayImport: ["core/shared"], packages: [/^zod(\/mini)?$/, /^@borgar\/fx/] },
  { folder: "herd", mayImport: ["core", "workbook"], packages: [/^zod(\/mini)?$/] },
  { folder: "xlsx", mayImport: [], packages: [/^@cj-tech-master\/excelts/, "fflate", /^@borgar\/fx/] },
  { folder: "engine", mayImport: ["functions", "core/shared", "xlsx"], packages: [univer, /^@borgar\/fx/, "rxjs"] },
  { folder: "blocks", mayImport: ["functions", "core", "workbook", "herd"], packages: [] },
  { folder: "taskpane", mayImport: ["core", "functions", "herd", "workbook", "blocks"], packages: [/^preact/] },
  { folder: "samples", mayImport: ["functions", "core", "workbook", "xlsx", "blocks"], packages: [] },
  {
    folder: "trial",
    mayImport: ["engine", "workbook", "workbook/grid", "xlsx"],
    packages: [univer, "rxjs", /^@borgar\/fx/, /^react/],
  },
  { folder: "entries", mayImport: ["*"], packages: [/.*/] },
];

/** Files that stand in the root of src, outside every layer. */
export const ADAPTERS = ["workbook/office", "workbook/grid", "workbook/file", "workbook/memory"];
/** Where Excel's own objects may be named. */
export const OFFICE_FOLDERS = ["workbook/office", "entries"];
/** Where the JS Date, timers and the like have no place. */
export const PURE_FOLDERS = ["core", "functions"];
