import { between, cycle, days, numbers, type Variant, written } from "./variant";

export const mayenne: Variant = {
  farm: "un élevage en Mayenne",
  sheets: [
    {
      sheet: "Parage",
      holds: "Findings",
      columns: [
        ["N° travail", "cow", numbers(4310, 7)],
        ["Date parage", "date", written("dd/mm/yyyy", "2025-09-10", 3)],
        ["Membre", "foot", cycle("ARG", "ARD", "AVG", "AVD")],
        ["Onglon", "claw", cycle("externe", "interne", "externe")],
        ["Lésion", "lesion", cycle("ulcère de la sole", "Mortellaro", "cerise", "panaris", "limace", "ligne blanche")],
        ["Gravité", "severity", cycle(1, 2, 2, 3)],
        ["Soins", "treatment", cycle("talonnette", "bandage", "spray", "parage")],
        ["À revoir le", "nextLook", written("dd/mm/yyyy", "2025-09-24", 3)],
        ["Pareur", "-", cycle("ETA", "nous")],
        ["Observations", "note", cycle(null, null, "boite", null)],
      ],
    },
    {
      sheet: "Troupeau",
      holds: "Cows",
      columns: [
        ["N° travail", "cow", numbers(4310, 7)],
        ["Née le", "born", days("2019-04-02", 29)],
        ["Rang", "lactation", cycle(1, 2, 3, 4)],
        ["Dernier vêlage", "calved", days("2025-01-15", 6)],
        ["Tarie le", "dryOff", cycle(null, 45_980, null, 46_020)],
        ["Entrée", "entered", days("2021-06-01", 20)],
        ["Sortie", "left", cycle(null, null, null, 45_900, null)],
        ["Lot", "group", cycle("haut", "bas", "taries")],
      ],
      shownAsDays: ["Née le", "Dernier vêlage", "Tarie le", "Entrée", "Sortie"],
    },
  ],
};

export const hainaut: Variant = {
  farm: "une ferme du Hainaut",
  sheets: [
    {
      sheet: "Contrôle laitier",
      holds: "Tests",
      above: ["Résultats des contrôles", "", "copié chaque mois"],
      columns: [
        ["Vache", "cow", cycle("Marguerite", "Iris", "Jonquille", "Lavande", "Noisette", "Olga", "Perle", "Quille")],
        ["Date contrôle", "date", days("2025-10-08", 0)],
        ["N° lactation", "lactation", cycle(1, 2, 3, 1)],
        ["Jours de lactation", "daysInMilk", between(12, 320, 0)],
        ["Lait (l)", "milkKg", between(16, 44, 1)],
        ["TB", "-", between(36, 48, 1)],
        ["TP", "-", between(31, 37, 1)],
        ["Cellules", "count", cycle(45, 130, 88, 730, 21, 1650)],
      ],
      shownAsDays: ["Date contrôle"],
    },
    {
      sheet: "Boiteries",
      holds: "Scores",
      columns: [
        ["Date", "date", written("dd/mm/yy", "2025-10-13", 1)],
        ["Vache", "cow", cycle("Marguerite", "Iris", "Jonquille", "Lavande", "Noisette", "Olga", "Perle", "Quille")],
        ["Note de boiterie", "score", cycle(1, 2, 1, 3, 4, 1, 5)],
      ],
    },
  ],
};

export const galicia: Variant = {
  farm: "una granja en Galicia",
  sheets: [
    {
      sheet: "Recorte",
      holds: "Findings",
      columns: [
        ["Crotal", "cow", numbers(2051, 4)],
        ["Fecha", "date", written("dd/mm/yyyy", "2025-07-21", 2)],
        ["Pata", "foot", cycle("PI", "PD", "AI", "AD")],
        ["Pezuña", "claw", cycle("externa", "interna", "externa")],
        ["Lesión", "lesion", cycle("úlcera de suela", "dermatitis digital", "línea blanca", "panadizo", "tiloma")],
        ["Grado", "severity", cycle(1, 2, 3, 1)],
        ["Tratamiento", "treatment", cycle("taco", "vendaje", "spray", "recorte")],
        ["Próxima revisión", "nextLook", written("dd/mm/yyyy", "2025-08-04", 2)],
        ["Podólogo", "-", cycle("fijo", "suplente")],
        ["Notas", "note", cycle(null, "coja", null)],
      ],
    },
    {
      sheet: "Control lechero",
      holds: "Tests",
      columns: [
        ["Crotal", "cow", numbers(2051, 4)],
        ["Fecha control", "date", days("2025-09-30", 0)],
        ["Nº parto", "lactation", cycle(1, 2, 3, 6)],
        ["DEL", "daysInMilk", between(7, 350, 0)],
        ["Leche", "milkKg", between(18, 49, 1)],
        ["RCS (x1000)", "count", cycle(51, 77, 210, 1980, 36)],
        ["Grasa", "-", between(3.3, 4.4, 2)],
      ],
      shownAsDays: ["Fecha control"],
    },
  ],
};
