import { day } from "../../../../src/core/shared/days";

export { sampleBook } from "../../../workbook/mapped/own-book";

/** The day on which the invented farm's own book is looked at. */
export const TODAY = day("2026-09-01");
