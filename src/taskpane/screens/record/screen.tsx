import { useCallback, useEffect, useMemo, useReducer, useRef, useState } from "preact/hooks";
import { readHerd, RULES_TABLE } from "../../../herd/herd";
import { TableError } from "../../../workbook/table-error";
import { mappingTable } from "../../../workbook/mapping-table";
import { cowsTable, findingsTable, scoresTable } from "../../../workbook/tables";
import { messageOf } from "../../message-of";
import type { WorkbookWith } from "../../pane-workbook";
import { rulesInForce } from "../../rules";
import { doingOf } from "./doing";
import { keptDraft } from "./kept-draft";
import { draftOf, initialState, nextState } from "./model";
import { RecordScreen } from "./view";

/** Typing in the workbook reports change after change: it is read anew once it has paused. */
const PAUSE_MS = 300;
const READ_TABLES: ReadonlySet<string> = new Set([
  cowsTable.name,
  findingsTable.name,
  scoresTable.name,
  RULES_TABLE,
  mappingTable.name,
]);

const newId = (): string => crypto.randomUUID();

/** The screen on a workbook. */
export function Record({ tables, recordDrafts: drafts, today }: WorkbookWith<"tables" | "recordDrafts">) {
  const start = useMemo(() => initialState(today(), newId(), keptDraft(drafts.read())), [drafts]);
  const [state, send] = useReducer(nextState, start);
  const { phase, takingBack } = state;

  const draft = useMemo(() => draftOf(state), [state.visit, state.entry, state.offered, state.phase]);
  // Before anything is handed to the workbook, the draft says so.
  useEffect(() => drafts.keep(draft), [drafts, draft]);

  const [isReading, setIsReading] = useState(true);
  const reads = useRef(0);
  const read = useCallback(() => {
    const turn = ++reads.current;
    setIsReading(true);
    readHerd(tables).then(
      (herd) => {
        if (turn !== reads.current) return;
        setIsReading(false);
        send({ type: "day began", today: today() });
        send({ type: "herd read", herd, rules: rulesInForce(herd.rules), past: tables.pastSaves() });
      },
      (error: unknown) => {
        if (turn !== reads.current) return;
        setIsReading(false);
        send({ type: "herd failed", message: messageOf(error) });
      },
    );
  }, [tables, today]);

  useEffect(() => {
    read();
    let pause: ReturnType<typeof setTimeout> | undefined;
    const unwatch = tables.watchChanges(({ table }) => {
      if (table !== undefined && !READ_TABLES.has(table)) return;
      clearTimeout(pause);
      pause = setTimeout(read, PAUSE_MS);
    });
    return () => {
      clearTimeout(pause);
      unwatch();
    };
  }, [tables, read]);

  useEffect(() => {
    if (phase.kind !== "saving") return;
    const { save } = phase.planned;
    tables.save(save).then(
      () => send({ type: "saved", id: save.id, nextId: newId(), past: tables.pastSaves() }),
      (error: unknown) => {
        const uncertain = error instanceof TableError && error.kind === "uncertain";
        send({ type: "save failed", id: save.id, message: messageOf(error), uncertain });
      },
    );
  }, [tables, phase]);

  useEffect(() => {
    if (takingBack === "") return;
    tables.takeBack(takingBack).then(
      () => send({ type: "taken back", id: takingBack, past: tables.pastSaves() }),
      (error: unknown) => send({ type: "take back failed", id: takingBack, message: messageOf(error) }),
    );
  }, [tables, takingBack]);

  return <RecordScreen state={state} send={send} newId={newId} doing={doingOf(state, isReading)} />;
}
