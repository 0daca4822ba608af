import type { DaySerial } from "../../../core/shared/days";
import type { Herd } from "../../../herd/herd";
import type { PastSave } from "../../../workbook/table-port";
import type { RulesInForce } from "../../rules";
import type { Care, ClawChoice, Field } from "./fields";

/** All that can happen on the screen. Ids and days come from outside. */
export type RecordEvent =
  | {
      readonly type: "herd read";
      readonly herd: Herd;
      readonly rules: RulesInForce;
      readonly past: readonly PastSave[];
    }
  | { readonly type: "herd failed"; readonly message: string }
  | { readonly type: "day began"; readonly today: DaySerial }
  /** A text field holds other text; the keyboard stays where it is. */
  | { readonly type: "typed"; readonly field: Field; readonly text: string }
  /** One of several was chosen with pointer or key; the keyboard goes on. */
  | { readonly type: "chose"; readonly field: Field; readonly value: string }
  | { readonly type: "switched"; readonly field: `care.${keyof Care}`; readonly on: boolean }
  | { readonly type: "key"; readonly field: Field; readonly key: string }
  | { readonly type: "left"; readonly field: Field }
  | { readonly type: "another finding" }
  | { readonly type: "open finding"; readonly place: number }
  | { readonly type: "remove finding"; readonly place: number }
  /** A zone of the drawing, which shows one claw and the skin between both. */
  | { readonly type: "pointed"; readonly claw: ClawChoice; readonly zone: number }
  | { readonly type: "agreed"; readonly question: string; readonly field: Field }
  | { readonly type: "nothing found" }
  | { readonly type: "save" }
  | { readonly type: "saved"; readonly id: string; readonly nextId: string; readonly past: readonly PastSave[] }
  | { readonly type: "save failed"; readonly id: string; readonly message: string; readonly uncertain: boolean }
  | { readonly type: "take back"; readonly id: string }
  | { readonly type: "taken back"; readonly id: string; readonly past: readonly PastSave[] }
  | { readonly type: "take back failed"; readonly id: string; readonly message: string }
  | { readonly type: "clear"; readonly nextId: string }
  | { readonly type: "bring back" }
  | { readonly type: "resume draft" }
  | { readonly type: "drop draft" };
