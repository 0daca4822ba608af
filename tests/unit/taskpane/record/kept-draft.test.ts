import fc from "../../../random";
import { contentOf } from "../../../../src/taskpane/screens/record/content";
import { keptDraft } from "../../../../src/taskpane/screens/record/kept-draft";
import { draftOf, initialState, nextState } from "../../../../src/taskpane/screens/record/model";
import { TODAY } from "./herd";
import { Typist } from "./typist";

test("a draft comes back as it was kept, with what was being written", async () => {
  const typist = (await Typist.at()).type("12⏎2lho4⏎su⏎2arhb0⏎dd⏎2");
  const again = (value: unknown) => keptDraft(JSON.parse(JSON.stringify(value)));
  expect(again(draftOf(typist.state))).toEqual(draftOf(typist.state));
  const saving = typist.type("1⏎").state;
  expect(saving.phase.kind).toBe("saving");
  expect(again(draftOf(saving))).toEqual(draftOf(saving));
});

test("after a crash while saving, the very same save is handed over again", async () => {
  const saving = (await Typist.at()).type("12⏎2lho4⏎su⏎2⏎").state;
  const draft = keptDraft(JSON.parse(JSON.stringify(draftOf(saving))));
  const reopened = [
    { type: "resume draft" },
    { type: "typed", field: "lesion", text: "DD" },
    { type: "save" },
  ] as const;
  const state = reopened.reduce(nextState, initialState(TODAY, "id-9", draft));
  expect(state.phase).toEqual(saving.phase);
});

test("an entry begun before the old one was gone on with keeps both", async () => {
  const draft = draftOf((await Typist.at()).type("12⏎2").state);
  const typist = new Typist(initialState(TODAY, "id-9", draft)).type("123");
  const next = initialState(TODAY, "id-10", keptDraft(draftOf(typist.state)));
  expect(next.offered?.entry.cowText).toBe("123");
  expect(nextState(next, { type: "drop draft" }).offered?.entry.cowText).toBe("12");
});

test("whatever was kept, the screen opens", () => {
  const anything = fc.oneof(
    fc.jsonValue(),
    fc.record({ visit: fc.jsonValue(), entry: fc.record({ id: fc.string(), cowText: fc.jsonValue(), findings: fc.jsonValue(), toes: fc.jsonValue(), current: fc.jsonValue(), agreed: fc.jsonValue() }), begun: fc.jsonValue(), earlier: fc.jsonValue() }),
  ); // oxfmt-ignore
  fc.assert(
    fc.property(anything, (kept) => {
      const opened = nextState(initialState(TODAY, "id-1", keptDraft(kept)), { type: "resume draft" });
      contentOf(opened);
    }),
  );
});

const notPlaces: readonly unknown[] = [{ toString: "" }, [[]], "1", -1, 0.5, 1, null];
test.each(notPlaces.map((current) => ({ current })))(
  "$current, kept as place among one finding, is the first",
  (kept) => {
    expect(keptDraft({ entry: { id: "id-1", findings: [{}], ...kept } })?.entry.current).toBe(0);
  },
);
