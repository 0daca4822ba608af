import { axisTicks, highestShown, labelEvery, percentAlong } from "../../../../src/taskpane/parts/pictures/scale";

describe("ticks of an axis", () => {
  // By hand: at most four steps of 1, 2 or 5 times a power of ten, up to the highest value or just above.
  test.each([
    [4, [0, 1, 2, 3, 4]],
    [34.1, [0, 10, 20, 30, 40]],
    [40, [0, 10, 20, 30, 40]],
    [41, [0, 20, 40, 60]],
    [80.1, [0, 50, 100]],
    [0.31, [0, 0.1, 0.2, 0.3, 0.4]],
    [1, [0, 0.5, 1]],
    [0.07, [0, 0.02, 0.04, 0.06, 0.08]],
    [12_500, [0, 5_000, 10_000, 15_000]],
  ])("up to %d: %j", (highest, ticks) => {
    expect(axisTicks(highest)).toEqual(ticks);
  });

  test.each([
    [1, [0, 1]],
    [3, [0, 1, 2, 3]],
    [5, [0, 2, 4, 6]],
  ])("of counts are whole: up to %d %j", (highest, ticks) => {
    expect(axisTicks(highest, { whole: true })).toEqual(ticks);
  });

  test("of nothing but zeros there is an axis still", () => {
    expect(axisTicks(0)).toEqual([0, 0.5, 1]);
    expect(axisTicks(0, { whole: true })).toEqual([0, 1]);
  });
});

test.each([
  // The limit lies inside 1.6 times the highest value: 1.6 × 10 = 16.
  [[10, 4], [12, 5], 12],
  [[10, 4], [40], 16],
  [[10], [], 10],
  [[0], [3.7], 3.7],
  [[], [], 0],
])("an axis for the values %j and limits %j goes up to %d", (values, limits, most) => {
  expect(highestShown(values, limits)).toBe(most);
});

test.each([
  [5, 20, 0, 25],
  [45_300, 45_400, 45_200, 50],
  [30, 20, 0, 100],
  [-1, 20, 0, 0],
  [7, 7, 7, 0],
  [1, 3, 0, 33.33],
])("%d on the way to %d from %d lies at %d %%", (value, to, from, at) => {
  expect(percentAlong(value, to, from)).toBe(at);
});

test.each([
  [12, 7, 2],
  [14, 7, 2],
  [15, 7, 3],
  [3, 7, 1],
  [0, 7, 1],
])("of %d labels with room for %d each %d. is written", (count, most, every) => {
  expect(labelEvery(count, most)).toBe(every);
});
