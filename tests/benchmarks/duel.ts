import { ContenderProcess, GivenUp, type Limits } from "./contender-process";
import type { ContenderName } from "./contenders/contender";
import type { RowsAsked } from "./contenders/in-process";
import { type Cost, medianCost } from "./cost";
import type { Figures } from "./sheet";
import type { Task } from "./tasks";

export interface Measured {
  /** The very first computation, which compiles what later ones find ready. */
  readonly first: Cost;
  readonly median: Cost;
  readonly samples: readonly Cost[];
  /** Taken off every sample. */
  readonly base?: Cost;
}

/** A contender against the function, in turns on the same rows. */
export interface Duel {
  readonly task: string;
  readonly contender: ContenderName;
  readonly rows: number;
  readonly own?: Measured;
  readonly other?: Measured;
  /** Why there is nothing to compare. */
  readonly givenUp?: string;
  /** Figures in which both differ, which there should not be. */
  readonly differing?: readonly string[];
}

/** One contender over several sizes in turns, so that what else the machine does weighs on all of them alike. */
export async function growthOf(
  worker: string,
  task: Task,
  contender: ContenderName,
  sizes: readonly number[],
  rounds: number,
  limits: Limits,
): Promise<Duel[]> {
  const rowsTogether = Math.max(...sizes);
  const started = sizes.map(
    (rows) => new Entrant(new ContenderProcess(worker, { task: task.id, contender, rows, rowsTogether }, limits)),
  );
  try {
    for (const entrant of started) await entrant.warmUp();
    for (let round = 0; round < rounds; round++) for (const entrant of started) await entrant.sample();
    return started.map((entrant, index) => ({
      task: task.id,
      contender,
      rows: sizes[index]!,
      [contender === "function" ? "own" : "other"]: entrant.measured(),
    }));
  } finally {
    for (const entrant of started) await entrant.close();
  }
}

/** Figures that agree to this share of themselves are the same: sums in another order round differently. */
const TOLERANCE = 1e-9;

/** Computes the function and another contender so many times in turns. */
export async function duel(
  worker: string,
  task: Task,
  contender: ContenderName,
  asked: RowsAsked,
  rounds: number,
  limits: Limits,
): Promise<Duel> {
  const started = (["function", contender] as const).map(
    (name) => new Entrant(new ContenderProcess(worker, { task: task.id, contender: name, ...asked }, limits)),
  );
  const [own, other] = started;
  const result = { task: task.id, contender, rows: asked.rows };
  try {
    for (const entrant of started) await entrant.warmUp();
    for (let round = 0; round < rounds; round++) for (const entrant of started) await entrant.sample();
    const differing = differences(own!.figures, other!.figures);
    return {
      ...result,
      own: own!.measured(),
      other: other!.measured(),
      ...(differing.length === 0 ? {} : { differing }),
    };
  } catch (error) {
    if (!(error instanceof GivenUp)) throw error;
    return { ...result, givenUp: error.message };
  } finally {
    for (const entrant of started) await entrant.close();
  }
}

/** Most computations that a sample adds up. */
const MOST_TIMES = 500;

class Entrant {
  figures: Figures | undefined;
  readonly #process: ContenderProcess;
  readonly #samples: Cost[] = [];
  #first: Cost | undefined;
  #base: Cost | undefined;
  #times = 1;

  constructor(process: ContenderProcess) {
    this.#process = process;
  }

  /** Computes until compilers and caches have settled, and sees how often a sample must compute. */
  async warmUp(): Promise<void> {
    const { base, shortestMs } = await this.#process.opened();
    this.#base = base;
    const { cost: first } = await this.#process.measure(1);
    this.#first = net(first, base);
    let [last, spent] = [first, first.wallMs];
    for (let run = 0; run < WARM_UP_RUNS && spent < WARM_UP_MS; run++) {
      last = (await this.#process.measure(1)).cost;
      spent += last.wallMs;
    }
    this.#times = Math.max(1, Math.min(MOST_TIMES, Math.ceil(shortestMs / Math.max(last.wallMs, 0.01))));
  }

  async sample(): Promise<void> {
    const { cost, figures } = await this.#process.measure(this.#times);
    this.#samples.push(net(cost, this.#base));
    this.figures = figures;
  }

  measured(): Measured {
    return {
      first: this.#first!,
      median: medianCost(this.#samples),
      samples: this.#samples,
      ...(this.#base === undefined ? {} : { base: this.#base }),
    };
  }

  close(): Promise<void> {
    return this.#process.close();
  }
}

/** After so many runs, or so long, compilers have found what runs often. */
const WARM_UP_RUNS = 30;
const WARM_UP_MS = 3_000;

function net({ wallMs, cpuMs }: Cost, base: Cost | undefined): Cost {
  if (base === undefined) return { wallMs, cpuMs };
  return { wallMs: Math.max(0, wallMs - base.wallMs), cpuMs: Math.max(0, cpuMs - base.cpuMs) };
}

function differences(own: Figures | undefined, other: Figures | undefined): string[] {
  if (own === undefined || other === undefined) return [];
  return Object.entries(other).flatMap(([name, figure]) => {
    const expected = own[name];
    const isSame = expected !== undefined && Math.abs(figure - expected) <= TOLERANCE * Math.max(1, Math.abs(expected));
    return isSame ? [] : [`${name}: ${figure} instead of ${expected}`];
  });
}
