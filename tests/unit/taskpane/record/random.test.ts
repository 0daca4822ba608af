import fc from "../../../random";
import { rulesInForce } from "../../../../src/taskpane/rules";
import type { RecordEvent } from "../../../../src/taskpane/screens/record/events";
import type { Field } from "../../../../src/taskpane/screens/record/fields";
import { contentOf } from "../../../../src/taskpane/screens/record/content";
import { draftOf, initialState, nextState } from "../../../../src/taskpane/screens/record/model";
import { blankEntry, isBlankEntry, type RecordState } from "../../../../src/taskpane/screens/record/state";
import { readHerd } from "../../../../src/herd/herd";
import { TableError } from "../../../../src/workbook/table-error";
import { bookOf, portOn, rowsOf, TODAY } from "./herd";

const FIELDS: readonly Field[] = [
  "date", "place", "trimmer", "reason", "landmark", "cow", "score", "foot", "toeInner", "toeOuter", "claw", "zone",
  "lesion", "stage", "severity", "note", "care.block", "care.painReliefDays", "care.drug", "care.milkHours", "actions",
]; // oxfmt-ignore
const TEXTS = ["", "12", "123", "999", "bella", "2026-03-01", "2026-12-01", "hard horn", "LH", "RF", "inner", "between", "4", "0", "85", "8.5", "SU", "dd", "M2", "=1+1", "2", "x"]; // oxfmt-ignore
const KEYS = ["Enter", "ArrowDown", "ArrowUp", "l", "h", "r", "f", "o", "b", "n", "a", "s", "0", "2", "3"];

const field = fc.constantFrom(...FIELDS);
const text = fc.constantFrom(...TEXTS);
const userEvent: fc.Arbitrary<RecordEvent> = fc.oneof(
  { weight: 6, arbitrary: fc.record({ type: fc.constant("typed" as const), field, text }) },
  { weight: 3, arbitrary: fc.record({ type: fc.constant("chose" as const), field: fc.constantFrom<Field>("cow", "score", "foot", "claw", "zone", "lesion", "stage", "severity"), value: text }) },
  { weight: 5, arbitrary: fc.record({ type: fc.constant("key" as const), field, key: fc.constantFrom(...KEYS) }) },
  fc.record({ type: fc.constant("switched" as const), field: fc.constantFrom("care.trim" as const, "care.painRelief" as const, "care.topical" as const), on: fc.boolean() }),
  fc.record({ type: fc.constant("left" as const), field }),
  fc.record({ type: fc.constant("pointed" as const), claw: fc.constantFrom("inner" as const, "outer" as const), zone: fc.nat(12) }),
  fc.record({ type: fc.constant("open finding" as const), place: fc.nat(3) }),
  fc.record({ type: fc.constant("remove finding" as const), place: fc.nat(3) }),
  fc.constantFrom<RecordEvent>({ type: "another finding" }, { type: "nothing found" }, { type: "bring back" }, { type: "resume draft" }, { type: "drop draft" }),
  { weight: 2, arbitrary: fc.constant<RecordEvent>({ type: "save" }) },
); // oxfmt-ignore

/** A whole entry, so that random events have something to spoil and to save. */
const GOOD: readonly RecordEvent[] = [
  { type: "chose", field: "cow", value: "12" },
  { type: "chose", field: "foot", value: "LH" },
  { type: "chose", field: "claw", value: "outer" },
  { type: "chose", field: "zone", value: "4" },
  { type: "chose", field: "lesion", value: "SU" },
];

async function start(): Promise<RecordState> {
  const herd = await readHerd(portOn(bookOf()));
  return nextState(initialState(TODAY, "id-0"), { type: "herd read", herd, rules: rulesInForce(herd.rules), past: [] });
}

/** All texts that the entry and the visit hold. */
function textsOf(value: unknown): readonly string[] {
  if (typeof value === "string") return value === "" ? [] : [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsOf) : [];
}

test("no event but one that says so takes away what was typed, and the view can always be drawn", async () => {
  const before = await start();
  const removing = new Set(["remove finding", "drop draft", "nothing found"]);
  fc.assert(
    fc.property(fc.array(userEvent, { maxLength: 40 }), (events) => {
      let state = before;
      for (const event of [...GOOD, ...events]) {
        const next = nextState(state, event);
        contentOf(next);
        // A value gives way only to another in its own field, or an earlier one of a field that hangs on it.
        if (!removing.has(event.type) && !["typed", "chose", "key", "pointed", "switched"].includes(event.type)) {
          const kept = textsOf([next.entry, next.cleared, next.phase.kind === "saving" ? next.phase.planned : null]);
          for (const typed of textsOf(state.entry.findings)) expect(kept).toContain(typed);
        }
        if (!isBlankEntry(next.entry)) expect(draftOf(next).entry).toBe(next.entry);
        expect(JSON.parse(JSON.stringify(draftOf(next)))).toEqual(draftOf(next));
        state = next;
        if (state.phase.kind === "saving") break;
      }
    }),
    { numRuns: 150 },
  );
});

test("while a save is on its way or half done nothing typed changes", async () => {
  const ready = [...GOOD, { type: "save" } as const].reduce(nextState, await start());
  expect(ready.phase.kind).toBe("saving");
  const doubtful = nextState(ready, { type: "save failed", id: "id-0", message: "?", uncertain: true });
  fc.assert(
    fc.property(fc.array(userEvent, { maxLength: 20 }), fc.boolean(), (events, uncertain) => {
      const state = uncertain ? doubtful : ready;
      const after = events.reduce(nextState, state);
      expect(after.entry).toBe(state.entry);
      expect(after.visit).toBe(state.visit);
      expect(after.phase.kind === "saving" ? after.phase.planned : undefined).toBe(
        state.phase.kind === "saving" || events.some(({ type }) => type === "save")
          ? ready.phase.kind === "saving" && ready.phase.planned
          : undefined,
      );
    }),
  );
});

type Fault = "none" | "before" | "lost answer";

/** Plays a screen on a workbook whose writing fails as told, saving again until it is done. */
async function saveThrough(faults: readonly Fault[], saves: number) {
  const book = bookOf();
  const port = portOn(book);
  let left = [...faults];
  book.beforeStep = async (step) => {
    const fault = left[0];
    if (step === "write" && fault === "before") {
      left = left.slice(1);
      throw new Error("the host refused");
    }
    if (step === "answer" && fault !== undefined) {
      left = left.slice(1);
      if (fault === "lost answer") throw new Error("the answer got lost");
    }
  };
  let state = await start();
  for (let count = 0; count < saves; count++) {
    state = GOOD.map((event) => (event.type === "chose" && event.field === "cow" ? { ...event, value: String([12, 123][count % 2]) } : event)).reduce(nextState, state); // oxfmt-ignore
    while (state.entry.id === `id-${count}`) {
      state = nextState(nextState(state, { type: "save" }), { type: "save" });
      if (state.phase.kind !== "saving") throw new Error(`not saving: ${state.error}`);
      const { save } = state.phase.planned;
      try {
        await port.save(save);
        state = nextState(state, { type: "saved", id: save.id, nextId: `id-${count + 1}`, past: port.pastSaves() });
      } catch (error) {
        const uncertain = error instanceof TableError && error.kind === "uncertain";
        state = nextState(state, { type: "save failed", id: save.id, message: String(error), uncertain });
      }
    }
  }
  return { state, rows: rowsOf(book, "Findings") };
}

test("every saved row stands in the workbook once, whatever fails on the way", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.constantFrom<Fault>("none", "before", "lost answer"), { maxLength: 6 }),
      fc.integer({ min: 1, max: 2 }),
      async (faults, saves) => {
        const { state, rows } = await saveThrough(faults, saves);
        expect(rows.map(({ Cow }) => Cow)).toEqual([12, 123].slice(0, saves));
        expect(state.entry).toEqual(blankEntry(`id-${saves}`));
        expect(state.past).toHaveLength(saves);
      },
    ),
    { numRuns: 60 },
  );
});
