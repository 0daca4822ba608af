/** What the people of the invented farm call a lesion. */
export const LESION_WORDS: Readonly<Record<string, readonly string[]>> = {
  none: ["clean"],
  SU: ["sole ulcer"],
  BU: ["heel ulcer"],
  TU: ["toe ulcer"],
  TN: ["rotten toe"],
  WL: ["white line"],
  WLF: ["white line crack"],
  WLA: ["white line abscess"],
  SH: ["bruising"],
  SHD: ["diffuse bruising"],
  SHC: ["spot bruise"],
  DS: ["underrun"],
  TS: ["thin sole"],
  DD: ["digi", "hairy wart"],
  ID: ["scald"],
  HHE: ["slurry heel"],
  IP: ["foul"],
  IH: ["growth"],
  CC: ["corkscrew claw"],
  SC: ["scissor claw"],
  HFV: ["vertical sand crack"],
};

export const FOOT_WORDS: Readonly<Record<string, string>> = {
  LF: "left front",
  RF: "right front",
  LH: "left back",
  RH: "right back",
};

export const CLAW_WORDS: Readonly<Record<string, string>> = { inner: "inside", outer: "outside" };

export const LANDMARK_WORDS: Readonly<Record<string, string>> = { "hard horn": "hard horn", "skin-horn line": "hairline" }; // oxfmt-ignore
