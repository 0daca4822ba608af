import fc from "../../../random";
import { readHerd } from "../../../../src/herd/herd";
import { rulesInForce } from "../../../../src/taskpane/rules";
import type { RecordEvent } from "../../../../src/taskpane/screens/record/events";
import { keptDraft } from "../../../../src/taskpane/screens/record/kept-draft";
import { draftOf, initialState, nextState } from "../../../../src/taskpane/screens/record/model";
import { type Entry, isBlankEntry, type RecordState } from "../../../../src/taskpane/screens/record/state";
import { MemoryHost } from "../../../../src/workbook/memory/table-host";
import { openTables } from "../../../../src/workbook/saving/open-tables";
import { memoryLog } from "../../../../src/workbook/saving/save-log";
import { TableError } from "../../../../src/workbook/table-error";
import { rowAsRead, type Save, type TablePort } from "../../../../src/workbook/table-port";
import { bookOf, portOn, rowsOf, TODAY } from "./herd";

const SEQUENCES = 2000;

type Fault = "none" | "before" | "lost answer";
type Action =
  | { readonly kind: "enter"; readonly cow: string; readonly foot: string }
  | { readonly kind: "type"; readonly field: "note" | "cow" | "zone" | "severity"; readonly text: string }
  | { readonly kind: "save"; readonly fault: Fault; readonly isPaneGone: boolean }
  | { readonly kind: "take back"; readonly place: number; readonly fault: Fault }
  | { readonly kind: "close and open" }
  | { readonly kind: "someone adds a row" }
  | { readonly kind: "someone changes a row"; readonly place: number };

const fault = fc.constantFrom<Fault>("none", "none", "before", "lost answer");
const action: fc.Arbitrary<Action> = fc.oneof(
  { weight: 5, arbitrary: fc.record({ kind: fc.constant("enter" as const), cow: fc.constantFrom("12", "123", "Bella"), foot: fc.constantFrom("LH", "RH", "LF") }) },
  { weight: 3, arbitrary: fc.record({ kind: fc.constant("type" as const), field: fc.constantFrom("note" as const, "cow" as const, "zone" as const, "severity" as const), text: fc.constantFrom("", "swollen", "=1+1", "999", "4", "12") }) },
  { weight: 5, arbitrary: fc.record({ kind: fc.constant("save" as const), fault, isPaneGone: fc.boolean() }) },
  { weight: 3, arbitrary: fc.record({ kind: fc.constant("take back" as const), place: fc.nat(3), fault }) },
  { weight: 2, arbitrary: fc.constant({ kind: "close and open" as const }) },
  { weight: 1, arbitrary: fc.constant({ kind: "someone adds a row" as const }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant("someone changes a row" as const), place: fc.nat(5) }) },
); // oxfmt-ignore

/** A user, the pane that may be closed at any moment, and the workbook and the drafts that outlive it. */
class Afternoon {
  readonly book = bookOf();
  private readonly log = memoryLog();
  private port: TablePort = openTables(new MemoryHost(this.book), this.log);
  private kept: unknown;
  private ids = 0;
  private faults: Fault[] = [];
  /** Saves whose rows must stand in the workbook, once each. */
  private readonly written = new Map<string, Save>();
  /** Rows of other people. */
  private others = 0;
  state!: RecordState;

  constructor() {
    this.book.beforeStep = (step) => {
      const fault = this.faults[0];
      const hits = (step === "write" && fault === "before") || (step === "answer" && fault === "lost answer");
      if (!hits) return Promise.resolve();
      this.faults = [];
      return Promise.reject(new Error("the host is gone"));
    };
  }

  async open(): Promise<void> {
    this.port = openTables(new MemoryHost(this.book), this.log);
    this.state = initialState(TODAY, this.newId(), keptDraft(this.kept));
    await this.read();
    this.send({ type: "resume draft" });
  }

  async do(action: Action): Promise<void> {
    switch (action.kind) {
      case "enter":
        return this.enter(action.cow, action.foot);
      case "type":
        return this.send({ type: "typed", field: action.field, text: action.text });
      case "save":
        return this.save(action.fault, action.isPaneGone);
      case "take back":
        return this.takeBack(action.place, action.fault);
      case "close and open":
        return this.closeAndOpen();
      case "someone adds a row":
        await this.someone([{ append: "Findings", rows: [{ Date: TODAY, Cow: 12, Note: "another's" }] }]);
        this.others++;
        return this.read();
      case "someone changes a row":
        return this.changeRow(action.place);
    }
  }

  /** All that is begun is brought to its end, or is refused with a reason and stays typed. */
  async end(): Promise<void> {
    await this.closeAndOpen();
    for (let attempt = 0; attempt < 3; attempt++) await this.save("none", false);
  }

  /** The rows of Findings that the saves must have left. */
  expectedRows(): number {
    const changes = [...this.written.values()].flatMap((save) => save.changes);
    const added = changes.flatMap((change) => ("append" in change && change.append === "Findings" ? change.rows : []));
    return added.length + this.others;
  }

  private someone(changes: Save["changes"]): Promise<void> {
    return portOn(this.book).save({ id: `other-${this.ids++}`, title: "", changes });
  }

  private newId(): string {
    return `id-${this.ids++}`;
  }

  private send(event: RecordEvent): void {
    this.state = nextState(this.state, event);
    this.kept = JSON.parse(JSON.stringify(draftOf(this.state)));
  }

  private async read(): Promise<void> {
    const herd = await readHerd(this.port);
    this.send({ type: "herd read", herd, rules: rulesInForce(herd.rules), past: this.port.pastSaves() });
  }

  private enter(cow: string, foot: string): void {
    this.send({ type: "chose", field: "cow", value: cow });
    this.send({ type: "chose", field: "foot", value: foot });
    this.send({ type: "chose", field: "claw", value: "outer" });
    this.send({ type: "chose", field: "zone", value: "4" });
    this.send({ type: "chose", field: "lesion", value: "SU" });
  }

  private async closeAndOpen(): Promise<void> {
    const { entry, phase } = this.state;
    const before: Entry | undefined = isBlankEntry(entry) ? undefined : entry;
    await this.open();
    if (before === undefined) return;
    expect({ ...this.state.entry, current: 0 }).toEqual({ ...before, current: 0 });
    // What was on its way is neither forgotten nor asked for anew under another name.
    if (phase.kind !== "typing") expect(this.state.phase.kind).not.toBe("typing");
  }

  private async save(fault: Fault, isPaneGone: boolean): Promise<void> {
    // Pressed twice.
    this.send({ type: "save" });
    this.send({ type: "save" });
    const { phase } = this.state;
    if (phase.kind !== "saving") return;
    const { save } = phase.planned;
    this.faults = [fault];
    const answer = await this.port.save(save).then(
      () => undefined,
      (error: unknown) => error,
    );
    this.faults = [];
    if (answer === undefined) this.written.set(save.id, save);
    if (isPaneGone) return this.closeAndOpen();
    if (answer === undefined) {
      this.send({ type: "saved", id: save.id, nextId: this.newId(), past: this.port.pastSaves() });
    } else {
      const uncertain = answer instanceof TableError && answer.kind === "uncertain";
      this.send({ type: "save failed", id: save.id, message: String(answer), uncertain });
    }
    await this.read();
  }

  private async takeBack(place: number, fault: Fault): Promise<void> {
    const past = this.state.past[place];
    if (past === undefined || this.state.phase.kind !== "typing") return;
    this.send({ type: "take back", id: past.id });
    this.faults = [fault];
    const answer = await this.port.takeBack(past.id).then(
      () => undefined,
      (error: unknown) => error,
    );
    this.faults = [];
    if (answer === undefined) {
      this.written.delete(past.id);
      this.send({ type: "taken back", id: past.id, past: this.port.pastSaves() });
    } else this.send({ type: "take back failed", id: past.id, message: String(answer) });
    await this.read();
  }

  private async changeRow(place: number): Promise<void> {
    const content = await this.port.readTable("Findings");
    if (place >= content.rowCount) return;
    await this.someone([{ update: rowAsRead(content, place), set: { Note: "changed by another" } }]);
    await this.read();
  }
}

test("whatever happens of an afternoon, every saved row stands once and nothing typed is lost", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(action, { minLength: 3, maxLength: 25 }), async (actions) => {
      const afternoon = new Afternoon();
      await afternoon.open();
      for (const next of actions) await afternoon.do(next);
      await afternoon.end();
      expect(rowsOf(afternoon.book, "Findings")).toHaveLength(afternoon.expectedRows());
    }),
    { numRuns: SEQUENCES },
  );
});
