import { averagesOf } from "../../core/cells/averages";
import { monthsOfSamples, rollingMean, type Stretch } from "../../core/cells/rolling-mean";
import { fenlon2017 } from "../../core/reference/fenlon-2017";
import { regulation853 } from "../../core/reference/regulation-853-2004";
import { type DaySerial, isoDate } from "../../core/shared/days";
import { DomainError } from "../../core/shared/domain-error";
import { type Column, columnOf, numbersOf, rowName } from "../columns";
import { defineFunction, required, withDefault } from "../define";
import { counted } from "../figure";
import { choice, date, number } from "../scalars";
import {
  cappedIn,
  cellCounts,
  columnInThousands,
  countText,
  type CountUnit,
  inUnit,
  remarkOnCapped,
  unitParameter,
} from "./kinds";

const months = number({
  min: 1,
  max: 12,
  whole: true,
  reason: "rolling means run over months of one year",
  zeroIsBlank: true,
});
const way = choice(["all samples", "monthly means"], { "monthly mean": "monthly means", samples: "all samples" });

interface Given {
  readonly dates: Column<DaySerial>;
  readonly counts: Column<number>;
  readonly upTo: DaySerial;
  readonly months: number;
  readonly unit: CountUnit;
  readonly way: "all samples" | "monthly means";
}

const ONE_SAMPLE = "at least one sample a month";

export const tankRolling = defineFunction({
  id: "TANK.ROLLING",
  group: "Cell counts",
  summary: "Rolling geometric mean of the tank's cell counts, as the European limit of 400 thousand is held against.",
  parameters: {
    dates: required(columnOf(date(), { notes: "leave out" }), "Days of the tank samples"),
    counts: required(cellCounts, "Cell counts of the tank samples"),
    upTo: required(date(), "Last day of the rolling mean"),
    months: withDefault(months, "Months that it runs over", 3, "3"),
    unit: unitParameter,
    way: withDefault(
      way,
      "Mean of every sample of those months, or of the calendar months' own means",
      "all samples",
      '"all samples"',
    ),
  },
  result: { shape: "scalar", type: "number", unit: "as the counts", format: "#,##0" },
  sources: [regulation853, fenlon2017],
  limits: [
    `Every month must hold ${ONE_SAMPLE.replace("at least ", "")}; seasonal supply may have another rule: ask the authority.`,
    "Countries choose one of the two ways, and some correct for season: the buyer's figure counts.",
    "Other rules (so many of the last five counts over a limit) are not this figure.",
  ],
  cautions: [],
  examples: [
    {
      arguments: [[[45_306], [45_337], [45_366]], [[200], [300], [450]], 45_382],
      result: 300,
      origin: "hand",
      where: "samples of 15 January, 15 February and 15 March 2024: cube root of 200 × 300 × 450",
    },
    {
      arguments: [
        [[45_300], [45_310], [45_337], [45_366]],
        [[100], [400], [300], [450]],
        45_382,
        null,
        null,
        "monthly means",
      ],
      result: 300,
      origin: "hand",
      where: "January's own mean is 200 (square root of 100 × 400), then as above",
    },
    {
      arguments: [[[45_300], [45_310], [45_337], [45_366]], [[100], [400], [300], [450]], 45_382],
      result: 271.08,
      decimals: 2,
      origin: "hand",
      where: "fourth root of 100 × 400 × 300 × 450",
    },
  ],
  compute(given, remarks) {
    const stretches = read(given);
    remarkOnCapped(cappedIn(stretches.flatMap(({ counts }) => counts)), remarks);
    return inUnit(rollingMean(stretches, given.way), given.unit);
  },
  steps(given, mean) {
    const stretches = read(given);
    return [
      ...stretches.map(({ from, to, counts }) => ({
        label: `${isoDate(from)} to ${isoDate(to)}`,
        working: `${counted(counts.length, "sample")}, geometric mean`,
        value: countText(inUnit(averagesOf(counts).geometric, given.unit), given.unit),
      })),
      {
        label: "Rolling mean",
        working: given.way === "all samples" ? "geometric mean of every sample" : "geometric mean of the months' means",
        value: countText(mean as number, given.unit),
      },
    ];
  },
});

function read({ dates, counts, upTo, months: over, unit, way: how }: Given): Stretch[] {
  const [days, thousands] = [numbersOf(dates), columnInThousands(counts, unit)];
  for (let row = 0; row < days.length; row++) {
    if (Number.isNaN(days[row]!) && !Number.isNaN(thousands[row]!)) {
      throw new DomainError(
        "invalid",
        `${rowName(dates.argument, row)} must be a date, since ${rowName(counts.argument, row)} holds a count; got a blank`,
      );
    }
  }
  return monthsOfSamples(days, thousands, upTo, over, how);
}
