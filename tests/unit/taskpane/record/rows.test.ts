import { rulesInForce } from "../../../../src/taskpane/rules";
import type { RecordEvent } from "../../../../src/taskpane/screens/record/events";
import { bookOf, herdOf, portOn, rowsOf, TODAY } from "./herd";
import { Typist } from "./typist";

const typed = (field: Extract<RecordEvent, { type: "typed" }>["field"], text: string): RecordEvent => ({ type: "typed", field, text }); // oxfmt-ignore

/** The rows that the save of a typist leaves in the workbook. */
async function written(typist: Typist, table = "Findings") {
  const { phase } = typist.state;
  if (phase.kind !== "saving") throw new Error(phase.kind);
  const book = bookOf();
  await portOn(book).save(phase.planned.save);
  return rowsOf(book, table);
}

test("the toe of the claw goes into its column, the other into the note", async () => {
  const typist = (await Typist.at()).send(typed("landmark", "hard horn")).type("12⏎2lh85⏎88⏎o4⏎su⏎2⏎");
  const [row] = await written(typist);
  expect(row).toMatchObject({ "Toe mm": 88, "Measured from": "hard horn" });
  expect(row!["Note"]).toBe("milk and meat withdrawal not entered; LH inner toe 85 mm from hard horn");
});

test("a sound cow has one row with the toe that sets the length; the rest is noted", async () => {
  const typist = (await Typist.at()).send(typed("landmark", "skin-horn line")).type("12⏎0lh94⏎96⏎");
  const rows = await written(typist.send({ type: "nothing found" }));
  expect(rows).toEqual([
    {
      Date: TODAY, Cow: 12, Lactation: 3, "Days in milk": 110, Foot: "LH", Claw: "inner", Lesion: "none",
      "Toe mm": 94, "Measured from": "skin-horn line", Note: "LH outer toe 96 mm from skin-horn line",
    },
  ]); // oxfmt-ignore
});

test("the visit is noted in the first row of a cow", async () => {
  const typist = (await Typist.at()).send(typed("trimmer", "A. Example"), typed("reason", "routine"), typed("place", "barn 2")); // oxfmt-ignore
  const rows = await written(typist.type("12⏎0lho4⏎su⏎1arhi4⏎su⏎1⏎"));
  expect(rows.map(({ Note }) => Note)).toEqual(["routine; trimmer A. Example; place barn 2", undefined]);
});

test("a score alone", async () => {
  const typist = (await Typist.at()).type("12⏎2").send({ type: "save" });
  expect(await written(typist)).toEqual([]);
  expect(await written(typist, "Scores")).toEqual([{ Date: TODAY, Cow: 12, Score: 2 }]);
});

test("text that looks like a formula stays text", async () => {
  const typist = (await Typist.at()).type("12⏎0lho4⏎su⏎1").send(typed("note", "=HYPERLINK(1)"), { type: "save" });
  expect((await written(typist))[0]!["Note"]).toBe("=HYPERLINK(1)");
});

test("a rules table that contradicts itself fills nothing in, and says why", async () => {
  const { rules } = await herdOf();
  const twice = { ...rules!, rows: [...rules!.rows, ["SU", 5, null, null, null, null, null, null, null]] };
  expect(rulesInForce(twice)).toMatchObject({ rules: [], remark: expect.stringContaining("SU stands in two rows") as string });
  expect(rulesInForce(undefined).remark).toContain("built-in");
}); // oxfmt-ignore

test("another day than today is told", async () => {
  const typist = (await Typist.at()).send(typed("date", "2026-03-09")).type("12⏎0n");
  expect((await written(typist))[0]).toMatchObject({ Date: TODAY - 1, "Days in milk": 109 });
});
