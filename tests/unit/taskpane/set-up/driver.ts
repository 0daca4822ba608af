import type { DaySerial } from "../../../../src/core/shared/days";
import { check, lookAtFormulas, perform, read, takeBack } from "../../../../src/taskpane/screens/set-up/effects";
import type { FoundList, ListColumn } from "../../../../src/taskpane/screens/set-up/found-lists";
import { nextState } from "../../../../src/taskpane/screens/set-up/model";
import { initialState, type SetUpEvent, type SetUpState } from "../../../../src/taskpane/screens/set-up/state";
import type { BookPort } from "../../../../src/workbook/book-port";
import type { TablePort } from "../../../../src/workbook/table-port";

/** The screen without its view: sends events, and does the work that the states ask for. */
export class Driver {
  state: SetUpState;
  private readonly done = new Set<unknown>();
  private ids = 0;

  constructor(
    readonly ports: { readonly tables: TablePort; readonly book: BookPort },
    readonly today: DaySerial,
  ) {
    this.state = initialState(today);
  }

  newId(): string {
    this.ids += 1;
    return `set-up ${this.ids}`;
  }

  send(event: SetUpEvent): void {
    this.state = nextState(this.state, event);
  }

  /** Sends an event and does all that follows from it. */
  async press(event: SetUpEvent): Promise<void> {
    this.send(event);
    await this.settle();
  }

  /** Works until nothing is left to do. */
  async settle(): Promise<void> {
    for (let work = this.begin(); work.length > 0; work = this.begin())
      for (const event of await Promise.all(work)) this.send(event);
  }

  /** Begins the work that the state asks for and has not been begun. */
  begin(): Promise<SetUpEvent>[] {
    const { wanted, reading, work, takingBack, formulas, check: checking } = this.state;
    const once = (key: unknown, begin: () => Promise<SetUpEvent>): Promise<SetUpEvent>[] => {
      if (this.done.has(key)) return [];
      this.done.add(key);
      return [begin()];
    };
    const isReady = checking.kind === "checking" && reading.kind === "read" && reading.wanted >= checking.wanted;
    return [
      ...once(`read ${wanted}`, () => read(this.ports, wanted)),
      ...(isReady ? once(checking, () => check(reading.book, this.today, checking.wanted)) : []),
      ...(work === undefined || work.brokenOff ? [] : once(work, () => perform(this.ports, work.task))),
      ...(takingBack === undefined ? [] : once(takingBack, () => takeBack(this.ports, takingBack))),
      ...(formulas.kind === "looking" ? once(formulas, () => lookAtFormulas(this.ports)) : []),
    ];
  }

  list(sheet: string): FoundList {
    const list = this.state.lists.find((known) => known.sheet === sheet);
    if (list === undefined) throw new Error(`no list on sheet ${sheet}`);
    return list;
  }

  column(sheet: string, heading: string): ListColumn {
    const column = this.list(sheet).columns.find((known) => known.heading === heading);
    if (column === undefined) throw new Error(`no column ${heading} on sheet ${sheet}`);
    return column;
  }
}
