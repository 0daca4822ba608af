import { between, cycle, days, numbers, type Variant, written } from "./variant";

/** A farm in Asturias: short headings as they stand over the columns of printed milk tests. */
const asturias: Variant = {
  farm: "una ganadería de Asturias",
  sheets: [
    {
      sheet: "Rebaño",
      holds: "Cows",
      columns: [
        ["Crotal", "cow", numbers(301, 4)],
        ["F. nac.", "born", days("2020-03-02", 17)],
        ["Nº parto", "lactation", cycle(1, 2, 3, 2, 5)],
        ["F. últ. parto", "calved", days("2025-06-04", 8)],
        ["F. secado", "dryOff", cycle(null, 46_120, null, null, 46_160)],
        ["Baja", "left", cycle(null, null, null, 46_180, null)],
        ["Lote", "group", cycle("altas", "bajas", "secas")],
        ["Capa", "-", cycle("negra", "pinta", "roja")],
      ],
      shownAsDays: ["F. nac.", "F. últ. parto", "F. secado", "Baja"],
    },
    {
      sheet: "Controles 2026",
      holds: "Tests",
      above: ["Controles del año", ""],
      columns: [
        ["Crotal", "cow", numbers(301, 4)],
        ["F. control", "date", written("dd/mm/yy", "2026-02-14", 1)],
        ["DEL", "daysInMilk", between(6, 330, 0)],
        ["Lts", "milkKg", between(14, 48, 1)],
        ["% MG", "-", between(3.2, 4.9, 2)],
        ["% Prot", "-", between(2.9, 3.7, 2)],
        ["RCS x1000", "count", cycle(44, 71, 380, 1210, 96, 150)],
      ],
    },
    {
      sheet: "Patas",
      holds: "Findings",
      columns: [
        ["F. arreglo", "date", days("2026-03-01", 2)],
        ["Nº vaca", "cow", numbers(301, 4)],
        ["Pata", "foot", cycle("post. izda.", "post. dcha.", "ant. izda.", "post. dcha.")],
        ["Pezuña", "claw", cycle("externa", "interna", "externa")],
        ["Dolencia", "lesion", cycle("úlcera de suela", "dermatitis digital", "línea blanca", "panadizo")],
        ["Cura", "treatment", cycle("taco", "spray", "venda", "recorte")],
        ["Volver a ver", "nextLook", days("2026-03-20", 2)],
        ["Obs.", "note", cycle(null, null, "coja", null)],
      ],
      shownAsDays: ["F. arreglo", "Volver a ver"],
    },
  ],
};

/** A farm in Vendsyssel. */
const vendsyssel: Variant = {
  farm: "en gård i Vendsyssel",
  sheets: [
    {
      sheet: "Køer",
      holds: "Cows",
      columns: [
        ["Dyrenr.", "cow", numbers(1204, 5)],
        ["Fødselsdag", "born", days("2020-09-02", 16)],
        ["Lakt.nr.", "lactation", cycle(2, 1, 4, 3)],
        ["Sidste kælvning", "calved", days("2025-05-11", 9)],
        ["Goldet", "dryOff", cycle(null, null, 46_140, null)],
        ["Indgang", "entered", days("2022-10-01", 12)],
        ["Afgang", "left", cycle(null, 46_170, null, null, null)],
        ["Hold", "group", cycle("høj", "lav", "gold")],
      ],
      shownAsDays: ["Fødselsdag", "Sidste kælvning", "Goldet", "Indgang", "Afgang"],
    },
    {
      sheet: "Mælk",
      holds: "Tests",
      columns: [
        ["Kontroldato", "date", written("dd-mm-yyyy", "2026-01-15", 0)],
        ["Dyrenr.", "cow", numbers(1204, 5)],
        ["Dage f. kælv.", "daysInMilk", between(8, 320, 0)],
        ["Kg mælk", "milkKg", between(18, 52, 1)],
        ["Fedt %", "-", between(3.5, 5.2, 2)],
        ["Celletal (1000)", "count", cycle(25, 110, 640, 75, 48, 1350)],
      ],
    },
    {
      sheet: "Gang",
      holds: "Scores",
      columns: [
        ["Dato", "date", days("2026-02-02", 0)],
        ["Ko", "cow", numbers(1204, 5)],
        ["Halthed 1-5", "score", cycle(1, 2, 1, 3, 1, 4)],
        ["Set af", "-", cycle("JP", "ML")],
      ],
      shownAsDays: ["Dato"],
    },
  ],
};

/** A farm in the Bessin: short headings, and a list of a trimmer who writes in a hurry. */
const bessin: Variant = {
  farm: "un élevage du Bessin",
  sheets: [
    {
      sheet: "Contrôles",
      holds: "Tests",
      columns: [
        ["N° trav.", "cow", numbers(2101, 3)],
        ["Date ctrl", "date", days("2026-02-10", 0)],
        ["Rang", "lactation", cycle(1, 3, 2, 4)],
        ["Jours lact.", "daysInMilk", between(10, 340, 0)],
        ["Lait (kg)", "milkKg", between(16, 45, 1)],
        ["TB", "-", between(34, 49, 1)],
        ["TP", "-", between(29, 37, 1)],
        ["Leucos", "count", cycle(38, 92, 410, 1560, 61, 133)],
      ],
      shownAsDays: ["Date ctrl"],
    },
    {
      sheet: "Pattes",
      holds: "Findings",
      columns: [
        ["Passage", "date", written("dd/mm/yyyy", "2026-01-12", 3)],
        ["Vache", "cow", numbers(2101, 3)],
        ["Mb", "foot", cycle("ARG", "ARD", "AVG", "ARD")],
        ["Ongl.", "claw", cycle("ext", "int", "ext")],
        ["Constat", "lesion", cycle("ulcère", "mortellaro", "ligne blanche", "fourchet", "panaris")],
        ["Soin", "treatment", cycle("talonnette", "pansement", "spray", "parage")],
        ["A revoir le", "nextLook", written("dd/mm/yyyy", "2026-02-02", 3)],
        ["Rq", "note", cycle(null, "boite", null, null)],
      ],
    },
    {
      sheet: "Troupeau",
      holds: "Cows",
      columns: [
        ["N° trav.", "cow", numbers(2101, 3)],
        ["Née le", "born", days("2020-11-01", 15)],
        ["Vêlée le", "calved", days("2025-06-20", 8)],
        ["Tarie le", "dryOff", cycle(null, 46_130, null, null)],
        ["Sortie le", "left", cycle(null, null, null, 46_175, null)],
        ["Rang", "lactation", cycle(1, 3, 2, 4)],
        ["Case", "group", cycle("A", "B")],
      ],
      shownAsDays: ["Née le", "Vêlée le", "Tarie le", "Sortie le"],
    },
  ],
};

/** Books written down after the guesser's word lists, by other headings; no list was changed for them. */
export const laterVariants: readonly Variant[] = [asturias, vendsyssel, bessin];
