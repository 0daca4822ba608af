import { defaultRecheckRules, recheckDays, ruleFor } from "../../../src/core/claws/recheck-rules";
import { day } from "../../../src/core/shared/days";
import { readHerd } from "../../../src/herd/herd";
import { rulesInForce } from "../../../src/taskpane/rules";
import { initialState, nextState } from "../../../src/taskpane/screens/record/model";
import type { RecordState } from "../../../src/taskpane/screens/record/state";
import { readBook } from "../../../src/taskpane/screens/due/book";
import { listingOf } from "../../../src/taskpane/screens/due/listing";
import type { RecordEvent } from "../../../src/taskpane/screens/record/events";
import type { TablePort } from "../../../src/workbook/table-port";
import { Typist } from "../../unit/taskpane/record/typist";
import { openSetUp, sampleBook } from "./own-book";

const TODAY = day("2026-09-01");
const own = sampleBook("own-headings.xlsx");

async function recordOn(tables: TablePort): Promise<Typist> {
  const herd = await readHerd(tables);
  const start = initialState(TODAY, "id-1");
  return new Typist(nextState(start, { type: "herd read", herd, rules: rulesInForce(herd.rules), past: [] }));
}

function plannedSave({ phase, error }: RecordState) {
  if (phase.kind !== "saving") throw new Error(`${phase.kind}: ${error}`);
  return phase.planned.save;
}

const typed = (field: Extract<RecordEvent, { type: "typed" }>["field"], text: string): RecordEvent => ({ type: "typed", field, text }); // oxfmt-ignore

test("the secretary records a finding in her own book, and its recheck is due", async () => {
  const { tables, book } = await openSetUp(own);
  const typist = await recordOn(tables);
  const cow = typist.state.herd!.cows.all.find(({ left, lactation }) => left === null && lactation === 2)!.name;
  typist.type(`${cow}⏎0lho`).send(typed("lesion", "DD"), typed("zone", ""));
  typist.send({ type: "save" });
  await tables.save(plannedSave(typist.state));
  const { rows } = await book.readSheet("Feet 2026");
  expect(rows.at(-1)!.slice(0, 5)).toEqual(["01/09/2026", Number(cow), "left back", "outside", "DD"]);
  const { lines } = listingOf(await readBook(tables), TODAY, 60);
  const hers = lines.filter((line) => line.cow === cow && line.work === "recheck");
  expect(hers.map(({ due }) => due - TODAY)).toEqual(recheckDays(ruleFor(defaultRecheckRules, "DD")!));
});

test("what her list has no column for stands in its note", async () => {
  const { tables, book } = await openSetUp(own);
  const typist = await recordOn(tables);
  const cow = typist.state.herd!.cows.all.find(({ left }) => left === null)!.name;
  typist.type(`${cow}⏎0lho`).send(typed("lesion", "SU"), typed("zone", "4"), { type: "save" });
  await tables.save(plannedSave(typist.state));
  const row = (await book.readSheet("Feet 2026")).rows.at(-1)!;
  expect(row.slice(0, 4)).toEqual(["01/09/2026", Number(cow), "left back", "outside"]);
  expect(row.at(-1)).toBe("zone 4");
});
