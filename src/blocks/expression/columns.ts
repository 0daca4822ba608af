import { headingOf } from "../tables";
import type { Expression, Run } from "./expression";
import type { Rows } from "./values";
import { MissingColumn } from "./fault";

/** A column of a table: "Findings[Cow]". */
export function column(table: string, key: string): Expression {
  return {
    isKept: true,
    called: `${table}, ${headingOf(table, key)}`,
    text: (names) => names.column(table, key),
    ranges: (names) => names.ranges(table, key),
    compute: (run) => columnRows(run, table, key),
  };
}

/** Columns of one table, in the order of their keys. */
export function columns<const Key extends string>(table: string, ...keys: readonly Key[]): Record<Key, Expression> {
  return Object.fromEntries(keys.map((key) => [key, column(table, key)])) as Record<Key, Expression>;
}

function columnRows(run: Run, table: string, key: string): Rows {
  const rows = run.data.column(table, key);
  if (rows === undefined) throw missingColumn(table, key, run.data.has(table));
  return rows;
}

/** What a workbook lacks, in words. */
export function missingColumn(table: string, key: string, hasTable: boolean): MissingColumn {
  return hasTable ? new MissingColumn(`${table} has no column ${headingOf(table, key)}.`) : missingTable(table);
}

export function missingTable(table: string): MissingColumn {
  return new MissingColumn(`The workbook has no table ${table}.`);
}

/** A column that a function may do without: blanks beside `beside` where the table has none. */
export function columnOrBlanks(table: string, key: string, beside: string): Expression {
  const [wanted, other] = [column(table, key), column(table, beside)];
  const expression: Expression = {
    isKept: true,
    text(names) {
      try {
        return wanted.text(names);
      } catch (error) {
        // A column that is there and cannot be named is no blank one.
        if (!(error instanceof MissingColumn)) throw error;
        return `IF(${other.text(names)}="","","")`;
      }
    },
    compute: (run) =>
      run.data.column(table, key) ?? run.once(expression, () => columnRows(run, table, beside).map(() => BLANK)),
  };
  return expression;
}

const BLANK = [""] as const;

/** A settings table with its headings: "Costs[#All]". */
export function settings(table: string): Expression {
  return {
    text: (names) => `${names.settings(table)}[#All]`,
    compute(run) {
      const rows = run.data.settings(table);
      if (rows === undefined) throw missingTable(table);
      return rows;
    },
  };
}

/** A settings table that a function may do without; one in which nothing is written counts as none. */
export function settingsIfAny(table: string): Expression {
  return {
    text(names) {
      try {
        const name = names.settings(table);
        return `IF(COUNTA(${name})=0,"",${name}[#All])`;
      } catch (error) {
        if (!(error instanceof MissingColumn)) throw error;
        return `""`;
      }
    },
    compute(run) {
      const rows = run.data.settings(table);
      const isFilled = rows?.slice(1).some((row) => row.some((cell) => cell !== null));
      return rows !== undefined && isFilled === true ? rows : "";
    },
  };
}
