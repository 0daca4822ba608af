import fc from "fast-check";

/** What happens on an afternoon. `fails`: at which of its steps the workbook breaks off, and how often in a row. */
export type Action =
  | { readonly kind: "enter"; readonly cow: string; readonly foot: "LH" | "RF" }
  | { readonly kind: "type"; readonly field: "cow" | "zone" | "lesion" | "care.other"; readonly text: string }
  | { readonly kind: "save"; readonly fails: Failure; readonly then: "wait" | "close" | "reload" }
  | { readonly kind: "take back"; readonly place: number; readonly fails: Failure }
  | { readonly kind: "close" | "reload" | "go on" | "another adds a row" }
  | { readonly kind: "another changes a row" | "another deletes a row"; readonly row: number };

export type Failure = undefined | { readonly step: number; readonly times: number };

/** Steps at which the stand-in for Excel is asked of a save: all of them, and those around the writing itself. */
const step = fc.oneof(fc.nat(90), fc.integer({ min: 55, max: 80 }), fc.integer({ min: 55, max: 80 }));
const failure = fc.option(fc.record({ step, times: fc.constantFrom(1, 40) }), { nil: undefined, freq: 3 });
const kind = <K extends Action["kind"]>(name: K) => fc.constant(name);

export const action: fc.Arbitrary<Action> = fc.oneof(
  { weight: 6, arbitrary: fc.record({ kind: kind("enter"), cow: fc.constantFrom("12", "123", "Bella"), foot: fc.constantFrom("LH", "RF") }) },
  { weight: 3, arbitrary: fc.record({ kind: kind("type"), field: fc.constantFrom("cow", "zone", "lesion", "care.other"), text: fc.constantFrom("", "12", "4", "DD", "=1+1", "swollen") }) },
  { weight: 6, arbitrary: fc.record({ kind: kind("save"), fails: failure, then: fc.constantFrom("wait", "wait", "wait", "wait", "close", "close", "reload") }) },
  { weight: 3, arbitrary: fc.record({ kind: kind("take back"), place: fc.nat(3), fails: failure }) },
  { weight: 1, arbitrary: fc.record({ kind: kind("reload") }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constantFrom("close", "go on", "another adds a row") }) },
  { weight: 1, arbitrary: fc.record({ kind: kind("another changes a row"), row: fc.nat(5) }) },
  { weight: 1, arbitrary: fc.record({ kind: kind("another deletes a row"), row: fc.nat(5) }) },
); // oxfmt-ignore
