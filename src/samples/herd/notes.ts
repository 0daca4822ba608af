import type { FindingRow } from "./findings";

/** What someone in the yard would write beside a finding; invented, and tied to what the row says. */
export function withNotes(rows: readonly FindingRow[]): readonly FindingRow[] {
  let phlegmons = 0;
  return rows.map((row, index) => {
    const note = noteOf(row, index);
    if (row.lesion === "IP" && ++phlegmons === 2)
      return { ...row, note: "swollen above the coronet, vet called the same day" };
    return note === null ? row : { ...row, note };
  });
}

function noteOf({ lesion, severity, toeMm, lactation }: FindingRow, index: number): string | null {
  if (lesion === "TS") return "sole gives under the thumb: nothing taken off";
  if (lesion === "TU") return "vet to see the toe";
  if (lesion === "SU" && severity === 3 && index % 2 === 0) return "other claw blocked, lame for a while";
  if (typeof toeMm === "number" && toeMm < 74 && Number(lactation) > 1) return "short toe, left alone";
  return null;
}
