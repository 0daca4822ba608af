import { strFromU8, strToU8, type Unzipped, unzipSync, zipSync } from "fflate";

/** A whole number from 0 to below the limit; the same seed gives the same numbers. */
export type Draw = (limit: number) => number;

/** Numbers by a linear congruence. Source: Numerical Recipes, 2nd edition, chapter 7.1, "quick and dirty" generator. */
export function drawFrom(seed: number): Draw {
  let state = seed >>> 0;
  return (limit) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * limit);
  };
}

type Damage = (bytes: Uint8Array, draw: Draw) => Uint8Array;

/** What disks, mails and memory sticks do to a file as a whole. */
export const damagedBytes: Readonly<Record<string, Damage>> = {
  "cut short": (bytes, draw) => bytes.slice(0, draw(bytes.length)),
  "its beginning lost": (bytes, draw) => bytes.slice(1 + draw(bytes.length - 1)),
  "bits flipped": (bytes, draw) => {
    const copy = bytes.slice();
    for (let flips = 1 + draw(8); flips > 0; flips--) copy[draw(copy.length)]! ^= 1 << draw(8);
    return copy;
  },
  "a stretch of zeros": (bytes, draw) => {
    const copy = bytes.slice();
    const at = draw(copy.length);
    return copy.fill(0, at, at + 1 + draw(2000));
  },
  "two stretches changed over": (bytes, draw) => {
    const copy = bytes.slice();
    const length = 1 + draw(500);
    const [one, other] = [draw(copy.length - length), draw(copy.length - length)];
    copy.set(bytes.subarray(one, one + length), other);
    copy.set(bytes.subarray(other, other + length), one);
    return copy;
  },
  "something behind its end": (bytes, draw) => {
    const tail = Uint8Array.from({ length: 1 + draw(3000) }, () => draw(256));
    return Uint8Array.from([...bytes, ...tail]);
  },
  "its directory spoiled": (bytes, draw) => {
    const copy = bytes.slice();
    const directory = new DataView(copy.buffer).getUint32(copy.length - END_LENGTH + 16, true);
    const [spoiled, value] = [directory + draw(copy.length - directory), draw(256)];
    copy[spoiled] = value === copy[spoiled] ? value ^ 0xff : value;
    return copy;
  },
  "huge sizes claimed": (bytes, draw) => {
    const copy = bytes.slice();
    const view = new DataView(copy.buffer);
    let at = view.getUint32(copy.length - END_LENGTH + 16, true);
    for (let entry = draw(4); entry > 0 && view.getUint32(at, true) === ENTRY_SIGNATURE; entry--) {
      at += ENTRY_LENGTH + [28, 30, 32].reduce((sum, offset) => sum + view.getUint16(at + offset, true), 0);
    }
    if (view.getUint32(at, true) === ENTRY_SIGNATURE) view.setUint32(at + 24, HUGE[draw(HUGE.length)]!, true);
    return copy;
  },
};

/** Lengths and signature of a zip file's records. Source: PKWARE APPNOTE 4.3.12 and 4.3.16. */
const END_LENGTH = 22;
const ENTRY_SIGNATURE = 0x02014b50;
const ENTRY_LENGTH = 46;
const HUGE = [0xffffffff, 0xfffffffe, 0x7fffffff, 0x40000000, 0x3fffffff, 0x10000000];

/** Values that a file should not hold where a number, a place, a name or a text is read. */
export const UNFIT_VALUES = [
  "",
  "-1",
  "NaN",
  "Infinity",
  "1e99",
  "0.5",
  "4294967296",
  "99999999",
  "A0",
  "XFE1",
  "A1048577",
  "ZZZ9999999",
  "A1:XFD1048576",
  "A1:ZZZ9999999",
  "__proto__",
  "constructor",
  "toString",
  "../../../etc/passwd",
  "&lol;",
  "&#0;",
  "&#xD800;",
  "a".repeat(40_000),
];

type TextDamage = (xml: string, draw: Draw) => string;

/** What a bad program or a bad hand does to the text of a part; its checksum is then right again. */
export const damagedText: Readonly<Record<string, TextDamage>> = {
  "an attribute unfit": (xml, draw) => {
    const found = pick([...xml.matchAll(/="[^"]*"/g)], draw);
    return found === undefined ? xml : spliced(xml, found, `="${UNFIT_VALUES[draw(UNFIT_VALUES.length)]!}"`);
  },
  "an attribute lost": (xml, draw) => {
    const found = pick([...xml.matchAll(/ [\w:]+="[^"]*"/g)], draw);
    return found === undefined ? xml : spliced(xml, found, "");
  },
  "a text unfit": (xml, draw) => {
    const found = pick([...xml.matchAll(/>[^<>]+</g)], draw);
    return found === undefined ? xml : spliced(xml, found, `>${UNFIT_VALUES[draw(UNFIT_VALUES.length)]!}<`);
  },
  "a tag lost": (xml, draw) => {
    const found = pick([...xml.matchAll(/<[^>]*>/g)], draw);
    return found === undefined ? xml : spliced(xml, found, "");
  },
  "an element twice": (xml, draw) => {
    const found = pick([...xml.matchAll(/<(\w+)[^>]*(?:\/>|>[^<]*<\/\1>)/g)], draw);
    return found === undefined ? xml : spliced(xml, found, found[0] + found[0]);
  },
  "cut short": (xml, draw) => xml.slice(0, draw(xml.length)),
  "nothing left": () => "",
};

function pick(found: readonly RegExpExecArray[], draw: Draw): RegExpExecArray | undefined {
  return found[draw(found.length)];
}

function spliced(text: string, found: RegExpExecArray, by: string): string {
  return text.slice(0, found.index) + by + text.slice(found.index + found[0].length);
}

/** The workbook with one part's text damaged, packed again. */
export function withDamagedText(bytes: Uint8Array, damage: TextDamage, draw: Draw): Uint8Array {
  const parts = unzipSync(bytes);
  const path = drawPart(parts, draw);
  return packed({ ...parts, [path]: strToU8(damage(strFromU8(parts[path]!), draw)) });
}

/** What happens to whole parts. */
export const damagedParts: Readonly<Record<string, (parts: Unzipped, draw: Draw) => Unzipped>> = {
  "a part lost": (parts, draw) => {
    const lost = drawPart(parts, draw);
    return Object.fromEntries(Object.entries(parts).filter(([path]) => path !== lost));
  },
  "two parts changed over": (parts, draw) => {
    const [one, other] = [drawPart(parts, draw), drawPart(parts, draw)];
    return { ...parts, [one]: parts[other]!, [other]: parts[one]! };
  },
  "a part of other bytes": (parts, draw) => ({
    ...parts,
    [drawPart(parts, draw)]: Uint8Array.from({ length: draw(400) }, () => draw(256)),
  }),
};

export function packed(parts: Unzipped): Uint8Array {
  return zipSync(parts, { level: 1 });
}

function drawPart(parts: Unzipped, draw: Draw): string {
  const paths = Object.keys(parts).filter((path) => /\.(xml|rels)$/.test(path));
  return paths[draw(paths.length)]!;
}
