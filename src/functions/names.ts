/** The worksheet functions stand under this name: HERD.CELL.SCORE. */
export const NAMESPACE = "HERD";

/** The name as typed into a cell. */
export function worksheetName(id: string): string {
  return `${NAMESPACE}.${id}`;
}

/** Where the help page describes a function: CELL.SCORE stands at #cell-score. */
export function anchorOf(id: string): string {
  return id.toLowerCase().replace(/[^a-z0-9]+/g, "-");
}
