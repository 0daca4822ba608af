import type { Outcome } from "../../../../src/core/claws/next-look";
import type { DaySerial } from "../../../../src/core/shared/days";
import { read, save, takeBack, writeList } from "../../../../src/taskpane/screens/due/effects";
import type { DueLine } from "../../../../src/taskpane/screens/due/line";
import { listingIn, nextState } from "../../../../src/taskpane/screens/due/model";
import { type DueEvent, type DueState, initialState } from "../../../../src/taskpane/screens/due/state";
import type { TablePort } from "../../../../src/workbook/table-port";

/** The screen without its view: sends events, and does the work that the states ask for. */
export class Driver {
  state: DueState;
  private readonly done = new Set<string>();
  private ids = 0;

  constructor(
    readonly port: TablePort,
    today: DaySerial,
  ) {
    this.state = initialState(today);
    port.watchChanges(() => this.send({ type: "workbook changed" }));
  }

  send(event: DueEvent): void {
    this.state = nextState(this.state, event);
  }

  /** Begins the work that the state asks for and has not been begun. */
  begin(): Promise<DueEvent>[] {
    const { wanted, pending, takingBack, writing } = this.state;
    const once = (key: string, work: () => Promise<DueEvent>): Promise<DueEvent>[] => {
      if (this.done.has(key)) return [];
      this.done.add(key);
      return [work()];
    };
    return [
      ...once(`read ${wanted}`, () => read(this.port, wanted)),
      ...(pending === undefined || pending.brokenOff
        ? []
        : once(`save ${pending.save.id} ${pending.attempt}`, () => save(this.port, pending))),
      ...(takingBack === undefined
        ? []
        : once(`back ${takingBack} ${this.ids}`, () => takeBack(this.port, takingBack))),
      ...(writing === undefined
        ? []
        : once(`write ${writing.attempt} ${this.ids}`, () => writeList(this.port, this.state))),
    ];
  }

  /** Works until nothing is left to do. */
  async settle(): Promise<void> {
    for (let work = this.begin(); work.length > 0; work = this.begin())
      for (const event of await Promise.all(work)) this.send(event);
  }

  get lines(): readonly DueLine[] {
    return listingIn(this.state)?.lines ?? [];
  }

  line(cow: string | number, what?: string): DueLine {
    const line = this.lines.find((known) => known.cow === String(cow) && (what === undefined || known.what === what));
    if (line === undefined) throw new Error(`no line for cow ${cow}`);
    return line;
  }

  /** Opens a line and presses an outcome, so many times. */
  press(line: DueLine, outcome: Outcome, times = 1): string {
    this.ids += 1;
    const id = `outcome-${this.ids}`;
    if (this.state.open !== line.key) this.send({ type: "line pressed", key: line.key });
    for (let time = 0; time < times; time++)
      this.send({ type: "outcome chosen", key: line.key, outcome, id: time === 0 ? id : `${id}-${time}` });
    return id;
  }

  /** Something that makes a repeated press a new one. */
  pressed(event: DueEvent): void {
    this.ids += 1;
    this.send(event);
  }
}
