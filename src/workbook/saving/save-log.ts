import type { AppliedEdit, Edit, RowCounts } from "../table-host";

/** What is remembered of a save, so that it is written once and can be taken back. Plain data. */
export type LoggedSave =
  /** Writing has started; whether it ended is not known. */
  | {
      readonly state: "begun";
      readonly id: string;
      readonly title: string;
      readonly edits: readonly Edit[];
      readonly rowCounts: RowCounts;
    }
  | { readonly state: "done"; readonly id: string; readonly title: string; readonly applied: readonly AppliedEdit[] };

/** Where the last saves of a workbook are remembered, oldest first. */
export interface SaveLog {
  read(): readonly LoggedSave[];
  write(saves: readonly LoggedSave[]): void;
}

/** Saves further back are the sheet's own: taking one back among so many later ones would surprise. */
export const SAVES_KEPT = 20;

/** A log that lasts as long as the page. */
export function memoryLog(): SaveLog {
  let kept: readonly LoggedSave[] = [];
  return {
    read: () => kept,
    write: (saves) => {
      kept = saves;
    },
  };
}

/** The log with one save put in, in place of what it says of the same id. */
export function logged(saves: readonly LoggedSave[], save: LoggedSave): readonly LoggedSave[] {
  return [...without(saves, save.id), save].slice(-SAVES_KEPT);
}

export function without(saves: readonly LoggedSave[], id: string): readonly LoggedSave[] {
  return saves.filter((save) => save.id !== id);
}
