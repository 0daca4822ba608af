import { foldWords } from "../../fold-words";
import type { Check } from "../checked-herd";
import type { CheckedTable } from "../checked-table";

/**
 * Words for medicines with which a withdrawal period may go: classes and active substances, in the languages that
 * headings are read in. Common practice, no source; no list of them is complete.
 */
const DRUG_WORDS =
  /\b(drug|medicine|antibiotic\w*|antibiotik\w*|antibiotiqu\w*|penicil\w+|oxytetra\w+|\w*tetracyclin\w*|tetraciclin\w*|ceftiofur|cefalexin|tylosin\w*|amoxicil\w+|florfenicol|lincomycin\w*|ketoprofen\w*|meloxicam\w*|flunixin\w*|carprofen\w*|tolfenam\w+|nsaids?|anti inflammator\w+|antiinflamatori\w+|anti inflammatoire\w*|entzundungshemmer|injection|injektion|inyeccion)\b/;

/** Words with which a withdrawal is noted. */
const WITHDRAWAL_WORDS =
  /\b(withdraw\w*|withh\w+|wartezeit\w*|sperrfrist\w*|wartefrist|wachttijd\w*|wachttermijn|attente|retirada|supresion|tilbagehold\w*|slagtefrist|clear)\b/;
const NOT_ENTERED = /withdrawal not entered/;

/** Medicines that are named without a note of their withdrawal. */
export const blankWithdrawals: Check = {
  id: "withdrawal left blank",
  about: "medicines without a note of their withdrawal",
  run(herd, report) {
    const named = new Map<string, boolean>();
    for (const table of herd.named("Findings")) {
      for (let row = 0; row < table.rowCount; row++) {
        const drug = drugIn(table, row, named);
        if (drug === undefined || isNoted(table, row)) continue;
        report.cell(table, table.has("withdrawal") ? "withdrawal" : drug, row, {
          level: "wrong",
          wrong:
            "A medicine is named and its withdrawal is not: milk and meat periods are those of the label or the veterinarian.",
          touches: "Nobody sees when her milk and meat are clear.",
        });
      }
    }
  },
};

/** The key of the column that names a medicine. `named` keeps what was found in a text: texts repeat. */
function drugIn(table: CheckedTable, row: number, named: Map<string, boolean>): string | undefined {
  if (table.cell("drug", row) !== null) return "drug";
  return WRITTEN_IN.find((key) => {
    const cell = table.cell(key, row);
    if (typeof cell !== "string") return false;
    const known = named.get(cell);
    if (known !== undefined) return known;
    const names = DRUG_WORDS.test(foldWords(cell));
    named.set(cell, names);
    return names;
  });
}

/** Keys of the columns in which a medicine may be named besides its own. */
const WRITTEN_IN = ["treatment", "note"];

function isNoted(table: CheckedTable, row: number): boolean {
  if (table.cell("withdrawal", row) !== null) return true;
  const text = [...WRITTEN_IN, "drug"].map((key) => foldedCell(table, key, row)).join(" ");
  return WITHDRAWAL_WORDS.test(text) && !NOT_ENTERED.test(text);
}

function foldedCell(table: CheckedTable, key: string, row: number): string {
  const cell = table.cell(key, row);
  return typeof cell === "string" ? foldWords(cell) : "";
}
