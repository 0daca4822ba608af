import { draftsOf, reportDraftsOf, savesOf } from "../../../src/entries/kept-in-browser";
import type { Draft } from "../../../src/taskpane/screens/record/state";
import { keptSaves, type LoggedSave } from "../../../src/workbook/saving/save-log";

/** The browser's storage, which may be full, forbidden or damaged. */
class Storage {
  readonly texts = new Map<string, string>();
  refuses = false;
  isFull = false;
  getItem(key: string): string | null {
    if (this.refuses) throw new Error("access denied");
    return this.texts.get(key) ?? null;
  }
  removeItem(key: string): void {
    this.texts.delete(key);
  }
  setItem(key: string, text: string): void {
    if (this.refuses || this.isFull) throw new Error("quota exceeded");
    this.texts.set(key, text);
  }
}

let storage: Storage;
beforeEach(() => {
  storage = new Storage();
  Object.assign(globalThis, { localStorage: storage });
});
afterAll(() => Reflect.deleteProperty(globalThis, "localStorage"));

const draft = { visit: { place: "shed" }, entry: { id: "a" } } as unknown as Draft;
const row = { table: "Care", index: 3, cells: { Cow: 1, What: null } };
const saves: LoggedSave[] = [
  { state: "done", id: "a", title: "Cow 1", applied: [{ kind: "append", rows: [row] }] },
  { state: "done", id: "b", title: "Cow 2", applied: [{ kind: "set", before: row, after: row, headings: ["What"] }] },
  {
    state: "begun",
    id: "c",
    title: "Cow 3",
    edits: [
      { kind: "append", table: "Care", rows: [{ Cow: 3, When: { day: 45_000 } }] },
      { kind: "set", row, cells: { What: "x" } },
    ],
    rowCounts: { Care: 4 },
  },
];

test("a draft outlives the pane, apart for each workbook", () => {
  draftsOf({ name: "herd.xlsx" }).keep(draft);
  expect(draftsOf({ name: "herd.xlsx" }).read()).toEqual(draft);
  expect(draftsOf({ name: "other.xlsx" }).read()).toBeUndefined();
});

test("the words of the report are kept apart from what was typed under Record", () => {
  const words = { heading: "North shed", notes: "Grooves", writtenOn: "2026-09-01" };
  draftsOf({ name: "herd.xlsx" }).keep(draft);
  reportDraftsOf({ name: "herd.xlsx" }).keep(words);
  expect(reportDraftsOf({ name: "herd.xlsx" }).read()).toEqual(words);
  expect(draftsOf({ name: "herd.xlsx" }).read()).toEqual(draft);
});

test("what was kept before the workbook was saved moves to its name, once", () => {
  draftsOf({ name: "unsaved 1" }).keep(draft);
  savesOf({ name: "unsaved 1" }).write(saves);
  const saved = { name: "herd.xlsx", formerName: "unsaved 1" };
  expect(draftsOf(saved).read()).toEqual(draft);
  expect(savesOf(saved).read()).toEqual(saves);
  expect(draftsOf({ name: "copy.xlsx", formerName: "unsaved 1" }).read()).toBeUndefined();
});

test("of a workbook saved over another file its own draft and saves are kept, not those of that file", () => {
  const ofTheFile = { ...draft, visit: { place: "barn" } };
  draftsOf({ name: "herd.xlsx" }).keep(ofTheFile);
  savesOf({ name: "herd.xlsx" }).write(saves.slice(0, 1));
  draftsOf({ name: "unsaved 2" }).keep(draft);
  savesOf({ name: "unsaved 2" }).write(saves);
  const savedOver = { name: "herd.xlsx", formerName: "unsaved 2" };
  expect(draftsOf(savedOver).read()).toEqual(draft);
  expect(savesOf(savedOver).read()).toEqual(saves);
});

test("where nothing was kept before the workbook was saved, what its name keeps stays", () => {
  draftsOf({ name: "herd.xlsx" }).keep(draft);
  expect(draftsOf({ name: "herd.xlsx", formerName: "unsaved 3" }).read()).toEqual(draft);
});

test("what cannot be moved stays where it was", () => {
  draftsOf({ name: "unsaved 4" }).keep(draft);
  storage.isFull = true;
  expect(draftsOf({ name: "herd.xlsx", formerName: "unsaved 4" }).read()).toBeUndefined();
  storage.isFull = false;
  expect(draftsOf({ name: "herd.xlsx", formerName: "unsaved 4" }).read()).toEqual(draft);
});

test("the last saves outlive the pane, apart for each workbook", () => {
  savesOf({ name: "herd.xlsx" }).write(saves);
  expect(savesOf({ name: "herd.xlsx" }).read()).toEqual(saves);
  expect(savesOf({ name: "other.xlsx" }).read()).toEqual([]);
});

test("storage that is forbidden or full stops nothing; the pane still holds its saves", () => {
  storage.refuses = true;
  const drafts = draftsOf({ name: "herd.xlsx" });
  const log = savesOf({ name: "herd.xlsx" });
  drafts.keep(draft);
  expect(drafts.read()).toBeUndefined();
  log.write(saves);
  expect(log.read()).toEqual(saves);
});

test.each(["", "{", "null", "7", '"text"', "[1,null,{}]", '{"id":"a"}'])("damaged storage %j keeps nothing", (text) => {
  draftsOf({ name: "herd.xlsx" }).keep(draft);
  savesOf({ name: "herd.xlsx" }).write(saves);
  for (const key of storage.texts.keys()) storage.texts.set(key, text);
  expect(() => draftsOf({ name: "herd.xlsx" }).read()).not.toThrow();
  expect(savesOf({ name: "herd.xlsx" }).read()).toEqual([]);
});

test("of damaged saves the sound ones are kept", () => {
  const [done] = saves;
  expect(
    keptSaves([
      ...saves,
      { ...done, applied: [{ kind: "append", rows: [{ ...row, cells: null }] }] },
      { ...done, applied: [{ kind: "set", before: row }] },
      { ...done, applied: [null] },
      { ...done, state: "else" },
      { ...saves[2], edits: [{ kind: "append", rows: [] }] },
      { ...saves[2], rowCounts: undefined },
      { ...done, id: 7 },
    ]),
  ).toEqual(saves);
});
