/** A figure with its limits. */
export interface IntervalRow {
  readonly label: string;
  /** undefined: there is none, and `remark` says why. */
  readonly value: number | undefined;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  readonly target?: number | undefined;
  /** How it stands to its target: "above", "below", "within chance". */
  readonly against?: string | undefined;
  /** Such as "few cases". */
  readonly remark?: string | undefined;
}

/** Counts that are stacked into columns. */
export interface CountSeries {
  readonly name: string;
  /** One count a column. */
  readonly values: readonly number[];
}

/** A figure over time. */
export interface LineSeries {
  readonly name: string;
  /** One value a point in time; undefined where there is none: the line is broken there. */
  readonly values: readonly (number | undefined)[];
  /** 95 % limits, drawn as thin lines at each point. */
  readonly lows?: readonly (number | undefined)[];
  readonly highs?: readonly (number | undefined)[];
}

/** A group with how many of it have the thing and how many have not. */
export interface TwoByTwoRow {
  /** "lame cows" */
  readonly name: string;
  readonly having: number;
  readonly not: number;
}
