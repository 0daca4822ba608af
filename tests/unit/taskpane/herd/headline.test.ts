import { headlineOf } from "../../../../src/taskpane/screens/herd/headline";
import { lesion, tableOf } from "./lesions";

const dermatitis = lesion("DD", "Digital dermatitis", 40, { rate: 28.24, target: 12, against: "above" });
const whiteLine = lesion("WL", "White line disease", 20, { rate: 14, target: 12.7, against: "within chance" });
const erosion = lesion("HHE", "Heel horn erosion", 12);
const ulcer = lesion("U", "Ulcer", 8);
const soleUlcer = lesion("SU", "Sole ulcer", 8, { rate: 5, target: 13.8, against: "below" });

test("names the lesions that make half of the cases, and how they stand to their targets", () => {
  // 40 of 80 is half already.
  expect(headlineOf(tableOf([dermatitis, whiteLine, erosion, ulcer, soleUlcer], 80))).toEqual({
    first: "Digital dermatitis makes 50 % of 80 new cases.",
    rest: "Above target, more than chance explains: digital dermatitis (28.2 against 12 per 100 cow-years). Too close to tell: white line disease.",
  });
});

test("a form counts in its parent alone, and three names are enough", () => {
  const even = ["DD", "WL", "HHE", "IP", "IH", "TS"].map((code) => lesion(code, code, 10));
  expect(headlineOf(tableOf([...even, lesion("SU", "Sole ulcer", 10)], 60)).first).toBe(
    "Dd, wl and hhe make 50 % of 60 new cases.",
  );
  const many = ["DD", "WL", "HHE", "IP", "IH", "TS", "CC", "SC"].map((code) => lesion(code, code, 10));
  // Three of eight are 37.5 %.
  expect(headlineOf(tableOf(many, 80)).first).toBe("Dd, wl and hhe make 38 % of 80 new cases.");
});

test("without targets, and with none above", () => {
  expect(headlineOf(tableOf([erosion], 12)).rest).toBe("The workbook has no targets to measure them against.");
  expect(headlineOf(tableOf([erosion, soleUlcer], 20)).rest).toBe(
    "No lesion lies above its target by more than chance explains.",
  );
});

test("a target of a group, or of all lesions, is a target", () => {
  const horn = lesion("horn", "Claw horn lesions", 12, { rate: 20, target: 15, against: "above" });
  const infectious = lesion("infectious", "Infectious lesions", 9, { rate: 9, target: 8, against: "within chance" });
  expect(headlineOf(tableOf([erosion], 12, [horn, infectious])).rest).toBe(
    "Above target, more than chance explains: claw horn lesions (20.0 against 15 per 100 cow-years). Too close to tell: infectious lesions.",
  );
  const all = lesion("all", "All lesions", 12, { rate: 40, target: 30, against: "above" });
  expect(headlineOf({ ...tableOf([erosion], 12), all }).rest).toBe(
    "Above target, more than chance explains: all lesions (40.0 against 30 per 100 cow-years).",
  );
});

test("few cases dominate nothing, and no case is told as such", () => {
  const few = [lesion("DD", "Digital dermatitis", 5), lesion("WL", "White line disease", 4)];
  expect(headlineOf(tableOf(few, 9))).toEqual({
    first: "Only 9 new cases were recorded: digital dermatitis 5 and white line disease 4.",
    rest: "That is too few to say which lesion dominates.",
  });
  expect(headlineOf(tableOf([lesion("IP", "Foul", 1)], 1)).first).toBe("Only 1 new case was recorded: foul 1.");
  expect(headlineOf(tableOf([], 0)).first).toBe("No new case of a claw lesion was recorded in this time.");
});
