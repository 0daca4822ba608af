import type { Contender, ContenderName } from "./contenders/contender";
import { cellsRead } from "./contenders/cells-read";
import { engineContender } from "./contenders/engine";
import { handedOver, inProcess, type RowsAsked } from "./contenders/in-process";
import { LIBRARY_SPELLING, openInLibraryEngine } from "./contenders/library-engine";
import { openInLibreOffice } from "./contenders/libreoffice";
import { openInTrialEngine } from "./contenders/trial-engine";
import type { Cost } from "./cost";
import { type Figures, SPREADSHEET } from "./sheet";
import { functionSheet, run, type Task, taskOf } from "./tasks";

/** What the process of a contender is asked for, on its command line. */
export interface WorkerOptions extends RowsAsked {
  readonly task: string;
  readonly contender: ContenderName;
}

/** What it sends: first that it is ready, then an answer to every number of runs asked for. */
export type WorkerMessage =
  | { readonly ready: Pick<Contender, "base" | "processGroup" | "shortestMs"> }
  | { readonly cost: Cost; readonly figures: Figures | undefined }
  | { readonly error: string };

/** A contender in a process of its own, with a limit of memory and without what others left behind. */
async function main(): Promise<void> {
  const { task, contender, ...asked } = JSON.parse(process.argv[2]!) as WorkerOptions;
  const opened = await open(taskOf(task), contender, asked);
  const { base, processGroup, shortestMs } = opened;
  process.on("message", (times: number) => {
    if (times === 0) {
      opened.close().then(() => process.exit(), fail);
      return;
    }
    opened.measure(times).then((cost) => send({ cost, figures: opened.figures() }), fail);
  });
  send({
    ready: {
      shortestMs,
      ...(base === undefined ? {} : { base }),
      ...(processGroup === undefined ? {} : { processGroup }),
    },
  });
}

function open(task: Task, contender: ContenderName, asked: RowsAsked): Promise<Contender> | Contender {
  const { rows } = asked;
  switch (contender) {
    case "function":
      return inProcess(
        asked,
        (herd) => {
          const args = task.arguments(rows, herd);
          return () => {
            const own = handedOver(args);
            return () => run(task, own);
          };
        },
        (value) => task.figures(value),
      );
    case "reading the cells":
      return inProcess(
        asked,
        (herd) => {
          const args = task.arguments(rows, herd);
          return () => {
            const own = handedOver(args);
            return () => cellsRead(own);
          };
        },
        () => undefined,
      );
    case "function in the trial engine":
      return engineContender(openInTrialEngine, functionSheet(task, rows), () => undefined);
    case "formulas in the trial engine":
      return engineContender(openInTrialEngine, task.sheet(rows, SPREADSHEET), task.figuresOfFormulas);
    case "formulas in the library engine":
      return engineContender(openInLibraryEngine, task.sheet(rows, LIBRARY_SPELLING), task.figuresOfFormulas);
    case "formulas in LibreOffice":
      return openInLibreOffice(task.sheet(rows, SPREADSHEET), task.figuresOfFormulas);
    default:
      return inProcess(
        asked,
        (herd) => {
          const loop = task.loops[contender]!(rows, herd);
          return () => loop;
        },
        (figures) => figures,
      );
  }
}

function send(message: WorkerMessage): void {
  process.send!(message);
}

function fail(error: unknown): void {
  send({ error: error instanceof Error ? error.message : String(error) });
}

main().catch(fail);
