import { createContext } from "preact";
import { useContext, useEffect, useRef } from "preact/hooks";
import { mappingTable } from "../../workbook/mapping-table";
import type { TablePort } from "../../workbook/table-port";

/** Whether the screen is the one that the pane shows. */
export const IsShown = createContext(true);

/** Typing in the workbook reports change after change: it is read anew once it has paused. */
const PAUSE_MS = 300;

/**
 * Tells when one of the tables that a screen reads has changed, or the mapping that says which lists they are. A screen
 * out of sight hears it when it is shown again, so that nobody waits for figures that nobody sees.
 */
export function useWorkbookChanges(port: TablePort, tables: readonly string[], changed: () => void): void {
  const isShown = useContext(IsShown);
  const missed = useRef(false);
  const latest = useRef({ isShown, changed });
  latest.current = { isShown, changed };

  useEffect(() => {
    let pause: ReturnType<typeof setTimeout> | undefined;
    const tell = (): void => {
      if (latest.current.isShown) latest.current.changed();
      else missed.current = true;
    };
    const unwatch = port.watchChanges(({ table }) => {
      if (table !== undefined && table !== mappingTable.name && !tables.includes(table)) return;
      clearTimeout(pause);
      pause = setTimeout(tell, PAUSE_MS);
    });
    return () => {
      clearTimeout(pause);
      unwatch();
    };
  }, [port]);

  useEffect(() => {
    if (!isShown || !missed.current) return;
    missed.current = false;
    latest.current.changed();
  }, [isShown]);
}
