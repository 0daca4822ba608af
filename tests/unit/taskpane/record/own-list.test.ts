import { readHerd } from "../../../../src/herd/herd";
import { rulesInForce } from "../../../../src/taskpane/rules";
import { isAsked } from "../../../../src/taskpane/screens/record/field-order";
import { initialState, nextState } from "../../../../src/taskpane/screens/record/model";
import { placeHint } from "../../../../src/taskpane/screens/record/places";
import { mappingTable } from "../../../../src/workbook/mapping-table";
import type { PlainCell } from "../../../../src/workbook/port";
import { openFarmBook } from "../../../workbook/mapped/own-book";
import { book, sheet } from "../../herd/plain-sheet";
import { TODAY } from "./herd";
import { Typist } from "./typist";

const COWS = [
  ["Cow", "Lactation", "Calved", "Entered"],
  [12, 3, TODAY - 110, TODAY - 900],
];

/** The columns of a list of findings in the terms of the mapping, by the farm's heading. */
type Headings = Readonly<Record<string, string>>;
const VISIT: Headings = { Visit: "Date", Tag: "Cow", Found: "Lesion" };

function listOf(name: string, headings: Headings, first: PlainCell) {
  const row = Object.values(headings).map((value) => ({ Date: first, Cow: 12, Lesion: "DD" })[value] ?? null);
  return sheet(name, [Object.keys(headings), row], { days: [Object.values(headings).indexOf("Date")] });
}

/** Somebody who records into a farm's own lists, the last of which grows. */
async function recording(...lists: readonly Headings[]) {
  const rows = lists.flatMap((headings, at) => Object.entries(headings).map(([heading, value]) => ["Findings", value, `Feet ${at}`, null, heading])); // oxfmt-ignore
  const mapping = sheet("Mapping", [mappingTable.columns.map(({ heading }) => heading), ...rows.map((row) => [...row, null, null, null, null])], { table: "Mapping" }); // oxfmt-ignore
  const feet = lists.map((headings, at) => listOf(`Feet ${at}`, headings, TODAY - 400 + at));
  const { tables } = openFarmBook(book(sheet("Cows", COWS, { table: "Cows", days: [2, 3] }), ...feet, mapping));
  const herd = await readHerd(tables);
  const state = nextState(initialState(TODAY, "id-1"), { type: "herd read", herd, rules: rulesInForce(undefined), past: [] }); // oxfmt-ignore
  const typist = new Typist(state);
  return { tables, typist };
}

/** Saves what was typed, and gives the new row by our headings, blanks left out. */
async function saved({ tables, typist }: Awaited<ReturnType<typeof recording>>) {
  const { phase } = typist.state;
  if (phase.kind !== "saving") throw new Error(phase.kind);
  await tables.save(phase.planned.save);
  const { columns, rows } = await tables.readTable("Findings");
  return Object.fromEntries(columns.flatMap(({ heading }, at) => (rows.at(-1)![at] === null ? [] : [[heading, rows.at(-1)![at]]]))); // oxfmt-ignore
}

describe("a list of findings that has few columns", () => {
  test("takes what it has no column for into its note", async () => {
    const at = await recording({ ...VISIT, Remarks: "Note" });
    at.typist.send({ type: "typed", field: "landmark", text: "hard horn" }).type("12⏎").send({ type: "chose", field: "foot", value: "LH" }); // oxfmt-ignore
    at.typist.send(
      { type: "typed", field: "toeOuter", text: "84" },
      { type: "typed", field: "claw", text: "outer" },
      { type: "typed", field: "zone", text: "4" },
      { type: "chose", field: "lesion", value: "SU" },
      { type: "typed", field: "severity", text: "2" },
      { type: "save" },
    );
    const row = await saved(at);
    expect(row).toMatchObject({ Date: TODAY, Cow: 12, Lesion: "SU" });
    expect(Object.keys(row)).toEqual(["Date", "Cow", "Lesion", "Note"]);
    expect(row["Note"]).toMatch(
      /^foot LH; claw outer; zone 4; severity 2; treatment: trim, .*withdrawal not entered; LH outer toe 84 mm from hard horn$/,
    );
  });

  test("says beside the field where a value goes", async () => {
    const { typist } = await recording({ ...VISIT, Remarks: "Note", Leg: "Foot" });
    expect(placeHint(typist.state, "zone")).toBe("no column in your list: goes into the note");
    expect(placeHint(typist.state, "foot")).toBe("");
    expect(isAsked(typist.state, "severity")).toBe(true);
  });

  test("without a note is not asked for what it cannot hold, and takes the rest", async () => {
    const at = await recording(VISIT);
    const { state } = at.typist;
    expect((["severity", "care.other", "note", "trimmer"] as const).map((field) => isAsked(state, field))).toEqual([false, false, false, false]); // oxfmt-ignore
    expect(isAsked(state, "zone")).toBe(true);
    expect(placeHint(state, "zone")).toBe("no column in your list: is not written");
    at.typist.type("12⏎").send({ type: "chose", field: "foot", value: "LH" });
    at.typist.send({ type: "typed", field: "claw", text: "outer" }, { type: "typed", field: "zone", text: "4" }, { type: "chose", field: "lesion", value: "SU" }, { type: "save" }); // oxfmt-ignore
    expect(await saved(at)).toEqual({ Date: TODAY, Cow: 12, Lesion: "SU" });
  });

  test("with a treatment and no note has the withdrawal behind the treatment", async () => {
    const at = await recording({ ...VISIT, Done: "Treatment" });
    at.typist.type("12⏎").send({ type: "chose", field: "foot", value: "LH" });
    at.typist.send({ type: "typed", field: "claw", text: "outer" }, { type: "chose", field: "lesion", value: "SU" }, { type: "save" }); // oxfmt-ignore
    expect((await saved(at))["Treatment"]).toMatch(/^trim, .*; milk and meat withdrawal not entered$/);
  });

  test("that grows beside an older one with more columns takes only its own", async () => {
    const at = await recording({ ...VISIT, Lact: "Lactation", Zone: "Zone" }, { ...VISIT, Remarks: "Note" });
    at.typist.type("12⏎").send({ type: "chose", field: "foot", value: "LH" });
    at.typist.send({ type: "typed", field: "claw", text: "outer" }, { type: "typed", field: "zone", text: "4" }, { type: "chose", field: "lesion", value: "SU" }, { type: "save" }); // oxfmt-ignore
    const row = await saved(at);
    expect(Object.keys(row)).toEqual(["Date", "Cow", "Lesion", "Note"]);
    expect(row["Note"]).toContain("zone 4");
  });
});
