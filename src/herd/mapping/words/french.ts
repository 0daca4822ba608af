import type { TradeWords } from "./types";

export const french: TradeWords = {
  headings: {
    cow: ["vache", "n° vache", "numéro", "numéro de vache", "animal", "n° animal", "n° travail", "numéro de travail", "n° national", "boucle", "nom", "nom de la vache", "identifiant", "collier", "bovin", "n°"], // oxfmt-ignore
    date: ["date", "jour", "date de parage", "date du parage", "date parage", "visite", "date de visite", "date du contrôle", "date de contrôle", "date d'analyse", "date de notation", "le", "date du soin"], // oxfmt-ignore
    lactation: ["lactation", "n° de lactation", "rang", "rang de lactation", "rang de vêlage", "numéro de lactation", "parité", "nombre de vêlages"], // oxfmt-ignore
    daysInMilk: ["jours de lactation", "jours en lait", "jours en lactation", "stade de lactation", "jours depuis vêlage", "JEL", "JDL", "jours de traite"], // oxfmt-ignore
    born: ["née le", "née", "naissance", "date de naissance", "né le"],
    calved: ["vêlage", "dernier vêlage", "date de vêlage", "vêlée le", "a vêlé le", "date du dernier vêlage"],
    dryOff: ["tarissement", "tarie", "tarie le", "date de tarissement", "tarir le", "sec"],
    entered: ["entrée", "date d'entrée", "entrée au troupeau", "achetée le", "arrivée", "achat"],
    left: ["sortie", "date de sortie", "réformée", "réformée le", "vendue", "départ", "réforme", "morte"],
    group: ["lot", "groupe", "case", "bande"],
    foot: ["pied", "membre", "patte", "pieds", "jambe"],
    claw: ["onglon", "ongle", "doigt", "interne externe", "int ext"],
    zone: ["zone", "emplacement", "localisation", "zone du pied"],
    lesion: ["lésion", "lésions", "diagnostic", "maladie", "problème", "constat", "affection", "trouble", "cause", "code lésion", "atteinte", "pathologie", "motif"], // oxfmt-ignore
    stage: ["stade", "stade M", "stade mortellaro"],
    severity: ["gravité", "sévérité", "degré", "grade", "importance"],
    toeMm: ["longueur de la pince", "longueur pince", "longueur", "longueur de l'onglon", "pince", "longueur de paroi"],
    measuredFrom: ["mesuré depuis", "mesurée depuis", "point de mesure", "repère", "à partir de", "depuis"],
    treatment: ["traitement", "soin", "soins", "acte", "intervention", "fait", "action", "ce qui a été fait", "parage"],
    seenAgain: ["revu le", "revue le", "contrôlé le", "contrôlée le"],
    outcome: ["résultat", "évolution", "guérison", "issue"],
    nextLook: ["à revoir", "à revoir le", "revoir", "revoir le", "prochain contrôle", "contrôle prévu", "suivi", "prochaine visite", "rappel", "à contrôler"], // oxfmt-ignore
    closedOn: ["clos le", "terminé", "terminé le", "fini", "guérie le", "clôturé"],
    note: ["remarque", "remarques", "observation", "observations", "commentaire", "commentaires", "divers"],
    drug: ["médicament", "produit", "antibiotique", "médicament donné"],
    withdrawal: ["délai d'attente", "temps d'attente", "attente lait", "délai lait", "attente viande", "délai"],
    score: ["score", "note", "note de locomotion", "score de locomotion", "boiterie", "score de boiterie", "locomotion", "mobilité", "démarche"], // oxfmt-ignore
    milkKg: ["lait", "kg de lait", "production", "lait kg", "production laitière", "litres", "litres de lait", "quantité de lait"], // oxfmt-ignore
    count: ["cellules", "CCS", "leucocytes", "comptage cellulaire", "taux cellulaire", "numération cellulaire", "cellules somatiques", "comptage"], // oxfmt-ignore
    other: ["TB", "TP", "taux butyreux", "taux protéique", "matière grasse", "MG", "protéines", "urée", "père", "mère", "race", "pareur", "vétérinaire", "prix", "coût", "facture", "taureau", "IA", "insémination", "intervenant", "poids"], // oxfmt-ignore
  },
  feet: {
    left: ["gauche", "g"],
    right: ["droit", "droite", "d"],
    front: ["avant", "av", "antérieur", "ant"],
    hind: ["arrière", "ar", "arr", "postérieur", "post"],
    short: { AVG: "LF", AVD: "RF", ARG: "LH", ARD: "RH", AG: "LF", AD: "RF", PG: "LH", PD: "RH" },
  },
  claws: {
    inner: ["interne", "int", "intérieur", "médial", "intérieure"],
    outer: ["externe", "ext", "extérieur", "latéral", "extérieure", "e"],
  },
  landmarks: {
    hardHorn: ["corne dure", "corne"],
    skinHornLine: ["couronne", "peau", "poils", "ligne des poils", "bourrelet"],
  },
  outcomes: {
    healed: ["guérie", "guéri", "bon", "ok", "saine"],
    better: ["mieux", "amélioré", "améliorée"],
    same: ["pareil", "idem", "inchangé", "stable"],
    worse: ["pire", "aggravé", "aggravée"],
    gone: ["partie", "vendue", "morte", "réformée"],
  },
  groups: {
    fresh: ["fraîches", "début", "fraîches vêlées"],
    high: ["haut", "fortes", "hautes productrices"],
    low: ["bas", "fin", "faibles productrices"],
    dry: ["taries", "tarie"],
  },
  treatments: ["parage", "talonnette", "cale", "pansement", "bandage", "spray", "anti-douleur", "antidouleur", "pommade", "antibiotique", "paré", "parée", "vétérinaire", "bloc", "désinfection"], // oxfmt-ignore
};
