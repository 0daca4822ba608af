import type { Period } from "../../../blocks/report/visit-report";
import { partOf } from "../../../blocks/report/visit-report";
import type { PlainCell } from "../../../workbook/port";
import { BlockFigures } from "../../parts/live-blocks/block-figures";

/** A figure with its 95 % limits. */
export interface Limited {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A row of HERD.LESION.TABLE. */
export interface LesionRow extends Limited {
  readonly code: string;
  readonly name: string;
  readonly newCases: number;
  readonly target: number | undefined;
  readonly against: string;
}

/** The figures of a visit, by period. */
export class VisitFigures extends BlockFigures {
  of(name: string, period: Period): number | undefined {
    return this.number(partOf(name, period));
  }

  /** A share of cows with its limits, such as the lame of those scored. */
  share(cows: string, all: string, period: Period): Limited | undefined {
    const [part, whole] = [this.of(cows, period), this.of(all, period)];
    const [low, high] = [this.of(`${cows} low`, period), this.of(`${cows} high`, period)];
    if (part === undefined || whole === undefined || whole === 0 || low === undefined || high === undefined) return;
    return { value: part / whole, low, high };
  }

  lesions(period: Period): readonly LesionRow[] {
    return this.rows(partOf("lesions", period)).map(lesionRow);
  }

  /** The row of a lesion, a group or "all". */
  lesion(code: string, period: Period): LesionRow | undefined {
    return this.lesions(period).find((row) => row.code === code);
  }
}

function lesionRow([code, name, newCases, , , rate, low, high, target, against]: readonly PlainCell[]): LesionRow {
  return {
    code: String(code),
    name: String(name),
    newCases: Number(newCases),
    value: Number(rate),
    low: Number(low),
    high: Number(high),
    target: typeof target === "number" ? target : undefined,
    against: String(against ?? ""),
  };
}
