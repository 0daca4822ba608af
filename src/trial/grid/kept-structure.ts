import { CanceledError, ICommandService, type Injector } from "@univerjs/core";

/**
 * Beginnings of commands that move cells about or change how they look. A file is saved with the contents of its
 * cells and the length of its tables; what could not be saved is refused rather than lost.
 */
const REFUSED: readonly string[] = [
  ...["insert-row", "insert-col", "insert-multi", "insert-range", "remove-row", "remove-col", "delete-range"],
  ...["move-range", "move-rows", "move-cols", "add-worksheet-merge", "remove-worksheet-merge"],
  ...[
    "insert-sheet",
    "remove-sheet",
    "copy-sheet",
    "set-worksheet-name",
    "set-worksheet-order",
    "set-worksheet-hidden",
  ],
  ...["add-table", "delete-table", "set-table-config", "table-insert", "table-remove"],
  ...["insert-defined-name", "set-defined-name", "remove-defined-name"],
  ...["add-conditional-rule", "set-conditional-rule", "delete-conditional-rule", "move-conditional-rule"],
  ...["set-style", "set-bold", "set-italic", "set-underline", "set-stroke", "set-overline", "set-font", "set-text"],
  ...["set-background", "set-border", "set-vertical", "set-horizontal", "set-tab-color", "set-range-bold"],
  ...["set-range-italic", "set-range-underline", "set-range-stroke", "set-range-font", "set-range-text"],
  ...["numfmt", "apply-format-painter", "set-once-format-painter", "clear-selection-format"],
].map((command) => `sheet.command.${command}`);

/** Refuses them, and tells of it. */
export function keepStructure(injector: Injector, onRefused: () => void): void {
  injector.get(ICommandService).beforeCommandExecuted(({ id }) => {
    if (!REFUSED.some((beginning) => id.startsWith(beginning))) return;
    onRefused();
    throw new CanceledError();
  });
}
