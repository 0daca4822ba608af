import type { DraftKeeper } from "../taskpane/pane-workbook";
import { type BookLog, keptChanges } from "../workbook/saving/book-log";
import { keptSaves, type SaveLog } from "../workbook/saving/save-log";
import type { KeptName } from "./kept-name";

/**
 * What the pane keeps in the browser's own storage on this computer, apart for each workbook: what was typed and not
 * yet saved, and the last saves. Storage that is full, forbidden or damaged keeps nothing and stops nothing.
 */
export function draftsOf(workbook: KeptName): DraftKeeper {
  return keptDraft("draft", workbook);
}

export function reportDraftsOf(workbook: KeptName): DraftKeeper {
  return keptDraft("report", workbook);
}

function keptDraft(what: string, workbook: KeptName): DraftKeeper {
  const kept = keptText(what, workbook);
  return { read: () => kept.read(), keep: (draft) => kept.write(draft) };
}

export function savesOf(workbook: KeptName): SaveLog {
  return keptLog("saves", workbook, keptSaves);
}

export function changesOf(workbook: KeptName): BookLog {
  return keptLog("changes", workbook, keptChanges);
}

/** `known` takes out of what was kept all that is no entry of such a log. */
function keptLog<T>(what: string, workbook: KeptName, known: (kept: unknown) => readonly T[]) {
  const kept = keptText(what, workbook);
  let entries = known(kept.read());
  return {
    read: () => entries,
    write: (next: readonly T[]) => {
      entries = next;
      kept.write(next);
    },
  };
}

function keptText(what: string, { name, formerName }: KeptName) {
  const keyOf = (workbook: string): string => `evenfoot ${what} ${workbook}`;
  const key = keyOf(name);
  if (formerName !== undefined) move(keyOf(formerName), key);
  return {
    read(): unknown {
      try {
        return JSON.parse(localStorage.getItem(key) ?? "null") ?? undefined;
      } catch {
        return undefined;
      }
    },
    write(value: unknown): void {
      try {
        localStorage.setItem(key, JSON.stringify(value));
      } catch {
        // The pane itself still holds it as long as it is open.
      }
    },
  };
}

/**
 * Moves what was kept of the open workbook before it had this address. What an address kept until then is of a file
 * that this workbook was saved over.
 */
function move(from: string, to: string): void {
  try {
    const text = localStorage.getItem(from);
    if (text === null) return;
    localStorage.setItem(to, text);
    localStorage.removeItem(from);
  } catch {
    // Storage that is forbidden or full keeps what it has.
  }
}
