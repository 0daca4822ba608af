import type { ComputedPart } from "../../../src/blocks/compute";
import type { LaidOutBlock } from "../../../src/blocks/laid-out";
import type { PlainCell } from "../../../src/workbook/port";
import type { Answers } from "../../engine/support";
import { addressIn } from "./sheet-side";

/** Stands in the line of a part that the layout refused, before the sentence it gives for that very part. */
const REFUSED = ", as is said: ";

/** Lines that no sentence of the layout explains. */
export function unexplained(lines: readonly string[]): readonly string[] {
  return lines.filter((line) => !line.includes(REFUSED));
}

/** The cells in which the pane and the sheet differ, as lines to be read; none where they agree. */
export function differences(parts: readonly ComputedPart[], laidOut: LaidOutBlock, answers: Answers): string[] {
  return parts.flatMap((computed) => {
    const { id } = computed.part;
    const place = laidOut.places[id];
    if (place === undefined) {
      if (computed.kind === "refused") return [];
      const title = computed.part.kind === "figure" ? computed.part.label : computed.part.title;
      const refusal = laidOut.refusals.find((text) => text.startsWith(`${title}: `));
      return [`${laidOut.id} ${id} is not in the sheet${refusal === undefined ? "" : `${REFUSED}${refusal}`}`];
    }
    const inSheet = (row: number, column: number): PlainCell =>
      answers.value(addressIn({ row: place.row + row, column: place.column + column }), laidOut.id);
    const differ = (row: number, column: number, pane: PlainCell): string[] => {
      const sheet = inSheet(row, column);
      if (isSame(pane, sheet)) return [];
      const message = answers.cell(
        addressIn({ row: place.row + row, column: place.column + column }),
        laidOut.id,
      )?.message;
      return [
        `${laidOut.id} ${id} row ${row} column ${column}: pane ${show(pane)}, sheet ${show(sheet)} ${message ?? ""}`,
      ];
    };
    if (computed.kind === "refused")
      return differ(computed.part.kind === "series" ? computed.part.length : 0, 0, computed.error);
    if (computed.kind === "figure") return differ(0, 0, computed.value);
    const lines = computed.rows.flatMap((row, index) => row.flatMap((cell, column) => differ(index, column, cell)));
    if (computed.part.kind === "series") return lines;
    // Below the last row the sheet must show nothing more of the table.
    return [
      ...lines,
      ...(inSheet(computed.rows.length, 0) === null ? [] : [`${laidOut.id} ${id} is longer in the sheet`]),
    ];
  });
}

function show(cell: PlainCell): string {
  return JSON.stringify(cell);
}

/** A sheet shows a blank as nothing, "" or 0, whichever the formula made of it. */
function isSame(pane: PlainCell, sheet: PlainCell): boolean {
  if (typeof pane === "number" && typeof sheet === "number")
    return Math.abs(pane - sheet) <= 1e-9 * Math.max(1, Math.abs(pane));
  if (pane === null || pane === "") return sheet === null || sheet === "" || (pane === null && sheet === 0);
  return pane === sheet;
}
