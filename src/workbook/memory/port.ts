import type { FunctionCall, SelectedCell, Unwatch, WorkbookPort } from "../port";

/** A port on nothing but what it is told: for tests of what stands on the port. */
export class MemoryPort implements WorkbookPort {
  private readonly listeners = new Set<(cell: SelectedCell | undefined) => void>();
  private selected: SelectedCell | undefined;
  private readonly calls = new Map<string, readonly FunctionCall[]>();

  watchSelection(listener: (cell: SelectedCell | undefined) => void): Unwatch {
    this.listeners.add(listener);
    listener(this.selected);
    return () => this.listeners.delete(listener);
  }

  readCalls(cell: SelectedCell): Promise<readonly FunctionCall[]> {
    return Promise.resolve(this.calls.get(placeKey(cell)) ?? []);
  }

  /** Selects a cell whose formula makes these calls. */
  select(cell: SelectedCell | undefined, calls: readonly FunctionCall[] = []): void {
    this.selected = cell;
    if (cell) this.calls.set(placeKey(cell), calls);
    for (const listener of this.listeners) listener(cell);
  }
}

function placeKey({ sheet, address }: SelectedCell): string {
  return `${sheet}!${address}`;
}
