import { day } from "../../../../src/core/shared/days";
import { contentOf } from "../../../../src/taskpane/screens/record/content";
import { isLame } from "../../../../src/taskpane/screens/record/mobility";
import { TODAY } from "./herd";
import { Typist } from "./typist";

/** Half points are chosen by touch or with the arrow keys. */
const scored = async (scale: string | undefined, score: string): Promise<Typist> => {
  const typist = await Typist.at(scale === undefined ? {} : { scale });
  return typist.type("12⏎").send({ type: "chose", field: "score", value: score });
};
const problems = ({ state }: Typist) =>
  contentOf({ ...state, attempted: true })
    .problemsAt("score")
    .map(({ text }) => text);

// Lame from 2 on the scale 0-3 (Reader et al. 2011), from 3 on the scale 1-5 (Sprecher et al. 1997).
test.each([
  [undefined, "1", false],
  [undefined, "2", true],
  ["0-3", "2", true],
  ["1-5", "2", false],
  ["1-5", "2.5", false],
  ["1-5", "3", true],
  ["1-5", "5", true],
])("on the scale %s a score of %s is lame: %s", async (scale, score, lame) => {
  const typist = await scored(scale, score);
  expect(problems(typist)).toEqual([]);
  expect(isLame(typist.state)).toBe(lame);
});

test.each([
  [undefined, "4", "Score must be 0, 1, 2 or 3; got 4."],
  [undefined, "1.5", "Score must be 0, 1, 2 or 3; got 1.5."],
  ["1-5", "0", "Score must be 1 to 5, in whole or half points; got 0."],
  ["1-5", "2.3", "Score must be 1 to 5, in whole or half points; got 2.3."],
])("on the scale %s a score of %s is refused", async (scale, score, text) => {
  expect(problems(await scored(scale, score))).toContain(text);
});

test("the keys of the scale choose a score; others do nothing", async () => {
  const keys = async (scale: string, key: string) =>
    (await Typist.at({ scale })).type("12⏎").type(key).state.entry.score;
  expect(await keys("1-5", "5")).toBe("5");
  expect(await keys("1-5", "0")).toBe("");
  expect(await keys("0-3", "0")).toBe("0");
  expect(await keys("0-3", "5")).toBe("");
});

test("scores of the past year are judged on the scale of the workbook", async () => {
  const scores = [2, 2, 2.5, 4].map((score, week) => ({ date: TODAY - 7 * week - 7, cow: 12, score }));
  const typist = (await Typist.at({ scale: "1-5", scores })).type("12⏎");
  expect(contentOf(typist.state).at!.facts.scored).toEqual({ lame: 1, all: 4 });
});

test("a score of the scale 1-5 is saved as it was given", async () => {
  const { state } = (await scored("1-5", "3.5")).send({ type: "save" });
  if (state.phase.kind !== "saving") throw new Error(state.phase.kind);
  expect(state.phase.planned.save.changes).toEqual([
    { append: "Scores", rows: [{ Date: { day: day("2026-03-10") }, Cow: 12, Score: 3.5 }] },
  ]);
});
