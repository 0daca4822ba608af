import type { Unwatch } from "../../port";
import type { WorkbookChange } from "../../table-port";
import type { RunExcel } from "./run";

type Handler = OfficeExtension.EventHandlerResult<unknown>;

/** Tells a listener of every change in a table, and of tables that come and go. */
export function watchChanges(run: RunExcel, listener: (change: WorkbookChange) => void): Unwatch {
  let stopped = false;
  const tell = (change: WorkbookChange): void => {
    if (!stopped) listener(change);
  };
  const added = run(async (context) => {
    const { tables } = context.workbook;
    const cameOrWent = ({ source }: { readonly source: string }): Promise<void> => {
      tell({ source: sourceOf(source) });
      return Promise.resolve();
    };
    const handlers: Handler[] = [
      tables.onChanged.add(async ({ tableId, source }) => {
        const table = await nameOf(run, tableId);
        tell({ source: sourceOf(source), ...(table === undefined ? {} : { table }) });
      }),
      tables.onAdded.add(cameOrWent),
      tables.onDeleted.add(cameOrWent),
    ];
    await context.sync();
    return handlers;
  });
  // A host that gives no events still works: the pane reads again when it is asked to.
  added.catch(() => undefined);
  return () => {
    stopped = true;
    void added.then(removeAll).catch(() => undefined);
  };
}

function sourceOf(source: string): WorkbookChange["source"] {
  return source === "Remote" ? "remote" : "local";
}

async function nameOf(run: RunExcel, id: string): Promise<string | undefined> {
  const named = run(async (context) => {
    const table = context.workbook.tables.getItemOrNullObject(id);
    table.load("name");
    await context.sync();
    return table.isNullObject ? undefined : table.name;
  });
  return named.catch(() => undefined);
}

/** Handlers are removed in the context that they were added in. */
async function removeAll(handlers: readonly Handler[]): Promise<void> {
  for (const handler of handlers) handler.remove();
  await handlers[0]?.context.sync();
}
