import type { Action, Failure } from "./actions";
import { Hands } from "./hands";
import type { Around } from "./pane-frame";
import { OpenWorkbook } from "./workbook";

let begun = 0;
const around = new Map<Element, Around>();
window.aroundFrame = (frame) => around.get(frame)!;

/** A pane that has not come to rest by then is stuck. */
const PATIENCE_MS = 30_000;

declare const scheduler: {
  postTask(work: () => void, options: { readonly priority: "background" }): Promise<unknown>;
};

/**
 * A user, the pane that may be closed and loaded anew at any moment, and the workbook that outlives it. Each entry has
 * a note of its own, by which its row is known.
 */
export class Afternoon {
  private readonly workbook = new OpenWorkbook();
  private readonly number = ++begun;
  private notes = 0;
  /** Notes that are typed, or offered again, and not known to be saved. */
  private readonly pending = new Set<string>();
  /** Notes whose row must stand once. */
  private readonly saved = new Set<string>();
  /** Notes whose row another took out: of a save whose answer got lost nobody knows whether it wrote before or after. */
  private readonly takenOut = new Set<string>();

  private constructor(private readonly frame: HTMLIFrameElement) {
    around.set(frame, { name: `afternoon ${this.number}`, open: () => this.workbook.open() });
  }

  static async begin(frame: HTMLIFrameElement): Promise<Afternoon> {
    const afternoon = new Afternoon(frame);
    if (frame.contentWindow?.openAgain === undefined) await afternoon.load(() => (frame.src = "index.html"));
    else await afternoon.openAgain();
    return afternoon;
  }

  private get hands(): Hands {
    return new Hands(this.frame.contentDocument!);
  }

  private async openAgain(): Promise<void> {
    this.frame.contentWindow!.openAgain();
    await this.opened();
  }

  private async load(load: () => void): Promise<void> {
    const done = new Promise((resolve) => this.frame.addEventListener("load", resolve, { once: true }));
    load();
    await done;
    await this.opened();
  }

  private async opened(): Promise<void> {
    this.workbook.document.faults.fail(0, 0);
    await this.settled();
  }

  /** Waits until neither the pane nor the workbook has anything left to do. */
  private async settled(): Promise<void> {
    let isStuck = false;
    const patience = setTimeout(() => (isStuck = true), PATIENCE_MS);
    for (let quiet = 0; quiet < 2;) {
      if (isStuck) throw new Error("the pane does not come to rest");
      await whenIdle();
      const isQuiet = this.frame.contentWindow?.timersWaiting() === 0 && !this.workbook.isBusy && this.hands.isAtRest;
      quiet = isQuiet ? quiet + 1 : 0;
    }
    clearTimeout(patience);
  }

  async do(action: Action): Promise<void> {
    switch (action.kind) {
      case "enter":
        await this.enter(action.cow, action.foot);
        break;
      case "type":
        this.hands.type(action.field, action.text);
        break;
      case "save":
        return this.save(action.fails, action.then);
      case "take back":
        return this.takeBack(action.place, action.fails);
      case "close":
      case "reload":
        return this.openAnew(action.kind);
      case "go on":
        this.hands.press(/^Go on with it$/);
        break;
      case "another adds a row":
        this.workbook.othersAdd("another's");
        break;
      case "another changes a row":
        this.workbook.othersChange(action.row);
        break;
      case "another deletes a row":
        this.othersDelete(action.row);
        break;
    }
    await this.settled();
    this.check();
  }

  /** A whole entry, over what is typed. Its note is new where it has none. */
  private async enter(cow: string, foot: string): Promise<void> {
    const { hands } = this;
    if (hands.isUncertain) return;
    hands.type("cow", cow);
    hands.key("cow", "Enter");
    hands.key("foot", ...foot.toLowerCase());
    hands.key("claw", "o");
    hands.type("zone", "4");
    hands.type("lesion", "SU");
    await this.settled();
    hands.key("lesion", "Enter");
    await this.settled();
    if (hands.valueOf("note") !== "") return;
    const note = `note ${++this.notes}`;
    hands.type("note", note);
    await this.settled();
    if (hands.valueOf("note") === note) this.pending.add(note);
  }

  private async save(fails: Failure, then: "wait" | "close" | "reload"): Promise<void> {
    const { hands, workbook } = this;
    const note = hands.valueOf("note");
    const typed = hands.typed();
    // A row without a note could not be told from another's.
    if (note === "" && !hands.isUncertain) return;
    if (fails !== undefined) workbook.document.faults.fail(fails.step, fails.times);
    hands.press(/^Save/);
    hands.press(/^Save/);
    if (then !== "wait") {
      await this.openAnew(then, typed);
      if (this.pending.has(note) && this.hands.valueOf("note") !== note) this.becameSaved(note);
      return this.check();
    }
    await this.settled();
    workbook.document.faults.fail(0, 0);
    if (hands.press(/^Yes$/)) {
      await this.settled();
      hands.press(/^Save/);
      await this.settled();
    }
    if (hands.announced.startsWith("Saved.")) this.becameSaved(note);
    else {
      this.expectTyped(typed, "a save that was refused");
      this.expectNotStanding(note);
    }
    this.check();
  }

  private becameSaved(note: string): void {
    this.pending.delete(note);
    if (!this.takenOut.has(note)) this.saved.add(note);
  }

  private othersDelete(row: number): void {
    const note = this.workbook.othersDelete(row);
    if (note === undefined) return;
    this.saved.delete(note);
    this.takenOut.add(note);
  }

  private async takeBack(place: number, fails: Failure): Promise<void> {
    const { hands, workbook } = this;
    if (hands.isUncertain) return;
    const before = workbook.notes();
    if (fails !== undefined) workbook.document.faults.fail(fails.step, fails.times);
    if (!hands.takeBack(place)) return workbook.document.faults.fail(0, 0);
    await this.settled();
    workbook.document.faults.fail(0, 0);
    const gone = before.filter((note) => note !== "" && !workbook.notes().includes(note));
    if (gone.length > 1) throw new Error(`taken back at once: ${gone.join()}`);
    for (const note of gone) this.saved.delete(note);
    await this.settled();
    this.check();
  }

  /** The pane is closed, or its page loaded anew, and opened again; what was typed is offered, and is the same. */
  private async openAnew(how: "close" | "reload", typed = this.hands.typed()): Promise<void> {
    const wasUncertain = this.hands.isUncertain;
    if (how === "reload") await this.load(() => this.frame.contentWindow!.location.reload());
    else await this.openAgain();
    // Nothing is offered where nothing was typed, or where the save that was on its way has ended.
    if (!this.hands.press(/^Go on with it$/)) return;
    await this.settled();
    if (Object.keys(typed).some((field) => field !== "date" && field !== "landmark")) this.expectTyped(typed, how);
    if (wasUncertain) this.expectNotStanding(this.hands.valueOf("note"));
    this.check();
  }

  /** What stands in the workbook is not told to be unsaved. */
  private expectNotStanding(note: string): void {
    if (note !== "" && !this.hands.isUncertain && this.workbook.notes().includes(note))
      throw new Error(`${note} is taken for not saved, and stands in the workbook`);
  }

  private expectTyped(typed: Readonly<Record<string, string>>, when: string): void {
    const now = this.hands.typed();
    const lost = Object.keys(typed).filter((field) => typed[field] !== now[field]);
    if (lost.length > 0)
      throw new Error(
        `lost after ${when}: ${lost.map((field) => `${field} ${typed[field]}, now ${now[field]}`).join("; ")}`,
      );
  }

  /** All that is begun is brought to its end. */
  async end(): Promise<void> {
    await this.openAnew("close");
    for (let attempt = 0; this.pending.size > 0 || this.hands.isOffered; attempt++) {
      if (attempt > this.pending.size + 2) throw new Error(`never saved: ${[...this.pending].join()}`);
      this.hands.press(/^Go on with it$/);
      await this.settled();
      await this.enter("12", "LH");
      await this.save(undefined, "wait");
    }
    this.check();
  }

  /** What must hold at every moment of rest. */
  private check(): void {
    const rows = this.workbook.notes();
    const count = (note: string): number => rows.filter((row) => row === note).length;
    for (const note of this.saved)
      if (count(note) !== 1) throw new Error(`${note} is saved and stands ${count(note)} times`);
    for (const note of this.pending) if (count(note) > 1) throw new Error(`${note} stands ${count(note)} times`);
    const known = [this.saved, this.pending, this.takenOut];
    const strange = rows.filter((note) => note.startsWith("note ") && !known.some((notes) => notes.has(note)));
    if (strange.length > 0) throw new Error(`neither saved nor pending, and in the workbook: ${strange.join()}`);
    if (this.workbook.document.misuses.length > 0) throw new Error(this.workbook.document.misuses.join());
  }
}

/** Comes after all that waits already: timers, answers of the workbook, drawing. */
function whenIdle(): Promise<unknown> {
  return scheduler.postTask(() => undefined, { priority: "background" });
}
