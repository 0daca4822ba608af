import type { Duel } from "./duel";
import { growth, type Results, short, thousands, timesTheFunction, verdicts } from "./results";
import { TASKS } from "./tasks";

/** The results as a page. */
export function report(results: Results): string {
  const { machine, rounds, libreOffice, loadBefore, loadAfter, failures } = results;
  const parts = [
    "# Benchmarks",
    `Medians of ${rounds} samples, taken in turns: each contender runs in a process of its own beside the function, and each function over all sizes, on the same invented rows, which are the same on every machine; at each size it works through as many rows together as at the largest, small herds in turns, and every sample is handed columns of its own. "Clock" is the time that passes, "CPU" the time that all processors work for the process, helper threads and garbage collection included; on a machine that others share CPU is the steadier of the two. "First" is the first computation of a process, before compilers have seen it. Made by \`npm run bench\`.`,
    `Node.js ${machine.node} on ${machine.system}, ${machine.processors}; ${libreOffice}; work waiting for the processors when it began ${short(loadBefore)}, at its end ${short(loadAfter)}.`,
    section("Figures to reach", verdictTable(results)),
    ...TASKS.filter(({ id }) => results.duels.some(({ task }) => task === id)).map(({ id, about, rows }) =>
      section(`HERD.${id} over ${rows}`, `${about}\n\n${duelTable(results, id)}`),
    ),
    ...(results.scalar.length === 0 ? [] : [section("Calls of single values", scalarTable(results))]),
    ...(results.memory.length === 0 ? [] : [section("Memory", memoryTable(results))]),
    ...(results.script === undefined ? [] : [section("What Excel loads", scriptTable(results))]),
    ...(failures.length === 0 ? [] : [section("Not measured", failures.map((text) => `- ${text}`).join("\n"))]),
  ];
  return `${parts.join("\n\n")}\n`;
}

function section(title: string, text: string): string {
  return `## ${title}\n\n${text}`;
}

function table(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell) => cell.replace(/\|/g, "\\|")).join(" | ")} |`;
  return [line(headings), line(headings.map(() => "---")), ...rows.map(line)].join("\n");
}

function verdictTable(results: Results): string {
  return table(
    ["Figure", "To reach", "Measured", ""],
    verdicts(results).map(({ figure, target, measured, reached }) => [
      figure,
      target,
      measured,
      reached ? "reached" : "MISSED",
    ]),
  );
}

function duelTable({ duels, sizes }: Results, id: string): string {
  const mine = duels.filter(({ task }) => task === id);
  const contenders = [...new Set(mine.map(({ contender }) => contender))];
  const rows = contenders.flatMap((contender) =>
    mine
      .filter((duel) => duel.contender === contender)
      .map((duel) => {
        const smaller = mine.find(
          (other) => other.contender === contender && other.rows === sizes[sizes.indexOf(duel.rows) - 1],
        );
        return [contender, thousands(duel.rows), ...costs(duel), growthText(smaller, duel), note(duel)];
      }),
  );
  return table(
    [
      "Contender",
      "Rows",
      "First, clock ms",
      "Clock ms",
      "CPU ms",
      "Times the function: clock, CPU",
      "Growth a tenfold, CPU",
      "Note",
    ],
    rows,
  );
}

function costs(duel: Duel): string[] {
  const measured = duel.contender === "function" ? duel.own : duel.other;
  if (measured === undefined) return ["", "", "", ""];
  const times = timesTheFunction(duel);
  return [
    short(measured.first.wallMs),
    short(measured.median.wallMs),
    short(measured.median.cpuMs),
    times === undefined ? "" : `${short(times.wallMs)}, ${short(times.cpuMs)}`,
  ];
}

function growthText(smaller: Duel | undefined, duel: Duel): string {
  const grown = growth(smaller, duel);
  return grown === undefined ? "" : short(grown.cpuMs);
}

function note({ givenUp, differing, other }: Duel): string {
  if (givenUp !== undefined) return `not finished: ${givenUp}`;
  if (differing !== undefined) return `other figures: ${differing.slice(0, 2).join("; ")}`;
  return other?.base === undefined
    ? ""
    : `after taking off ${short(other.base.wallMs)} and ${short(other.base.cpuMs)} ms that any sheet of these cells costs`;
}

function scalarTable({ scalar }: Results): string {
  const rows = scalar.map(({ id, calls, evaluatorMicroseconds, coreMicroseconds, overheadMicroseconds }) => [
    id,
    thousands(calls),
    ...[evaluatorMicroseconds, coreMicroseconds, overheadMicroseconds].map(
      ({ wallMs, cpuMs }) => `${short(wallMs)}, ${short(cpuMs)}`,
    ),
  ]);
  return `Microseconds a call, by the clock and by the processors.\n\n${table(["Function", "Calls", "Through the evaluator", "Core function alone", "Difference"], rows)}`;
}

function memoryTable({ memory }: Results): string {
  const rows = memory.map(({ id, rows, beforeMb, argumentsMb, callMb, peakMb }) => [
    id,
    thousands(rows),
    ...[beforeMb, argumentsMb, callMb, peakMb].map((megabytes) => short(megabytes)),
  ]);
  const about =
    "Resident memory of a process that makes one call, MB of 10^6 bytes. The arguments are rows of one cell, each row an array and each text a string of its own, as a host hands them over; the call is what the function takes beyond them at its peak, its result included.";
  return `${about}\n\n${table(["Function", "Rows", "Node.js and functions", "Arguments", "Call", "Peak of the process"], rows)}`;
}

function scriptTable({ script }: Results): string {
  const { files, functionsReadyMs, functions } = script!;
  const rows = files.map(({ name, bytes, gzipBytes, parseMs }) => [
    name,
    thousands(bytes),
    thousands(gzipBytes),
    parseMs === undefined ? "" : short(parseMs),
  ]);
  const about = `From the text of functions.js to ${functions} functions handed over: ${short(functionsReadyMs)} ms. The other scripts come with the pane, which no function waits for; Office.js is Microsoft's and not counted.`;
  return `${table(["File", "Bytes", "gzip bytes", "Parsing, ms"], rows)}\n\n${about}`;
}
