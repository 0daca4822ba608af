import type { DaySerial } from "../core/shared/days";
import { tablesWhenMapped } from "../herd/mapped-port/when-mapped";
import { openPane as draw } from "../taskpane/pane";
import { today } from "../taskpane/today";
import { dayOfWorkbook } from "../workbook/office/as-of";
import { OfficeBookHost } from "../workbook/office/book/host";
import { OfficePort } from "../workbook/office/port";
import { OfficeHost } from "../workbook/office/tables/host";
import { openBook } from "../workbook/saving/open-book";
import { openTables } from "../workbook/saving/open-tables";
import { changesOf, draftsOf, reportDraftsOf, savesOf } from "./kept-in-browser";
import { keptName } from "./kept-name";
import { openPlainBook } from "./open-plain-book";

/** Draws the pane on the workbook that is open in Excel. */
export async function openPane(place: Element): Promise<void> {
  const name = keptName(Office.context.document, () => crypto.randomUUID());
  const fixedDay = await readFixedDay();
  const book = openBook(new OfficeBookHost(functionIds), changesOf(name));
  draw(place, {
    port: new OfficePort(),
    tables: tablesWhenMapped(openTables(new OfficeHost(), savesOf(name)), book),
    book,
    openBook: openPlainBook,
    recordDrafts: draftsOf(name),
    reportDrafts: reportDraftsOf(name),
    today: () => fixedDay ?? today(),
    holdsItsDay: async () => (await dayOfWorkbook()) !== undefined,
  });
}

async function functionIds(): Promise<readonly string[]> {
  const { registry } = await import("../functions/registry");
  return registry.map(({ id }) => id);
}

/** The workbook's day where it is another than today's; a cell with =TODAY() goes on with the clock. */
async function readFixedDay(): Promise<DaySerial | undefined> {
  try {
    const day = await dayOfWorkbook();
    return day === today() ? undefined : day;
  } catch {
    return undefined;
  }
}
