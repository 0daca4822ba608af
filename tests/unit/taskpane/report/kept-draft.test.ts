import { draftOf, startWith } from "../../../../src/taskpane/screens/report/kept-draft";
import { initialReportState, nextReportState } from "../../../../src/taskpane/screens/report/state";

const TODAY = "2026-09-01";

test("heading and notes are there when the pane is opened again", () => {
  const named = nextReportState(initialReportState, { type: "heading typed", text: "North shed" });
  const noted = nextReportState(named, { type: "notes typed", text: "Grooves worn\nsecond line" });
  const kept: unknown = JSON.parse(JSON.stringify(draftOf(noted, TODAY)));
  expect(startWith(kept, TODAY)).toEqual({ ...noted, notesOf: undefined });
});

test("notes of an earlier day say so until they are touched, and keep their day", () => {
  const kept = { heading: "North shed", notes: "Grooves worn", writtenOn: "2026-06-01" };
  const opened = startWith(kept, TODAY);
  expect(opened.notesOf).toBe("2026-06-01");
  expect(draftOf(nextReportState(opened, { type: "heading typed", text: "South" }), TODAY)).toEqual({
    heading: "South",
    notes: "Grooves worn",
    writtenOn: "2026-06-01",
  });
  const typed = nextReportState(opened, { type: "notes typed", text: "New" });
  expect([typed.notesOf, draftOf(typed, TODAY).writtenOn]).toEqual([undefined, TODAY]);
  expect(startWith({ ...kept, notes: " " }, TODAY).notesOf).toBeUndefined();
});

test.each([undefined, null, "x", 7, [], {}, { heading: 3, notes: {} }])(
  "%j is no draft, and breaks nothing",
  (kept) => {
    expect(startWith(kept, TODAY)).toEqual(initialReportState);
  },
);
