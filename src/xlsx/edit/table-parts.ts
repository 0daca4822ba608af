import { areaAddress, parseArea } from "../address";
import type { Area } from "../model";
import { partText, relationshipsOf } from "../package";
import { attribute, numberAttribute, parsePart } from "../xml";

/** A table that has grown or shrunk: the cells under its headings, before and now. */
export interface TableChange {
  readonly before: Area;
  readonly now: Area;
}

/**
 * Gives the tables of a sheet their new extent, in their own parts. Returns what changed. A row of totals is no part
 * of the areas handed over, as in the grid.
 */
export function resizeTables(
  parts: Record<string, Uint8Array>,
  sheetPath: string,
  tables: readonly { readonly name: string; readonly area: Area }[],
): TableChange[] {
  const changes: TableChange[] = [];
  for (const { kind, target } of relationshipsOf(parts, sheetPath)) {
    if (kind !== "table") continue;
    const xml = partText(parts, target);
    const root = parsePart(xml, target);
    const name = attribute(root, "displayName") ?? attribute(root, "name");
    const now = tables.find((table) => table.name === name)?.area;
    const before = parseArea(attribute(root, "ref") ?? "");
    // A table with totals cannot take in rows: the totals stand there.
    const hasTotals = (numberAttribute(root, "totalsRowCount") ?? 0) > 0;
    if (!now || !before || hasTotals || areaAddress(before) === areaAddress(now)) continue;
    changes.push({ before, now });
    // The table's own extent and that of its filter are the same block.
    const resized = xml.replaceAll(`ref="${areaAddress(before)}"`, `ref="${areaAddress(now)}"`);
    parts[target] = new TextEncoder().encode(resized);
  }
  return changes;
}
