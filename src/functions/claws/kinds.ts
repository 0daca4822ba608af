import { disorderOf, disorders, nearestCodes } from "../../core/claws/disorder-key";
import { SOUND, UNKNOWN } from "../../core/claws/findings";
import { groupWords, type LesionSelection, lesionSelectionOf } from "../../core/claws/lesion-selection";
import { DomainError, invalid, shown, unavailable } from "../../core/shared/domain-error";
import { columnOf } from "../columns";
import { choice, date, scalarKind } from "../scalars";

const LESION = "a code or name of the claw disorder key, such as SU";

/** A disorder of the claw, by code or name; handed on as its code. An unknown one gives #N/A with the nearest codes. */
export const lesionCode = scalarKind<string>({
  name: "lesion code",
  limits: { choices: disorders.map(({ code }) => code) },
  must: LESION,
  readCell(cell, where) {
    if (typeof cell === "boolean") throw invalid(where, LESION, cell);
    const disorder = disorderOf(String(cell));
    if (disorder === undefined) throw unavailable(unknownLesion(where, this.must, String(cell)));
    return disorder.code;
  },
});

/** A disorder, a parent with all its forms, a group of disorders, or all. */
export const lesionSelection = scalarKind<LesionSelection>({
  name: "lesion, group or all",
  limits: { choices: [...groupWords, ...disorders.map(({ code }) => code)] },
  must: `${LESION}, or one of ${groupWords.join(", ")}`,
  readCell(cell, where) {
    if (typeof cell === "boolean") throw invalid(where, this.must, cell);
    const selection = lesionSelectionOf(String(cell));
    if (selection === undefined) throw unavailable(unknownLesion(where, this.must, String(cell)));
    return selection;
  },
});

function unknownLesion(where: string, must: string, text: string): string {
  const near = nearestCodes(text);
  const hint =
    near.length === 0 ? "" : `: nearest known ${near.length === 1 ? "code is" : "codes are"} ${near.join(", ")}`;
  return `${where} must be ${must}; got ${shown(text)}${hint}`;
}

export { SOUND, UNKNOWN } from "../../core/claws/findings";

export const SOUND_WORDS =
  /^(none|sound|nothing( found)?|no lesions?|healthy|normal|ok|0|(dd|digital dermatitis)[\s-]*m0)$/i;

/** A number 0 stands for a blank, as hosts hand it over; only text says that a cow was examined and sound. */
const lesionRow = scalarKind<string>({
  name: "lesion code",
  limits: { choices: [SOUND, ...disorders.map(({ code }) => code)] },
  must: `${LESION}, or "${SOUND}" for a sound cow`,
  zeroIsBlank: true,
  readCell(cell, where) {
    if (typeof cell === "boolean") throw invalid(where, this.must, cell);
    const code = lesionOfRow(String(cell));
    if (code === UNKNOWN) throw new DomainError("invalid", unknownLesion(where, this.must, String(cell)));
    return code;
  },
});

const lesionRowAsWritten = scalarKind<string>({
  ...lesionRow,
  readCell(cell, where) {
    if (typeof cell === "boolean") throw invalid(where, lesionRow.must, cell);
    return lesionOfRow(String(cell));
  },
});

/** Rows as most sheets write them, found without folding case and spaces. */
const asWritten = new Map(disorders.flatMap(({ code, name }) => [[code, code] as const, [name, code] as const]));
asWritten.set(SOUND, SOUND);

function lesionOfRow(text: string): string {
  return asWritten.get(text) ?? (SOUND_WORDS.test(text) ? SOUND : (disorderOf(text)?.code ?? UNKNOWN));
}

/** Lesions row by row: a code, or SOUND. A text that names no disorder is refused with its row. */
export const lesions = columnOf(lesionRow, { notes: "refuse" });

/** Lesions row by row: a code, SOUND or UNKNOWN. For tables that count the rows they leave out. */
export const lesionsAsWritten = columnOf(lesionRowAsWritten, { notes: "refuse" });

/** Names or numbers of cows, as text: the number 114 and the text "114" are one cow. */
export const cow = scalarKind<string>({
  name: "cow",
  must: "a cow's name or number",
  zeroIsBlank: true,
  takesAnyText: true,
  readCell(cell, where) {
    if (typeof cell === "boolean") throw invalid(where, "a cow's name or number", cell);
    return String(cell);
  },
});
export const cows = columnOf(cow, { notes: "refuse" });

/** A foot: LF, RF, LH, RH, or in plain words. */
export const foot = choice(["LF", "RF", "LH", "RH"], {
  "left front": "LF",
  "front left": "LF",
  FL: "LF",
  "right front": "RF",
  "front right": "RF",
  FR: "RF",
  "left hind": "LH",
  "hind left": "LH",
  "left rear": "LH",
  "rear left": "LH",
  HL: "LH",
  LR: "LH",
  RL: "LH",
  "right hind": "RH",
  "hind right": "RH",
  "right rear": "RH",
  "rear right": "RH",
  HR: "RH",
  RR: "RH",
});
export type Foot = "LF" | "RF" | "LH" | "RH";
export const feet = columnOf(foot, { notes: "refuse" });

/** Days row by row; notes instead of a day are left out. */
export const dates = columnOf(date(), { notes: "leave out" });
