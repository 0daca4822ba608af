import { withdrawalClear as clearDay } from "../../core/claws/withdrawal";
import { day, isoDate } from "../../core/shared/days";
import { invalid } from "../../core/shared/domain-error";
import { definition } from "../../core/shared/source";
import { defineFunction, required } from "../define";
import { counted } from "../figure";
import { number, scalarKind } from "../scalars";
import { dateAndTime } from "./kinds-of-care";

const HOURS_PER_DAY = 24;
/** Labels count in milkings or days: half a day is the shortest step. */
const LABEL_STEP_HOURS = 12;

const labelHours = number({
  unit: "hours",
  min: LABEL_STEP_HOURS,
  max: 365 * HOURS_PER_DAY,
  reason: "hours, not days: multiply the days on the label by 24",
  zeroIsBlank: true,
});
/** A blank has no default: the message asks for the label. */
const withdrawalHours = scalarKind<number>({
  ...labelHours,
  must: `the period on the label, ${labelHours.must}`,
});

export const withdrawalClear = defineFunction({
  id: "WITHDRAWAL.CLEAR",
  group: "Rechecks and treatment dates",
  summary: "First whole day after the withdrawal period on the label, on which milk or meat may go.",
  parameters: {
    lastDose: required(dateAndTime, "Day of the last dose, with its time of day if known"),
    hours: required(withdrawalHours, "Withdrawal period on the label, in hours (days × 24)"),
  },
  result: { shape: "scalar", type: "date", format: "yyyy-mm-dd" },
  sources: [
    definition(
      "The day after the period has fully passed. Without a time of day the dose counts as given at the end of its day.",
    ),
  ],
  limits: [
    "It knows no product: milk and meat periods differ by product, dose and country, and off-label use needs the veterinarian's own period.",
    "A 0 is read as blank: a label that says nil asks for no date. Only multiples of 12 hours are taken, so that days typed for hours are noticed.",
  ],
  cautions: ["The label and the veterinarian decide. When in doubt, hold the milk and test it."],
  examples: [
    {
      arguments: [day("2024-02-26"), 96],
      result: day("2024-03-02"),
      origin: "hand",
      where: "Given at the latest at the end of 26 February; 96 hours end with 1 March (29 February is a day)",
    },
    {
      arguments: [day("2024-02-26") + 0.25, 48],
      result: day("2024-02-29"),
      origin: "hand",
      where: "06:00 on 26 February + 48 hours = 06:00 on 28 February; the first whole day is 29 February",
    },
    {
      arguments: [day("2024-02-26") + 0.5, 12],
      result: day("2024-02-27"),
      origin: "hand",
      where: "Noon + 12 hours ends exactly with 26 February",
    },
  ],
  compute({ lastDose, hours }) {
    if (hours % LABEL_STEP_HOURS !== 0) {
      throw invalid(
        "hours",
        `a multiple of ${LABEL_STEP_HOURS} hours, as labels give days or milkings (days × 24; round anything else up)`,
        hours,
      );
    }
    return clearDay(lastDose, hours);
  },
  steps: ({ lastDose, hours }, result) => [
    {
      label: "Counted from",
      working: Number.isInteger(lastDose) ? "no time of day: the end of the day" : "the time of day given",
      value: dayAndTime(lastDose),
    },
    { label: "Period", working: `${hours} hours / 24`, value: counted(hours / HOURS_PER_DAY, "day") },
    { label: "First whole day after it", working: "rounded up to a whole day", value: isoDate(result as number) },
  ],
});

const MINUTES_PER_DAY = 24 * 60;
/** A time of day in a cell is a little more or less than its minute. */
const ROUNDING_MINUTES = 0.0001;

/** "2024-02-26", with its time of day where it has one: "2024-02-26 06:00". */
function dayAndTime(serial: number): string {
  if (Number.isInteger(serial)) return isoDate(serial);
  const minutes = Math.floor((serial % 1) * MINUTES_PER_DAY + ROUNDING_MINUTES);
  const twoPlaces = (value: number) => String(value).padStart(2, "0");
  return `${isoDate(Math.floor(serial))} ${twoPlaces(Math.floor(minutes / 60))}:${twoPlaces(minutes % 60)}`;
}
