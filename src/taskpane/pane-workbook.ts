import type { DaySerial } from "../core/shared/days";
import type { BookPort } from "../workbook/book-port";
import type { PlainBook } from "../workbook/plain-book";
import type { TablePort } from "../workbook/table-port";
import type { WorkbookPort } from "../workbook/port";

/** Where a draft is kept between two openings of the pane. */
export interface DraftKeeper {
  /** What was kept last; undefined for nothing. */
  read(): unknown;
  keep(draft: unknown): void;
}

/** The workbook behind the pane. Without its tables a host can only have its figures explained. */
export interface PaneWorkbook {
  readonly port: WorkbookPort;
  readonly tables?: TablePort;
  readonly book?: BookPort;
  readonly recordDrafts?: DraftKeeper;
  /** What was written into the visit report by hand. */
  readonly reportDrafts?: DraftKeeper;
  /** Reads a workbook file that the user chose. Rejects with a plain sentence where it is none that can be read. */
  openBook?(file: Blob): Promise<PlainBook>;
  /** The day that the workbook counts from. */
  today(): DaySerial;
  /** Whether a cell named AsOf holds that day, so that formulas can name it; absent where the host has no names. */
  holdsItsDay?(): Promise<boolean>;
}

/** The workbook as a screen has it that cannot do without some of its ports. */
export type WorkbookWith<Port extends keyof PaneWorkbook> = PaneWorkbook & Required<Pick<PaneWorkbook, Port>>;
