import type { TradeWords } from "./types";

export const dutch: TradeWords = {
  headings: {
    cow: ["koe", "koenummer", "koe nr", "koenr", "dier", "diernummer", "oormerk", "oornummer", "levensnummer", "werknummer", "halsbandnummer", "naam", "nummer", "diernr", "koenaam"], // oxfmt-ignore
    date: ["datum", "dag", "bekapdatum", "datum bekappen", "datum bekapping", "behandeldatum", "monsterdatum", "datum monster", "MPR datum", "proefdatum", "melkcontrole", "scoredatum", "datum score", "bezoek", "controledatum"], // oxfmt-ignore
    lactation: ["lactatie", "lactatienummer", "lact", "lactnr", "pariteit", "kalfnummer", "aantal keer gekalfd", "kalveringen"], // oxfmt-ignore
    daysInMilk: ["dagen in melk", "dagen in lactatie", "lactatiedagen", "lactatiedag", "dagen na kalven", "dagen gemolken", "lactatiestadium"], // oxfmt-ignore
    born: ["geboren", "geboortedatum", "geb datum", "geboorte", "geboren op"],
    calved: ["gekalfd", "afgekalfd", "kalfdatum", "afkalfdatum", "laatste kalving", "gekalfd op", "afkalven", "laatst gekalfd"], // oxfmt-ignore
    dryOff: ["droog", "droogzetten", "drooggezet", "droogzetdatum", "droog op", "droogstand"],
    entered: ["aanvoer", "aanvoerdatum", "aangevoerd", "aangekocht", "binnen op", "op bedrijf sinds"],
    left: ["afvoer", "afvoerdatum", "afgevoerd", "verkocht", "weg", "gestorven", "geslacht"],
    group: ["groep", "hok", "koppel", "voergroep", "afdeling"],
    foot: ["poot", "been", "voet", "poten"],
    claw: ["klauw", "teen", "binnen buiten", "kant", "klauwhelft"],
    zone: ["zone", "plaats", "plek", "klauwzone"],
    lesion: ["aandoening", "klauwaandoening", "diagnose", "probleem", "afwijking", "letsel", "bevinding", "ziekte", "klauwprobleem", "oorzaak", "wat gezien"], // oxfmt-ignore
    stage: ["stadium", "M stadium"],
    severity: ["ernst", "graad", "mate", "gradatie"],
    toeMm: ["teenlengte", "klauwlengte", "lengte", "lengte klauw", "wandlengte"],
    measuredFrom: ["gemeten vanaf", "meetpunt", "vanaf", "gemeten van"],
    treatment: ["behandeling", "actie", "gedaan", "therapie", "verzorging", "behandeld met", "handeling"],
    seenAgain: ["gecontroleerd", "gecontroleerd op", "nagekeken op"],
    outcome: ["resultaat", "uitkomst", "genezen", "verloop"],
    nextLook: ["hercontrole", "controle", "nacontrole", "volgende controle", "controle op", "terugzien", "opnieuw bekijken", "nakijken"], // oxfmt-ignore
    closedOn: ["afgesloten", "afgehandeld", "klaar", "genezen op", "gereed"],
    note: ["opmerking", "opmerkingen", "notitie", "notities", "bijzonderheden", "commentaar", "opm"],
    drug: ["medicijn", "middel", "diergeneesmiddel", "antibioticum"],
    withdrawal: ["wachttijd", "wachttermijn", "wachttijd melk", "melk vrij", "wachttijd vlees"],
    score: ["score", "locomotiescore", "loopscore", "kreupelheid", "mobiliteitsscore", "gangscore", "bewegingsscore", "beengebruik"], // oxfmt-ignore
    milkKg: ["melk", "kg melk", "melk kg", "melkgift", "dagproductie", "productie", "melkproductie", "liters"],
    count: ["celgetal", "cellen", "celgetal x1000", "kiem celgetal", "somatische cellen", "celaantal"],
    other: ["vet", "eiwit", "lactose", "ureum", "vader", "moeder", "ras", "bekapper", "klauwbekapper", "dierenarts", "prijs", "kosten", "factuur", "stier", "inseminatie", "gewicht", "door"], // oxfmt-ignore
  },
  feet: {
    left: ["links", "linker", "l"],
    right: ["rechts", "rechter", "r"],
    front: ["voor", "voorpoot", "vooraan", "v"],
    hind: ["achter", "achterpoot", "a"],
    short: { LV: "LF", RV: "RF", LA: "LH", RA: "RH" },
  },
  claws: { inner: ["binnen", "binnenklauw", "binnenste"], outer: ["buiten", "buitenklauw", "buitenste"] },
  landmarks: { hardHorn: ["harde hoorn", "hard"], skinHornLine: ["kroonrand", "haargrens", "huid"] },
  outcomes: {
    healed: ["genezen", "goed", "hersteld"],
    better: ["beter", "verbeterd"],
    same: ["gelijk", "hetzelfde", "onveranderd"],
    worse: ["slechter", "erger"],
    gone: ["weg", "afgevoerd", "verkocht", "dood"],
  },
  groups: {
    fresh: ["vers", "verse koeien", "nieuwmelkt"],
    high: ["hoog", "hoogproductief"],
    low: ["laag", "oudmelkt"],
    dry: ["droog", "droge koeien"],
  },
  treatments: ["blok", "blokje", "klos", "verband", "spray", "zalf", "bekapt", "bekappen", "pijnstiller", "dierenarts", "uitgesneden", "antibiotica", "gel"], // oxfmt-ignore
};
