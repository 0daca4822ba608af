/** Rows named one by one before the rest is counted. */
const NAMED_ROWS = 3;

/** Gathers what is wrong with rows of a table, so that each kind of trouble is told once. */
export class RowProblems {
  readonly #rows = new Map<string, string[]>();

  constructor(private readonly table: string) {}

  /** `index` counts from 0 below the headings; `value` is what the cell holds, "" where it needs no telling. */
  add(what: string, index: number, value: string): void {
    const rows = this.#rows.get(what) ?? [];
    rows.push(value === "" ? String(index + 1) : `${index + 1} ("${value}")`);
    this.#rows.set(what, rows);
  }

  texts(): readonly string[] {
    return [...this.#rows].map(([what, rows]) => {
      const more = rows.length > NAMED_ROWS ? ` and ${rows.length - NAMED_ROWS} more` : "";
      const named = `${rows.slice(0, NAMED_ROWS).join(", ")}${more}`;
      return `${this.table}, row${rows.length > 1 ? "s" : ""} ${named} below the headings: ${what}.`;
    });
  }
}
