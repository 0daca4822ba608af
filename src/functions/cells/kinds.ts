import { DomainError } from "../../core/shared/domain-error";
import { choice, number } from "../scalars";

/** The two ways in which a herd sheet writes a cell count. */
export const countUnit = choice(["thousand", "cells/mL"], {
  thousands: "thousand",
  "thousand/mL": "thousand",
  "1000/mL": "thousand",
  "cells per mL": "cells/mL",
  "per mL": "cells/mL",
});
export type CountUnit = "thousand" | "cells/mL";

/** Counts as thousands from here on are taken for cells/mL: laboratories cap at 9,999 thousand. */
const LOOKS_LIKE_CELLS = 10_000;
/** Counts as cells/mL below this are taken for thousands: milk with under 1,000 cells/mL is not seen. */
const LOOKS_LIKE_THOUSANDS = 1_000;

/** A cell count as written; its unit stands in another argument. A 0 is no count. */
export const cellCount = number({ min: 0, reason: "a count of cells", zeroIsBlank: true });

/** The count in thousand cells/mL, or a refusal that names the likely mix-up of units. */
export function inThousands(count: number, unit: CountUnit, argument: string): number {
  if (unit === "thousand") {
    if (count < LOOKS_LIKE_CELLS) return count;
    throw new DomainError(
      "invalid",
      `${argument} must be below ${LOOKS_LIKE_CELLS} thousand cells/mL; got ${count}, which looks like cells/mL: give "cells/mL" as the unit`,
    );
  }
  if (count >= LOOKS_LIKE_THOUSANDS) return count / 1000;
  throw new DomainError(
    "invalid",
    `${argument} must be ${LOOKS_LIKE_THOUSANDS} cells/mL or more; got ${count}, which looks like thousands: give "thousand" as the unit`,
  );
}
