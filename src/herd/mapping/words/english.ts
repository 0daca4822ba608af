import type { TradeWords } from "./types";

export const english: TradeWords = {
  headings: {
    cow: ["cow", "cow no", "cow number", "cow id", "cow name", "animal", "animal id", "animal number", "ear tag", "tag", "tag no", "ear number", "collar", "line number", "name", "id", "herd number", "management number"], // oxfmt-ignore
    date: ["date", "day", "when", "visit", "visit date", "trim date", "date trimmed", "trimming date", "test date", "test day", "sample date", "sampling date", "recording date", "score date", "scored", "date scored", "date of treatment", "date seen", "treated on"], // oxfmt-ignore
    lactation: ["lactation", "lactation number", "lact", "lact no", "lac", "parity", "calving number", "calf number", "calvings"], // oxfmt-ignore
    daysInMilk: ["days in milk", "dim", "days since calving", "days calved", "days milking", "stage of lactation"],
    born: ["born", "birth", "birth date", "date of birth", "dob", "birthday"],
    calved: ["calved", "calving", "calving date", "last calving", "latest calving", "last calved", "date calved", "fresh", "fresh date", "freshened"], // oxfmt-ignore
    dryOff: ["dry off", "dried off", "dry", "dry date", "dry off date", "dried", "due dry"],
    entered: ["entered", "entry", "joined", "joined herd", "date in", "came in", "bought", "bought in", "purchased", "arrived", "entry date"], // oxfmt-ignore
    left: ["left", "left herd", "exit", "exit date", "date out", "culled", "cull date", "sold", "died", "gone", "removed", "departure", "went", "went out", "went away"], // oxfmt-ignore
    group: ["group", "pen", "string", "mob", "lot", "milking group", "feed group"],
    foot: ["foot", "leg", "limb", "feet", "hoof", "which foot", "which leg", "quarter leg"],
    claw: ["claw", "toe", "digit", "inner outer", "inside outside", "medial lateral", "side of foot"],
    zone: ["zone", "area", "claw zone", "zone no", "zone number", "position", "site", "location"],
    lesion: ["lesion", "lesion code", "disorder", "diagnosis", "problem", "finding", "findings", "condition", "disease", "cause", "cause of lameness", "reason", "what found", "ailment", "fault", "code", "dx", "found"], // oxfmt-ignore
    stage: ["stage", "m stage", "dd stage", "wart stage"],
    severity: ["severity", "grade", "degree", "sev", "seriousness"],
    toeMm: ["toe length", "toe", "length", "dorsal wall length", "claw length", "hoof length", "wall length"],
    measuredFrom: ["measured from", "measured at", "landmark", "from where", "measuring point", "from"],
    treatment: ["treatment", "treated with", "treatment given", "action", "action taken", "what done", "done", "care", "rx", "tx", "therapy", "work done"], // oxfmt-ignore
    seenAgain: ["seen again", "rechecked", "rechecked on", "checked on", "looked at again", "last checked", "recheck done"], // oxfmt-ignore
    outcome: ["outcome", "result", "recheck result", "healed", "result of recheck"],
    nextLook: ["next look", "recheck", "recheck date", "recheck due", "next check", "check again", "look again", "look at again", "see again", "review", "review date", "revisit", "next visit", "follow up", "due", "due back", "come back", "check on"], // oxfmt-ignore
    closedOn: ["closed on", "closed", "finished", "finished on", "done on", "completed", "signed off", "resolved", "healed on"], // oxfmt-ignore
    note: ["note", "notes", "remark", "remarks", "comment", "comments", "observation", "observations", "memo", "other"], // oxfmt-ignore
    drug: ["drug", "medicine", "medicine given", "product", "medication", "antibiotic"],
    withdrawal: ["withdrawal", "withdraw", "withdrawal period", "withhold", "withholding", "milk withdrawal", "milk withheld until", "meat withdrawal", "milk ok", "clear date"], // oxfmt-ignore
    score: ["score", "mobility", "mobility score", "locomotion", "locomotion score", "lameness score", "lameness", "gait", "gait score", "walking score", "ms", "ls"], // oxfmt-ignore
    milkKg: ["milk", "milk kg", "milk yield", "yield", "kg", "litres", "liters", "lb", "lbs", "pounds", "milk weight", "daily milk", "kg milk", "milk lb", "milk per day"], // oxfmt-ignore
    count: ["count", "scc", "cell count", "cells", "somatic cells", "somatic cell count", "cell counts", "cells ml"],
    other: ["fat", "protein", "lactose", "urea", "mun", "butterfat", "sire", "dam", "breed", "trimmer", "vet", "scorer", "operator", "initials", "price", "cost", "invoice", "fat pct", "linear score", "weight", "bcs", "temperature", "bull", "served", "pd", "linear", "scs", "who", "by", "technician"], // oxfmt-ignore
  },
  feet: {
    left: ["left", "l", "near", "lhs"],
    right: ["right", "r", "off", "rhs"],
    front: ["front", "fore", "f"],
    hind: ["hind", "rear", "back", "h", "b"],
    short: { LF: "LF", RF: "RF", LH: "LH", RH: "RH", LR: "LH", RR: "RH", FL: "LF", FR: "RF", HL: "LH", HR: "RH", BL: "LH", BR: "RH", LB: "LH", RB: "RH", RL: "LH", NF: "LF", OF: "RF", NH: "LH", OH: "RH" }, // oxfmt-ignore
  },
  claws: {
    inner: ["inner", "inside", "in", "medial", "med", "m", "i"],
    outer: ["outer", "outside", "out", "lateral", "lat", "l", "o"],
  },
  landmarks: {
    hardHorn: ["hard horn", "hard wall", "periople", "where the horn turns hard"],
    skinHornLine: ["skin", "hairline", "hair line", "coronet", "coronary band", "skin-horn line", "coronary"],
  },
  outcomes: {
    healed: ["healed", "cured", "ok", "good", "sound", "recovered"],
    better: ["better", "improved", "improving"],
    same: ["same", "no change", "unchanged", "not better"],
    worse: ["worse", "deteriorated"],
    gone: ["gone", "left", "culled", "sold", "died"],
  },
  groups: {
    fresh: ["fresh", "freshly calved", "just calved"],
    high: ["high", "high yielders", "highs"],
    low: ["low", "low yielders", "lows"],
    dry: ["dry", "dry cows"],
  },
  treatments: ["trim", "trimmed", "block", "blocked", "shoe", "spray", "sprayed", "bandage", "wrap", "wrapped", "topical", "pain relief", "painkiller", "nsaid", "vet", "pared", "dressed", "cut", "paste", "antibiotic", "injection"], // oxfmt-ignore
};
