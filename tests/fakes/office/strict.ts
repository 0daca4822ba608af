import { HostError } from "./entry";
import type { FakeDocument, FakeEvent } from "./document";

interface Command {
  /** Done in the host, in the order of the batch. */
  readonly run: () => void;
  /** Done when the answer of the whole batch has arrived. */
  readonly deliver?: () => void;
}

/** A request context: commands gather until they are sent together. */
export class FakeContext {
  private queue: Command[] = [];
  private readonly events: FakeEvent[] = [];

  constructor(
    readonly document: FakeDocument,
    /** The user, or the add-in of that user, who does this. */
    readonly actor: unknown,
  ) {}

  add(command: Command): void {
    this.queue.push(command);
  }

  noteEvent(event: FakeEvent): void {
    this.events.push(event);
  }

  get pending(): number {
    return this.queue.length;
  }

  /** Sends the batch. The first command that fails ends it; what was done before it stays done. */
  async sync(): Promise<void> {
    const batch = this.queue;
    this.queue = [];
    const { document } = this;
    await document.turn();
    if (!document.open) throw new HostError("InactiveWorkbook", "the workbook is closed");
    try {
      for (const { run } of batch) {
        document.faults.step();
        run();
      }
      document.faults.step();
    } finally {
      for (const event of this.events.splice(0)) document.emit(event, this.actor);
    }
    for (const { deliver } of batch) deliver?.();
  }
}

/** An object of the host, known to the add-in by proxy: what was not loaded and synced cannot be read. */
export abstract class Proxy<Host> {
  // Set in the constructor: as fields of the class they would take most of the time of the millions that are made.
  declare private resolved: { readonly host: Host | undefined } | undefined;
  declare private readonly loaded: Map<string, unknown>;
  declare private nullKnown: boolean;

  constructor(
    readonly context: FakeContext,
    find: () => Host | undefined,
    private readonly how: "must" | "orNull" | "known" = "must",
  ) {
    this.resolved = undefined;
    this.loaded = new Map();
    this.nullKnown = false;
    if (how === "known") this.resolved = { host: find() };
    else
      context.add({
        run: () => {
          const host = find();
          if (host === undefined && how === "must") throw new HostError("ItemNotFound");
          this.resolved = { host };
        },
        deliver: () => {
          this.nullKnown = true;
        },
      });
  }

  /** What may be loaded, and how it is found. */
  protected abstract readonly readers: Readonly<Record<string, (host: Host) => unknown>>;

  /** The host's object while a batch runs. */
  get host(): Host {
    if (this.resolved === undefined) this.context.document.misuse("an object of a batch that was not sent");
    if (this.resolved.host === undefined) throw new HostError("InvalidObjectPath", "the object is null");
    return this.resolved.host;
  }

  load(names: string | readonly string[]): this {
    const wanted = (typeof names === "string" ? names.split(",") : names).map((name) => name.trim());
    for (const name of wanted) {
      if (this.readers[name] === undefined) this.context.document.misuse(`${name} cannot be loaded`);
    }
    let answers: unknown[] = [];
    this.context.add({
      run: () => {
        if (this.how === "orNull" && this.resolved?.host === undefined) return;
        answers = wanted.map((name) => this.readers[name]!(this.host));
      },
      deliver: () => {
        answers.forEach((answer, index) => this.loaded.set(wanted[index]!, answer));
      },
    });
    return this;
  }

  /** What came along with a collection that was loaded. */
  remember(values: Readonly<Record<string, unknown>>): this {
    for (const [name, value] of Object.entries(values)) this.loaded.set(name, value);
    return this;
  }

  protected read(name: string): unknown {
    if (!this.loaded.has(name)) this.context.document.misuse(`${name} was read before it was loaded and synced`);
    return this.loaded.get(name);
  }

  protected do(work: (host: Host) => void): void {
    this.context.add({ run: () => work(this.host) });
  }

  get isNullObject(): boolean {
    if (!this.nullKnown) this.context.document.misuse("isNullObject was read before sync");
    return this.resolved?.host === undefined;
  }
}

/** The event handlers of a collection. */
export class FakeHandlers<Args> {
  constructor(
    private readonly context: FakeContext,
    private readonly wanted: FakeEvent["type"],
    private readonly args: (event: FakeEvent, source: "Local" | "Remote") => Args,
  ) {}

  add(handler: (args: Args) => Promise<unknown>): { readonly context: FakeContext; remove(): void } {
    const { document, actor } = this.context;
    const listener = (event: FakeEvent, by: unknown): void => {
      if (event.type === this.wanted) void handler(this.args(event, by === actor ? "Local" : "Remote"));
    };
    this.context.add({ run: () => document.listeners.add(listener) });
    const context = this.context;
    return {
      context,
      remove: () => {
        context.add({ run: () => document.listeners.delete(listener) });
      },
    };
  }
}
