import { LocaleType, mergeLocales } from "@univerjs/core";
import conditionalFormatting from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import core from "@univerjs/preset-sheets-core/locales/en-US";
import dataValidation from "@univerjs/preset-sheets-data-validation/locales/en-US";
import table from "@univerjs/preset-sheets-table/locales/en-US";

/** What the library shows while it computes; it has no words for it itself. */
const progress = {
  "sheets-formula": {
    progress: {
      analyzing: "Looking for what changed",
      calculating: "Computing",
      "array-analysis": "Looking for what follows",
      "array-calculation": "Computing",
      done: "Computed",
    },
  },
};

/** All words of the grid. */
export const locales = {
  [LocaleType.EN_US]: mergeLocales(core, table, conditionalFormatting, dataValidation, progress),
};
