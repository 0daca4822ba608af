import type { LesionWords } from "./types";

export const english: LesionWords = {
  none: ["none", "nothing", "nothing found", "nil", "clean", "sound", "healthy", "no lesion", "ok", "normal", "nad", "trim only", "routine", "clear"], // oxfmt-ignore
  U: ["ulcer"],
  SU: ["sole ulcer", "Rusterholz", "Rusterholz ulcer", "sole ulceration", "solar ulcer"],
  BU: ["bulb ulcer", "heel ulcer"],
  TU: ["toe ulcer", "toe tip ulcer"],
  TN: ["toe necrosis", "rotten toe", "necrotic toe", "dead toe"],
  WL: ["white line", "WLD", "white line disease", "white line lesion", "white line separation", "wld lesion", "under-run white line"], // oxfmt-ignore
  WLF: ["white line fissure", "white line crack", "split white line"],
  WLA: ["white line abscess", "abscess", "foot abscess", "pus in the white line", "hoof abscess"],
  SH: ["sole haemorrhage", "bruising", "bruise", "bruised sole", "sole bruise", "haemorrhage", "red sole", "blood in the sole"], // oxfmt-ignore
  SHD: ["diffuse haemorrhage", "diffuse bruising"],
  SHC: ["circumscribed haemorrhage", "local bruise", "spot bruise"],
  DS: ["double sole", "underrun sole", "under-run sole", "false sole", "underrun"],
  TS: ["thin sole", "thin soles", "soft sole", "worn sole"],
  DD: ["digital dermatitis", "digi", "digital", "hairy wart", "hairy warts", "heel wart", "heel warts", "strawberry", "strawberry foot", "wart", "warts", "Mortellaro", "papillomatous dermatitis"], // oxfmt-ignore
  ID: ["interdigital dermatitis", "superficial dermatitis", "scald", "stable foot rot"],
  HHE: ["heel erosion", "heel horn erosion", "slurry heel", "eroded heel", "pitted heel", "heel rot"],
  IP: ["foul", "foul in the foot", "foot rot", "footrot", "interdigital phlegmon", "phlegmon", "super foul", "hoof rot", "interdigital necrobacillosis"], // oxfmt-ignore
  IH: ["growth", "corn", "corns", "tyloma", "fibroma", "interdigital growth", "interdigital hyperplasia", "wart between the claws"], // oxfmt-ignore
  AC: ["asymmetric claws", "uneven claws", "odd claws"],
  CD: ["concave wall", "dished toe", "dish toe", "laminitic claw", "concave dorsal wall", "laminitis", "founder"],
  CC: ["corkscrew", "corkscrew claw", "screw claw", "twisted claw"],
  SC: ["scissor claw", "scissors", "crossed claws"],
  HF: ["horn fissure", "sand crack", "cracked claw", "wall crack", "crack"],
  HFA: ["axial fissure", "axial wall crack", "inner wall crack"],
  HFH: ["horizontal fissure", "horizontal crack", "hardship groove", "hardship line", "thimble"],
  HFV: ["vertical fissure", "vertical crack", "vertical sand crack"],
  SW: ["swelling", "swollen coronet", "swollen foot", "swollen heel", "swollen"],
};
