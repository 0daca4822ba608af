import type { Period } from "../../../blocks/report/visit-report";
import { partOf } from "../../../blocks/report/visit-report";
import { disorderOf } from "../../../core/claws/disorder-key";
import { rateInterval } from "../../../core/claws/lesion-rate";
import type { DaySerial } from "../../../core/shared/days";
import { USUAL_LEVEL } from "../../../core/shared/statistics/interval";
import type { PlainCell } from "../../../workbook/port";
import { BlockFigures } from "../../parts/live-blocks/block-figures";
import { type Verdict, verdictOf } from "../herd/change";

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

  /** A lesion or "all"; one without a row has no case. undefined where the list of findings does not tell. */
  lesion(code: string, period: Period): LesionRow | undefined {
    const [rows, cowDays] = [this.lesions(period), this.of("cowDays", period)];
    if (rows.length === 0 || cowDays === undefined || (period === "before" && this.lateList !== undefined)) return;
    return rows.find((row) => row.code === code) ?? noCase(code, cowDays);
  }

  /** The day on which the list of findings begins, where the time before is not whole in it. */
  get lateList(): DaySerial | undefined {
    const [listFrom, from] = [this.number("listFrom"), this.of("from", "before")];
    return listFrom !== undefined && from !== undefined && listFrom > from ? listFrom : undefined;
  }

  /** Whether a lesion, or all of them, changed by more than chance; undefined where that cannot be told. */
  verdict(code: string): Verdict | undefined {
    const [now, before] = [this.lesion(code, "now"), this.lesion(code, "before")];
    const cowDays = { now: this.of("cowDays", "now"), before: this.of("cowDays", "before") };
    if (now === undefined || before === undefined || !cowDays.now || !cowDays.before) return undefined;
    return verdictOf(now.newCases, before.newCases, { now: cowDays.now, before: cowDays.before });
  }
}

function noCase(code: string, cowDays: number): LesionRow {
  const name = disorderOf(code)?.name ?? code;
  return {
    code,
    name,
    newCases: 0,
    value: 0,
    ...rateInterval(0, cowDays, USUAL_LEVEL),
    target: undefined,
    against: "",
  };
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
