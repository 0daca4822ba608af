import type { HerdTables } from "../../../blocks/data";
import type { DaySerial } from "../../../core/shared/days";
import { scaleOf } from "../../../herd/mapped-port/scale-of";
import type { TableContent, TablePort } from "../../../workbook/table-port";

/** Reads tables under our names; those that the workbook does not have are left out. */
export async function readHerdTables(port: TablePort, names: readonly string[], asOf: DaySerial): Promise<HerdTables> {
  const present = new Set((await port.listTables()).map(({ name }) => name));
  const wanted = names.filter((name) => present.has(name));
  const [scale, ...contents] = await Promise.all([scaleOf(port), ...wanted.map((name) => port.readTable(name))]);
  return {
    tables: new Map(contents.map((content): [string, TableContent] => [content.name, content])),
    asOf,
    scale,
  };
}
