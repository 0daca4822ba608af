import { commonPractice } from "../../../src/core/shared/source";
import { DomainError, invalid } from "../../../src/core/shared/domain-error";
import { columnOf } from "../../../src/functions/columns";
import { defineFunction, optional, required, withDefault } from "../../../src/functions/define";
import { choice, date, number, text } from "../../../src/functions/scalars";
import { settingsTable } from "../../../src/functions/tables";

const common = { group: "Made up", examples: [], limits: ["Made up for tests."] } as const;

/** A day some days later; refuses a day after 2030 beside its own limits. */
export const later = defineFunction({
  ...common,
  id: "TEST.LATER",
  summary: "The day some days later.",
  parameters: {
    start: required(date(), "First day"),
    days: withDefault(number({ unit: "d", min: 1, max: 90, reason: "a season" }), "Days to add", 14, "14 d"),
    place: optional(choice(["barn", "field"]), "Where", "the place is not used"),
  },
  result: { shape: "scalar", type: "date", format: "yyyy-mm-dd" },
  sources: [commonPractice("two weeks")],
  cautions: ["As the veterinarian prescribed."],
  compute: ({ start, days }) => {
    if (start > 47_848) throw invalid("start", "a day up to 2030-12-31", start);
    return start + days;
  },
  steps: ({ start, days }) => [{ label: "Day", working: `${start} + ${days}`, value: String(start + days) }],
});

/** Litres of a column of weights, row by row, with their sum as a remark. */
export const litres = defineFunction({
  ...common,
  id: "TEST.LITRES",
  summary: "Litres of a column of weights.",
  parameters: {
    dates: required(columnOf(date(), { notes: "leave out" }), "Days"),
    weights: required(columnOf(number({ unit: "kg", min: 0, reason: "a weight" }), { notes: "leave out" }), "Weights"),
    rules: required(settingsTable("rules", { word: { headings: ["Word"], kind: text() } }), "Rules"),
  },
  result: {
    shape: "table",
    columns: [
      { heading: "Day", type: "date", format: "yyyy-mm-dd" },
      { heading: "Litres", type: "number", unit: "L", format: "0.0" },
    ],
  },
  sources: [],
  cautions: [],
  compute: ({ dates, weights }, remarks) => {
    remarks.add("1 row left out: no weight");
    const rows = dates.values.flatMap((day, row) => {
      const weight = weights.values[row];
      return day !== null && typeof weight === "number" ? [[day, weight / 2]] : [];
    });
    return [["Day", "Litres"], ...rows];
  },
  steps: () => [],
});

/** Milk in the unit that an argument names. */
export const milk = defineFunction({
  ...common,
  id: "TEST.MILK",
  summary: "Milk.",
  parameters: {
    amount: required(number(), "Amount"),
    milkUnit: withDefault(choice(["litres", "kg"]), "Unit of the milk", "litres", "litres"),
  },
  result: { shape: "scalar", type: "number", unit: "milkUnit", format: "0.0" },
  sources: [],
  cautions: [],
  compute: ({ amount }) => amount,
  steps: () => [],
});

/** Fails in a way that no user caused. */
export const broken = defineFunction({
  ...common,
  id: "TEST.BROKEN",
  summary: "Never works.",
  parameters: {},
  result: { shape: "scalar", type: "text" },
  sources: [],
  cautions: [],
  compute: () => {
    throw new TypeError("defect");
  },
  steps: () => [],
});

/** Refuses in words that name no argument. */
export const stern = defineFunction({
  ...common,
  id: "TEST.STERN",
  summary: "Always refuses.",
  parameters: { days: optional(number(), "Days", "not used") },
  result: { shape: "scalar", type: "text" },
  sources: [],
  cautions: [],
  compute: () => {
    throw new DomainError("unavailable", "nothing was recorded yet");
  },
  steps: () => [],
});
