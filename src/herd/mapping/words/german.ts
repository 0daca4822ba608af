import type { TradeWords } from "./types";

export const german: TradeWords = {
  headings: {
    cow: ["Kuh", "Kuhnummer", "Kuh Nr", "Kuhname", "Tier", "Tiernummer", "Tier Nr", "Stallnummer", "Stall Nr", "Ohrmarke", "Ohrmarkennummer", "Lebensnummer", "Halsband", "Halsbandnummer", "Transponder", "Nummer", "Nr", "Name"], // oxfmt-ignore
    date: ["Datum", "Tag", "Termin", "Besuch", "Pflegedatum", "Schnittdatum", "Klauenpflege am", "Behandlungsdatum", "Prüfdatum", "Probedatum", "Kontrolldatum", "Melkdatum", "MLP Datum", "Bewertungsdatum", "Wägung", "Probemelken"], // oxfmt-ignore
    lactation: ["Laktation", "Laktationsnummer", "Lakt", "LNr", "Lakt Nr", "Kalbung Nr", "Anzahl Kalbungen", "Laktationszahl"], // oxfmt-ignore
    daysInMilk: ["Laktationstag", "Laktationstage", "Melktag", "Melktage", "Tage in Milch", "Tage nach Kalbung", "LT"],
    born: ["geboren", "geb", "Geburt", "Geburtsdatum", "geboren am", "Geb Datum"],
    calved: ["Kalbung", "Kalbedatum", "Abkalbung", "letzte Kalbung", "letzte Abkalbung", "gekalbt", "gekalbt am", "abgekalbt"], // oxfmt-ignore
    dryOff: ["trocken", "trockengestellt", "Trockenstellen", "Trockenstellung", "trocken ab", "Trockenstelldatum", "galt", "Galtdatum"], // oxfmt-ignore
    entered: ["Zugang", "Zugangsdatum", "zugekauft", "gekauft am", "Eintritt", "im Betrieb seit", "Einstallung"],
    left: ["Abgang", "Abgangsdatum", "abgegangen", "verkauft", "geschlachtet", "Austritt", "Schlachtung", "verendet"],
    group: ["Gruppe", "Leistungsgruppe", "Abteil", "Bucht", "Herde"],
    foot: ["Fuß", "Bein", "Gliedmaße", "Pfote", "Lauf", "Extremität"],
    claw: ["Klaue", "Klauenseite", "innen außen", "Seite", "Zehe", "Innen oder Außenklaue"],
    zone: ["Zone", "Klauenzone", "Bereich", "Stelle", "Lokalisation"],
    lesion: ["Befund", "Diagnose", "Erkrankung", "Klauenbefund", "Krankheit", "Klauenkrankheit", "Läsion", "Problem", "Ursache", "Schaden", "Klauenleiden", "Grund", "Lahmheitsursache"], // oxfmt-ignore
    stage: ["Stadium", "M Stadium", "Mortellaro Stadium"],
    severity: ["Schweregrad", "Grad", "Schwere", "Ausprägung"],
    toeMm: ["Klauenlänge", "Zehenlänge", "Dorsalwandlänge", "Länge", "Wandlänge", "Länge der Zehe"],
    measuredFrom: ["gemessen ab", "gemessen von", "Messpunkt", "Messstelle", "Bezugspunkt", "ab"],
    treatment: [
      "Behandlung",
      "Therapie",
      "Maßnahme",
      "was gemacht",
      "gemacht",
      "behandelt mit",
      "Pflege",
      "Versorgung",
    ],
    seenAgain: ["kontrolliert", "kontrolliert am", "nachgesehen am", "zuletzt kontrolliert"],
    outcome: ["Ergebnis", "Verlauf", "Heilung", "Ausgang"],
    nextLook: ["Nachkontrolle", "Kontrolle", "Kontrolle am", "nächste Kontrolle", "Wiedervorlage", "Nachbehandlung", "wieder ansehen", "nachschauen", "Kontrolltermin"], // oxfmt-ignore
    closedOn: ["abgeschlossen", "erledigt", "erledigt am", "fertig", "geheilt am"],
    note: ["Bemerkung", "Bemerkungen", "Notiz", "Notizen", "Anmerkung", "Kommentar", "Hinweis", "Sonstiges"],
    drug: ["Medikament", "Arzneimittel", "Mittel", "Präparat", "Arznei"],
    withdrawal: ["Wartezeit", "Sperrfrist", "Wartefrist", "Milch gesperrt bis", "Wartezeit Milch", "Absetzfrist"],
    score: ["Locomotion Score", "Bewegungsnote", "Lahmheit", "Lahmheitsnote", "Gangbild", "Gangnote", "Lahmheitsgrad", "Mobilität", "Bewegungsscore", "Note"], // oxfmt-ignore
    milkKg: ["Milch", "Milchmenge", "Milch kg", "Mkg", "Tagesgemelk", "Milchleistung", "Gemelk", "kg Milch", "Leistung", "Liter"], // oxfmt-ignore
    count: ["Zellzahl", "Zellen", "Zellgehalt", "somatische Zellen", "ZZ", "Zellzahlen", "Tsd Zellen"],
    other: ["Fett", "Eiweiß", "Laktose", "Harnstoff", "Vater", "Mutter", "Rasse", "Klauenpfleger", "Tierarzt", "Preis", "Kosten", "Rechnung", "Besamung", "Gewicht", "BCS", "Bulle", "Belegung", "wer", "Kürzel"], // oxfmt-ignore
  },
  feet: {
    left: ["links", "li", "linker", "linkes"],
    right: ["rechts", "re", "rechter", "rechtes"],
    front: ["vorne", "vorn", "vorder", "vorderbein", "vo", "v"],
    hind: ["hinten", "hinter", "hinterbein", "hi"],
    short: { VL: "LF", VR: "RF", HL: "LH", HR: "RH", LV: "LF", RV: "RF" },
  },
  claws: {
    inner: ["innen", "innenklaue", "innere", "innenzehe"],
    outer: ["außen", "aussen", "außenklaue", "aussenklaue", "äußere", "außenzehe", "a"],
  },
  landmarks: {
    hardHorn: ["hartes horn", "harte hornkante", "hart", "saumhorn"],
    skinHornLine: ["kronsaum", "kronrand", "haarlinie", "haut", "behaart"],
  },
  outcomes: {
    healed: ["geheilt", "gut", "gesund", "abgeheilt", "in ordnung"],
    better: ["besser", "gebessert"],
    same: ["gleich", "unverändert"],
    worse: ["schlechter", "schlimmer"],
    gone: ["abgegangen", "verkauft", "tot", "geschlachtet"],
  },
  groups: {
    fresh: ["frisch", "frischmelker", "frischabkalber"],
    high: ["hoch", "hochleistung", "hochleistende"],
    low: ["niedrig", "altmelker", "niederleistung"],
    dry: ["trocken", "trockensteher", "galt"],
  },
  treatments: ["klotz", "schuh", "verband", "salbe", "spray", "geschnitten", "schnitt", "schmerzmittel", "entlastet", "pflege", "tierarzt", "gekürzt", "ausgeschnitten", "entlastung", "gepflegt"], // oxfmt-ignore
};
