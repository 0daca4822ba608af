import type { DraftKeeper } from "../taskpane/pane-workbook";
import { keptSaves, type SaveLog } from "../workbook/saving/save-log";

/**
 * What the pane keeps in the browser's own storage on this computer, apart for each workbook: what was typed and not
 * yet saved, and the last saves. Storage that is full, forbidden or damaged keeps nothing and stops nothing.
 */
export function draftsOf(workbook: string): DraftKeeper {
  const kept = keptText(`evenfoot draft ${workbook}`);
  return { read: () => kept.read(), keep: (draft) => kept.write(draft) };
}

export function savesOf(workbook: string): SaveLog {
  const kept = keptText(`evenfoot saves ${workbook}`);
  let saves = keptSaves(kept.read());
  return {
    read: () => saves,
    write: (next) => {
      saves = next;
      kept.write(next);
    },
  };
}

function keptText(key: string) {
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
