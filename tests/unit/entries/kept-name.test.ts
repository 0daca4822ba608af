import { draftsOf } from "../../../src/entries/kept-in-browser";
import { keptName } from "../../../src/entries/kept-name";

/**
 * The settings of a document as the documentation of Office.js has them: what is set is in memory, and in the document
 * only once it is stored.
 */
class FakeSettings {
  private readonly held: Map<string, unknown>;
  constructor(
    readonly document: Map<string, unknown>,
    private readonly readOnly = false,
  ) {
    this.held = new Map(document);
  }
  get(name: string): unknown {
    return this.held.get(name) ?? null;
  }
  set(name: string, value: unknown): void {
    this.held.set(name, value);
  }
  remove(name: string): void {
    this.held.delete(name);
  }
  saveAsync(): void {
    if (this.readOnly) return;
    this.document.clear();
    for (const [name, value] of this.held) this.document.set(name, value);
  }
}

let ids = 0;
/** The pane is opened on a workbook: it reads the settings of the document anew. */
const opened = (url: string, document: Map<string, unknown>, readOnly = false) =>
  keptName({ url, settings: new FakeSettings(document, readOnly) as unknown as Office.Settings }, () => `id${++ids}`);

beforeEach(() => {
  const texts = new Map<string, string>();
  Object.assign(globalThis, {
    localStorage: {
      getItem: (key: string) => texts.get(key) ?? null,
      setItem: (key: string, text: string) => texts.set(key, text),
      removeItem: (key: string) => texts.delete(key),
    },
  });
});
afterAll(() => Reflect.deleteProperty(globalThis, "localStorage"));

test("the draft of one unsaved workbook never shows in another, and is there when its pane is opened again", () => {
  const [first, second] = [new Map<string, unknown>(), new Map<string, unknown>()];
  draftsOf(opened("", first)).keep("cow 12");
  expect(draftsOf(opened("", second)).read()).toBeUndefined();
  expect(draftsOf(opened("", first)).read()).toBe("cow 12");
});

test("a workbook that is saved keeps its draft; a copy of it has none", () => {
  const document = new Map<string, unknown>();
  draftsOf(opened("", document)).keep("cow 12");
  const copy = new Map(document);
  expect(draftsOf(opened("C:\\herd.xlsx", document)).read()).toBe("cow 12");
  expect(document.size).toBe(0);
  expect(draftsOf(opened("C:\\copy.xlsx", copy)).read()).toBeUndefined();
  expect(draftsOf(opened("C:\\herd.xlsx", document)).read()).toBe("cow 12");
});

test("a document that takes no settings still has drafts of its own", () => {
  const name = opened("", new Map(), true);
  draftsOf(name).keep("cow 12");
  expect(draftsOf(name).read()).toBe("cow 12");
  expect(draftsOf(opened("", new Map(), true)).read()).toBeUndefined();
});

test("a saved workbook is left as it is", () => {
  const document = new Map<string, unknown>();
  expect(opened("C:\\herd.xlsx", document)).toEqual({ name: "C:\\herd.xlsx" });
  expect(document.size).toBe(0);
});
