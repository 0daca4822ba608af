import type { TradeWords } from "./types";

export const danish: TradeWords = {
  headings: {
    cow: ["ko", "konummer", "ko nr", "dyr", "dyrenummer", "dyr nr", "øremærke", "chr nr", "halsbånd", "navn", "ko id", "nummer"], // oxfmt-ignore
    date: ["dato", "dag", "beskæringsdato", "dato for beskæring", "besøg", "kontroldato", "prøvedato", "ydelseskontrol", "behandlingsdato", "scoringsdato", "registreringsdato"], // oxfmt-ignore
    lactation: ["laktation", "laktationsnummer", "lakt nr", "kælvning nr", "kælvningsnummer", "antal kælvninger", "paritet"], // oxfmt-ignore
    daysInMilk: ["dage i mælk", "dage fra kælvning", "laktationsdage", "laktationsdag", "dage efter kælvning", "dage siden kælvning"], // oxfmt-ignore
    born: ["født", "fødselsdato", "fødsel", "fødedato"],
    calved: ["kælvet", "kælvning", "kælvningsdato", "sidste kælvning", "seneste kælvning"],
    dryOff: ["goldet", "goldning", "gold", "goldningsdato", "afgoldning"],
    entered: ["indgang", "indgået", "tilgang", "tilgangsdato", "købt", "indkøbt", "indsat"],
    left: ["afgang", "afgangsdato", "afgået", "solgt", "slagtet", "død", "udsat"],
    group: ["gruppe", "hold", "boks", "afdeling"],
    foot: ["ben", "fod", "lem"],
    claw: ["klov", "tå", "inder yder", "inderklov yderklov"],
    zone: ["zone", "område", "klovzone", "placering"],
    lesion: ["lidelse", "klovlidelse", "diagnose", "fund", "sygdom", "klovsygdom", "problem", "skade", "anmærkning klov", "årsag"], // oxfmt-ignore
    stage: ["stadie", "stadium", "M stadie"],
    severity: ["grad", "alvorlighed", "sværhedsgrad", "alvorsgrad"],
    toeMm: ["tålængde", "klovlængde", "længde", "tåvæg", "længde af klov"],
    measuredFrom: ["målt fra", "målepunkt", "fra"],
    treatment: ["behandling", "handling", "udført", "behandlet med", "terapi", "pleje"],
    seenAgain: ["kontrolleret", "kontrolleret den", "set igen"],
    outcome: ["resultat", "udfald", "forløb", "helet"],
    nextLook: ["kontrol", "næste kontrol", "genkontrol", "opfølgning", "ses igen", "tilsyn", "efterkontrol"],
    closedOn: ["afsluttet", "lukket", "færdig", "afsluttet den", "rask den"],
    note: ["bemærkning", "bemærkninger", "note", "noter", "kommentar", "kommentarer"],
    drug: ["medicin", "præparat", "lægemiddel", "antibiotika"],
    withdrawal: ["tilbageholdelse", "tilbageholdelsestid", "mælk fri", "tilbageholdelse mælk", "slagtefrist"],
    score: ["score", "halthed", "halthedsscore", "gangscore", "bevægelsesscore", "bevægelse", "mobilitet", "haltscore"],
    milkKg: ["mælk", "kg mælk", "mælk kg", "ydelse", "dagsydelse", "mælkeydelse", "mælkemængde", "liter"],
    count: ["celletal", "celler", "somatiske celler", "cellekoncentration"],
    other: ["fedt", "protein", "urea", "far", "mor", "race", "klovbeskærer", "beskærer", "dyrlæge", "pris", "faktura", "tyr", "inseminering", "vægt", "hvem"], // oxfmt-ignore
  },
  feet: {
    left: ["venstre", "ven", "v"],
    right: ["højre", "høj"],
    front: ["for", "forben", "forrest", "f"],
    hind: ["bag", "bagben", "bagest", "b"],
    short: { VF: "LF", HF: "RF", VB: "LH", HB: "RH" },
  },
  claws: { inner: ["inder", "inderklov", "inderst", "indre"], outer: ["yder", "yderklov", "yderst", "ydre"] },
  landmarks: { hardHorn: ["hårdt horn", "hornkant"], skinHornLine: ["kronrand", "hårgrænse", "hud"] },
  outcomes: {
    healed: ["helet", "rask", "god"],
    better: ["bedre"],
    same: ["uændret", "samme"],
    worse: ["værre"],
    gone: ["solgt", "død", "slagtet", "afgået"],
  },
  groups: {
    fresh: ["nykælvere", "nykælvet"],
    high: ["høj", "højtydende"],
    low: ["lav", "lavtydende"],
    dry: ["gold", "goldkøer"],
  },
  treatments: ["klods", "sko", "forbinding", "bandage", "spray", "salve", "beskåret", "beskæring", "smertestillende", "dyrlæge", "antibiotika", "gel"], // oxfmt-ignore
};
