import { type ChildProcess, fork } from "node:child_process";
import type { Cost } from "./cost";
import { memoryOf, memoryOfGroup } from "./process-group";
import type { Figures } from "./sheet";
import type { WorkerMessage, WorkerOptions } from "./worker";

/** What a contender may take before it is given up. */
export interface Limits {
  /** For one computation. */
  readonly runSeconds: number;
  /** To load the rows and compute them for the first time. */
  readonly openSeconds: number;
  readonly gigabytes: number;
}

/** A contender that did not come to its end, and why. */
export class GivenUp extends Error {}

type Ready = Extract<WorkerMessage, { ready: unknown }>["ready"];

const GIGABYTE = 2 ** 30;
const WATCH_MS = 500;

/** A contender at work in a process of its own, watched. */
export class ContenderProcess {
  readonly #child: ChildProcess;
  readonly #limits: Limits;
  #ready: Ready | undefined;
  #reason: string | undefined;
  #errors = "";

  constructor(worker: string, options: WorkerOptions, limits: Limits) {
    this.#limits = limits;
    this.#child = fork(worker, [JSON.stringify(options)], {
      execArgv: [`--max-old-space-size=${limits.gigabytes * 1024}`],
      stdio: ["ignore", "ignore", "pipe", "ipc"],
    });
    this.#child.stderr!.on("data", (text: Buffer) => (this.#errors += text.toString()));
    const watch = setInterval(() => this.#watchMemory(), WATCH_MS);
    this.#child.once("exit", () => clearInterval(watch));
  }

  /** Waits until the rows are loaded. */
  async opened(): Promise<Ready> {
    const message = await this.#message(this.#limits.openSeconds, "to load the rows and compute them once");
    if (!("ready" in message)) throw new GivenUp("it answered before it was ready");
    return (this.#ready = message.ready);
  }

  async measure(times: number): Promise<{ readonly cost: Cost; readonly figures: Figures | undefined }> {
    if (this.#hasEnded()) throw new GivenUp(this.#reason ?? "its process was ended from outside");
    this.#child.send(times);
    const message = await this.#message(this.#limits.runSeconds * times, "for one computation");
    if (!("cost" in message)) throw new GivenUp("it did not measure");
    return message;
  }

  /** Ends the process and those that it started. */
  async close(): Promise<void> {
    if (this.#hasEnded()) return;
    const ended = new Promise((resolve) => this.#child.once("exit", resolve));
    if (this.#child.connected && this.#reason === undefined) this.#child.send(0);
    else this.#kill();
    const patience = setTimeout(() => this.#kill(), 10_000);
    await ended;
    clearTimeout(patience);
  }

  #hasEnded(): boolean {
    return this.#child.exitCode !== null || this.#child.signalCode !== null;
  }

  #message(seconds: number, what: string): Promise<Exclude<WorkerMessage, { error: string }>> {
    return new Promise((resolve, reject) => {
      const giveUp = (reason: string): void => {
        this.#reason ??= reason;
        done();
        reject(new GivenUp(this.#reason));
      };
      const onMessage = (message: WorkerMessage): void => {
        if ("error" in message) return giveUp(message.error);
        done();
        resolve(message);
      };
      const onExit = (code: number | null): void =>
        giveUp(
          /heap out of memory|heap limit/i.test(this.#errors)
            ? `more than ${this.#limits.gigabytes} GB of memory`
            : `its process ended with code ${code}: ${this.#errors.trim().split("\n").at(-1) ?? ""}`,
        );
      const timeout = setTimeout(() => {
        giveUp(`more than ${seconds} s ${what}`);
        this.#kill();
      }, seconds * 1000);
      const done = (): void => {
        clearTimeout(timeout);
        this.#child.off("message", onMessage).off("exit", onExit);
      };
      this.#child.on("message", onMessage).on("exit", onExit);
    });
  }

  #watchMemory(): void {
    const { processGroup } = this.#ready ?? {};
    const bytes = memoryOf(this.#child.pid!) + (processGroup === undefined ? 0 : memoryOfGroup(processGroup));
    if (bytes <= this.#limits.gigabytes * GIGABYTE) return;
    this.#reason ??= `more than ${this.#limits.gigabytes} GB of memory`;
    this.#kill();
  }

  #kill(): void {
    const { processGroup } = this.#ready ?? {};
    this.#child.kill("SIGKILL");
    if (processGroup === undefined) return;
    try {
      process.kill(-processGroup, "SIGKILL");
    } catch {
      // It has ended by itself.
    }
  }
}
