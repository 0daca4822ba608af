import { day } from "../../../../src/core/shared/days";
import { beginsLate, changesSentence, lesionChanges } from "../../../../src/taskpane/screens/herd/change";
import { lesion, tableOf } from "./lesions";

const even = { now: 36_500, before: 36_500 };

test("two times are compared by the part of all cases that falls into the later", () => {
  // By R, 2 * pbinom(29, 40, 0.5, lower.tail = FALSE) is 0.002 for 30 of 40, and 0.50 for 12 of 20.
  const now = tableOf([lesion("DD", "Digital dermatitis", 30), lesion("WL", "White line disease", 12)], 42);
  const before = tableOf([lesion("DD", "Digital dermatitis", 10), lesion("WL", "White line disease", 8)], 18);
  const changes = lesionChanges(now, before, even);
  expect(changes.map(({ name, verdict }) => [name, verdict])).toEqual([
    ["Digital dermatitis", "more"],
    ["White line disease", "may be chance"],
    ["All lesions", "more"],
  ]);
  expect(changesSentence(changes)).toBe(
    "More than before, beyond chance: digital dermatitis. The others may differ by chance.",
  );
  expect(lesionChanges(before, now, even).map(({ verdict }) => verdict)).toEqual(["fewer", "may be chance", "fewer"]);
});

test("a herd that grew has more cases without a change", () => {
  // 30 of 40 where three quarters of the cow-days are in the later time.
  const now = tableOf([lesion("DD", "Digital dermatitis", 30)], 30);
  const before = tableOf([lesion("DD", "Digital dermatitis", 10)], 10);
  const changes = lesionChanges(now, before, { now: 75_000, before: 25_000 });
  expect(changes.map(({ verdict }) => verdict)).toEqual(["may be chance", "may be chance"]);
  expect(changesSentence(changes)).toBe("No lesion changed by more than chance explains.");
});

test("a lesion of one time only, and none at all", () => {
  const changes = lesionChanges(tableOf([], 0), tableOf([lesion("IP", "Foul", 12)], 12), even);
  expect(changes.map(({ name, now, before, verdict }) => [name, now, before, verdict])).toEqual([
    ["Foul", 0, 12, "fewer"],
    ["All lesions", 0, 12, "fewer"],
  ]);
  expect(lesionChanges(tableOf([], 0), tableOf([], 0), even)[0]?.verdict).toBe("may be chance");
});

test("a list that begins late says from which day on there is a whole time before", () => {
  // From 2025-07-01 to 2026-08-31 are 427 days: the later half begins on 2026-01-31, as many days after as before.
  expect(beginsLate(day("2025-07-01"), day("2026-08-31"))).toContain("Own dates from 2026-01-31 on");
});
