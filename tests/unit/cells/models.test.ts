import { dailyLossKg } from "../../../src/core/cells/milk-loss";
import {
  DAILY_MODELS,
  HIGHEST_DAILY,
  LACTATION_DAYS,
  LACTATION_MODELS,
  LOWEST_DAILY,
  slopeFor,
  splitsByLactation,
} from "../../../src/core/cells/loss-models";
import { cellHerdLoss } from "../../../src/functions/cells/cell-herd-loss";
import { cellLactationLoss } from "../../../src/functions/cells/cell-lactation-loss";
import { cellLoss } from "../../../src/functions/cells/cell-loss";
import { explain } from "../../../src/functions/evaluate";
import { refusal, value } from "./call";

describe("models by name", () => {
  test("the default is the extension table, also as plain 'extension'", () => {
    const byDefault = value(cellLoss, 400, 2, null, null, "lb");
    expect(byDefault).toBeCloseTo(4.5, 10);
    for (const name of ["US extension table", "extension", "Extension table", "us extension"]) {
      expect(value(cellLoss, 400, 2, name, null, "lb")).toBe(byDefault);
    }
  });

  test.each(["Hortet-Seegers 1998", "hortet seegers 1998", "Hortet & Seegers 1998", "HORTET-SEEGERS 1998"])(
    "%s is found whatever its case and signs",
    (name) => expect(value(cellLoss, 100, 2, name, null, "kg")).toBeCloseTo(0.6, 12),
  );

  test.each(["Hortet-Seegers", "Luo 2023", "own", "own x", "own 0.4/", "own -0.4/0.8", 1998, true])(
    "%p is refused with the names",
    (name) => expect(refusal(cellLoss, 100, 2, name).message).toMatch(/^model must be .*"Potter 2018", or own slopes/),
  );

  test("Luo and Potter have one slope, the others two", () => {
    const split = DAILY_MODELS.filter(splitsByLactation).map(({ name }) => name);
    expect(split).toEqual(["US extension table", "Hortet-Seegers 1998", "Koldeweij 1999"]);
  });

  test("core refuses to guess a lactation as well", () => {
    expect(() => slopeFor(DAILY_MODELS[0], undefined)).toThrow("lactation is blank");
    expect(() => dailyLossKg(200, undefined, DAILY_MODELS[0])).toThrow("lactation is blank");
  });
});

describe("the set of models", () => {
  test("all are counted from the same base, so that their totals compare", () => {
    for (const { name } of DAILY_MODELS) {
      expect(value(cellLoss, 50, 1, name)).toBe(0);
      expect(value(cellLoss, 51, 1, name)).toBeGreaterThan(0);
    }
  });

  test("low and high of CELL.SUMMARY bound every model in either lactation group", () => {
    const daily = [
      ...DAILY_MODELS,
      ...LACTATION_MODELS.map(({ first, later }) => ({ first: first / LACTATION_DAYS, later: later / LACTATION_DAYS })),
    ];
    for (const { first, later } of daily) {
      expect(first).toBeGreaterThanOrEqual(LOWEST_DAILY.first);
      expect(later).toBeGreaterThanOrEqual(LOWEST_DAILY.later);
      expect(first).toBeLessThanOrEqual(HIGHEST_DAILY.first);
      expect(later).toBeLessThanOrEqual(HIGHEST_DAILY.later);
    }
  });

  test.each(["Hand 2012", "Halasa 2009", "Hortet 1999", "Goncalves 2018", "Durr 2008", "Hagnestam-Nielsen 2009"])(
    "%s is not offered: its coefficients were not read",
    (model) => expect(refusal(cellLoss, 200, 2, model).message).toMatch(/^model must be "US extension table"/),
  );
});

describe("own slopes", () => {
  test("are in the unit of the result", () => {
    expect(value(cellLoss, 100, 1, "own 0.40/0.80", null, "kg")).toBeCloseTo(0.4, 12);
    expect(value(cellLoss, 100, 2, "own 0.40/0.80", null, "lb")).toBeCloseTo(0.8, 12);
    expect(value(cellLoss, 100, 2, "own 0.40/0.80")).toBeCloseTo(0.8, 12);
  });

  test("or in the unit they carry", () => {
    expect(value(cellLoss, 100, 2, "own 0.40/0.80 kg")).toBeCloseTo(0.8 / 1.03, 12);
    expect(value(cellLoss, 100, 2, "own 0.75/1.5 lb", null, "kg")).toBeCloseTo(1.5 * 0.45359237, 12);
  });

  test("may be one for all lactations, and may have a decimal comma", () => {
    expect(value(cellLoss, 100, null, "own 0,5", null, "kg")).toBeCloseTo(0.5, 12);
    expect(value(cellLoss, 100, 1, "Own 0,4 / 0,8", null, "kg")).toBeCloseTo(0.4, 12);
    expect(refusal(cellLoss, 100, null, "own 0.4/0.8").message).toContain('"own 0.4/0.8" has one slope for first');
  });

  test("that look like slopes for a lactation are refused", () => {
    expect(refusal(cellLoss, 100, 2, "own 80/160").message).toBe(
      'model must be own slopes of at most 5 kg a day for each doubling (more looks like slopes for a lactation); got "own 80/160"',
    );
    expect(value(cellLactationLoss, 3, 2, "own 80/160", "kg")).toBeCloseTo(160, 10);
    expect(refusal(cellLactationLoss, 3, 2, "own 80/1600", "kg").message).toContain("at most 1500 kg a lactation");
  });

  test("are named as the user's own in the working", () => {
    const { steps } = explain(cellHerdLoss, [[[100]], [[2]], 10, "own 0.4/0.8", null, "kg"]);
    expect(steps.find(({ label }) => label === "Loss a day")!.working).toBe("own 0.4/0.8");
  });
});

describe("the working of a herd's loss", () => {
  const { steps } = explain(cellHerdLoss, [[[100], [200], [400], [null]], [[1], [2], [3], [2]], 100]);
  const step = (label: string): string => {
    const { working, value: shown } = steps.find((one) => one.label === label)!;
    return `${working} | ${shown}`;
  };

  test("names cows used and left out, doublings by group, the day, the days and the unit", () => {
    expect(step("Cows with a count")).toBe("1 left out: no count | 3");
    expect(step("First lactation")).toBe("1 cow, together 1 doubling above 50 thousand × 0.3402 kg | 0.34 kg a day");
    // 2 + 3 doublings × 1.5 lb × 0.45359237 kg = 3.40194 kg; with the first 3.74214 kg.
    expect(step("Later lactations")).toBe(
      "2 cows, together 5 doublings above 50 thousand × 0.6804 kg | 3.402 kg a day",
    );
    expect(step("Loss a day")).toBe("US extension table | 3.742 kg");
    expect(step("Over the days")).toBe("3.742 kg × 100 days | 374.21 kg");
    expect(step("In the unit asked")).toBe("374.214 kg / 1.03 kg a litre | 363.31 litres");
  });
});
