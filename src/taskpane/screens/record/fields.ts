import type { Landmark } from "../../../core/claws/toe-length";
import type { FEET } from "../../../workbook/tables";

export type Foot = (typeof FEET)[number];
/** A claw, or the skin that both share. */
export type ClawChoice = "inner" | "outer" | "between";

/** What holds for all cows of a visit; texts as typed. */
export interface Visit {
  readonly date: string;
  readonly place: string;
  readonly trimmer: string;
  readonly reason: string;
  /** Blank: toes are not measured. There is no default, since lengths from the two landmarks are not comparable. */
  readonly landmark: Landmark | "";
}

/** What the user chose otherwise than the rules; texts as typed. */
export interface Care {
  readonly trim: boolean;
  /** The claw that carries the block; blank for no block. */
  readonly block: "inner" | "outer" | "";
  readonly blockOffDays: string;
  readonly painRelief: boolean;
  readonly painReliefDays: string;
  readonly topical: boolean;
  readonly topicalTreatments: string;
  readonly topicalRepeatDays: string;
  readonly bandage: boolean;
  readonly bandageOffHours: string;
  readonly vetCalled: boolean;
  /** Anything else that was done. */
  readonly other: string;
  /** Name of the drug as on its label. */
  readonly drug: string;
  readonly milkHours: string;
  readonly meatDays: string;
}

export type CareField = `care.${keyof Care}`;
export type Field =
  | keyof Visit
  | "cow"
  | "score"
  | "foot"
  | "toeInner"
  | "toeOuter"
  | "claw"
  | "zone"
  | "lesion"
  | "stage"
  | "severity"
  | "note"
  | CareField
  | "actions";
