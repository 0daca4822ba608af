import { between, cycle, days, numbers, type Variant, written } from "./variant";

export const allgaeu: Variant = {
  farm: "ein Betrieb im Allgäu",
  sheets: [
    {
      sheet: "Klauenpflege",
      holds: "Findings",
      columns: [
        ["Stallnr.", "cow", numbers(14, 3)],
        ["Datum", "date", written("dd.mm.yyyy", "2025-09-08", 2)],
        ["Bein", "foot", cycle("HL", "HR", "VL", "HR", "VR")],
        ["Klaue", "claw", cycle("außen", "innen", "außen", "außen")],
        ["Befund", "lesion", cycle("Sohlengeschwür", "Mortellaro", "Rehe", "Mortellaro", "Wanddefekt", "Limax")],
        ["Schweregrad", "severity", cycle(1, 2, 3, 1)],
        ["Behandlung", "treatment", cycle("Klotz", "Verband", "Salbe", "geschnitten")],
        ["Nachkontrolle", "nextLook", written("dd.mm.yyyy", "2025-09-22", 2)],
        ["Klauenpfleger", "-", cycle("eigen", "Ring")],
        ["Bemerkung", "note", cycle(null, null, "lahm", null)],
      ],
    },
    {
      sheet: "MLP",
      holds: "Tests",
      columns: [
        ["Stallnr.", "cow", numbers(14, 3)],
        ["Prüfdatum", "date", days("2025-10-14", 0)],
        ["Lakt.", "lactation", cycle(1, 2, 4, 3, 1)],
        ["Melktage", "daysInMilk", between(9, 340, 0)],
        ["Mkg", "milkKg", between(17, 46, 1)],
        ["Fett", "-", between(3.4, 5.1, 2)],
        ["Eiweiß", "-", between(3, 3.8, 2)],
        ["Zellen (Tsd.)", "count", cycle(31, 90, 480, 1204, 55, 166)],
      ],
      shownAsDays: ["Prüfdatum"],
    },
  ],
};

export const toggenburg: Variant = {
  farm: "ein Betrieb im Toggenburg",
  sheets: [
    {
      sheet: "Tabelle1",
      holds: "Findings",
      above: ["Klauenschneiden"],
      columns: [
        ["Tier", "cow", cycle("Bella", "Flora", "Alma", "Heidi", "Rosa", "Lisa", "Nelke", "Perle")],
        ["Tag", "date", days("2025-11-03", 1)],
        ["Gliedmaße", "foot", cycle("hinten links", "hinten rechts", "vorne links", "vorne rechts")],
        ["Zehe", "claw", cycle("Aussenklaue", "Innenklaue")],
        ["Diagnose", "lesion", cycle("Ballenfäule", "Mortellaro", "Sohlengeschwür", "Doppelsohle")],
        ["Länge Zehe cm", "toeMm", between(7.1, 9.4, 1)],
        ["gemessen ab", "measuredFrom", cycle("harte Hornkante", "Kronsaum")],
        ["Massnahme", "treatment", cycle("Klotz", "Spray", "Schnitt")],
        ["erledigt am", "closedOn", cycle(null, 46_000, null, 46_010)],
      ],
      shownAsDays: ["Tag", "erledigt am"],
    },
  ],
};

export const drenthe: Variant = {
  farm: "een bedrijf in Drenthe",
  sheets: [
    {
      sheet: "bekappen",
      holds: "Findings",
      columns: [
        ["Koenr", "cow", numbers(401, 5)],
        ["Datum bekapt", "date", written("dd-mm-yyyy", "2025-06-11", 3)],
        ["Poot", "foot", cycle("LA", "RA", "LV", "RA", "RV")],
        ["Klauw", "claw", cycle("buiten", "binnen", "buiten")],
        ["Aandoening", "lesion", cycle("Mortellaro", "zoolzweer", "stinkpoot", "wittelijndefect", "tyloom")],
        ["Ernst", "severity", cycle(1, 1, 2, 3)],
        ["Wat gedaan", "treatment", cycle("blokje", "spray", "verband", "bekapt")],
        ["Terugkijken", "nextLook", written("dd-mm-yyyy", "2025-06-25", 3)],
        ["Opm.", "note", cycle(null, "wild", null, null)],
      ],
    },
    {
      sheet: "melkcontrole",
      holds: "Tests",
      columns: [
        ["Koenr", "cow", numbers(401, 5)],
        ["Monsterdatum", "date", days("2025-09-02", 0)],
        ["Pariteit", "lactation", cycle(1, 2, 3, 5)],
        ["Dgn in melk", "daysInMilk", between(11, 310, 0)],
        ["Melkgift", "milkKg", between(19, 48, 1)],
        ["Celgetal", "count", cycle(25, 71, 133, 640, 44, 2100)],
        ["% vet", "-", between(3.7, 5.2, 2)],
      ],
      shownAsDays: ["Monsterdatum"],
    },
  ],
};

export const jutland: Variant = {
  farm: "en gård i Jylland",
  sheets: [
    {
      sheet: "Klovbeskæring",
      holds: "Findings",
      columns: [
        ["Ko nr.", "cow", numbers(1204, 6)],
        ["Dato", "date", written("dd/mm-yyyy", "2025-08-20", 2)],
        ["Ben", "foot", cycle("VB", "HB", "VF", "HF")],
        ["Klov", "claw", cycle("yderklov", "inderklov", "yderklov")],
        [
          "Lidelse",
          "lesion",
          cycle("såleknusning", "digital dermatitis", "klovbrandbyld", "balleforrådnelse", "nydannelse"),
        ],
        ["Grad", "severity", cycle(1, 2, 1, 1, 3)],
        ["Behandling", "treatment", cycle("klods", "forbinding", "spray", "beskåret")],
        ["Genses", "nextLook", written("dd/mm-yyyy", "2025-09-03", 2)],
        ["Bemærkninger", "note", cycle(null, null, null, "halt")],
      ],
    },
    {
      sheet: "Ydelseskontrol",
      holds: "Tests",
      columns: [
        ["Ko nr.", "cow", numbers(1204, 6)],
        ["Kontroldato", "date", days("2025-09-17", 0)],
        ["Laktationsnr", "lactation", cycle(1, 3, 2, 4)],
        ["Dage efter kælvning", "daysInMilk", between(6, 365, 0)],
        ["Kg mælk", "milkKg", between(21, 52, 1)],
        ["Celletal", "count", cycle(38, 97, 301, 55, 1500, 18)],
      ],
      shownAsDays: ["Kontroldato"],
    },
  ],
};
