import { readdirSync, readFileSync } from "node:fs";

/** Parts of a second in which Linux counts the work of processes (USER_HZ, man 5 proc). */
const TICKS_A_SECOND = 100;
/** Size of a page of memory, as far as anything here runs. */
const PAGE_BYTES = 4096;
/** Fields of /proc/<pid>/stat after the name, counted from 0 (man 5 proc). */
const GROUP = 2;
const USER_TICKS = 11;
const SYSTEM_TICKS = 12;
const RESIDENT_PAGES = 21;

/** Work of all processes of a group so far, ms; 0 where the system does not tell. */
export function cpuMsOfGroup(group: number): number {
  const ticks = processesOf(group).reduce(
    (sum, fields) => sum + Number(fields[USER_TICKS]) + Number(fields[SYSTEM_TICKS]),
    0,
  );
  return (1000 * ticks) / TICKS_A_SECOND;
}

/** Memory of all processes of a group, bytes. */
export function memoryOfGroup(group: number): number {
  return processesOf(group).reduce((sum, fields) => sum + Number(fields[RESIDENT_PAGES]) * PAGE_BYTES, 0);
}

/** Memory of one process, bytes; 0 where the system does not tell. */
export function memoryOf(pid: number): number {
  return Number(statOf(String(pid))?.[RESIDENT_PAGES] ?? 0) * PAGE_BYTES;
}

function processesOf(group: number): string[][] {
  let names: string[];
  try {
    names = readdirSync("/proc").filter((name) => /^\d+$/.test(name));
  } catch {
    return [];
  }
  return names.flatMap((name) => {
    const fields = statOf(name);
    return fields !== undefined && Number(fields[GROUP]) === group ? [fields] : [];
  });
}

function statOf(pid: string): string[] | undefined {
  try {
    const text = readFileSync(`/proc/${pid}/stat`, "utf8");
    return text.slice(text.lastIndexOf(")") + 2).split(" ");
  } catch {
    return undefined;
  }
}
