import { dateText, formatNumber } from "../../format";

export interface NumbersColumn {
  readonly heading: string;
  /** Number format as a sheet has it; without one the number stands as it is. */
  readonly format?: string;
}

/** A number, a word, or nothing. */
export type NumbersCell = number | string | undefined;

export interface NumbersTableProps {
  /** What the table holds, for those who hear it. */
  readonly caption: string;
  readonly columns: readonly NumbersColumn[];
  /** The first cell of each row names it. */
  readonly rows: readonly (readonly NumbersCell[])[];
}

/** Numbers as rows and columns. Where the pane is too narrow the table scrolls inside its frame. */
export function NumbersTable({ caption, columns, rows }: NumbersTableProps) {
  return (
    <div class="numbers-frame" role="region" aria-label={caption} tabIndex={0}>
      <table class="numbers">
        <caption class="readers-only">{caption}</caption>
        <thead>
          <tr>
            {columns.map(({ heading }) => (
              <th key={heading} scope="col">
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, ...cells], row) => (
            <tr key={row}>
              <th scope="row">{cellText(name, columns[0]?.format)}</th>
              {cells.map((cell, at) => (
                <td key={at} class={typeof cell === "number" ? "number" : undefined}>
                  {cellText(cell, columns[at + 1]?.format)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function cellText(cell: NumbersCell, format: string | undefined): string {
  if (cell === undefined) return "–";
  if (typeof cell === "string") return cell;
  return format !== undefined && /y/.test(format) ? dateText(cell) : formatNumber(cell, format);
}
