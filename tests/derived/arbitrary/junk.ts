import fc from "fast-check";
import { FIRST_DAY, isoDate, LAST_DAY } from "../../../src/core/shared/days";
import { anyCharacter } from "../../any-character";

/** Texts that cells hold in practice and that trip up readers. */
const texts = [
  "", " ", "-", "–", "dry", "none", "n/a", "?", "DD", "SU", "WLD", "dd m2", "LH", "left hind", "hard horn", "0-3", "1-5", "thousand", "cells/mL",
  "litres", "own 0.4/0.8", "own 99", "own 1e5/2", "Luo 2022", "heifer", "yes", "TRUE", "FALSE", "null", "undefined", "NaN", "Infinity", "12", "-0",
  "12,5", "1.234,5", "1 250", "1\u00a0250", "1'250", "12 %", "€ 12", "1e400", "0x1F", "1e3", "٣", "１２", "½", "=1+1", "+cmd", "@x", "'12", "#N/A", "#REF!",
  "#DIV/0!", "#SPILL!", "#GETTING_DATA", "ülcèr", "e\u0301", "削蹄", "🐄", "👩‍🌾", "\ud800", "a\udc00", "\u0000", "\u00a0", "\u200b", "\ufeff12", "\u202eDD",
  "\u2028", "a\nb", "\t", "İ", "ß", "ﬁ", "__proto__", "constructor", "toString", "hasOwnProperty", "x".repeat(300), "9".repeat(400),
]; // oxfmt-ignore

/** What a cell can hold at most. Source: Excel specifications and limits, 32,767 characters in a cell. */
const LONGEST_TEXT = "7".repeat(32_767);

const oddNumbers = [
  0, -0, 1, -1, 0.5, 1 / 3, 0.1 + 0.2, 2, 3, 100, 200, 9999, 10_000, 45_000, 45_366.75, 45_366.999_999_9, 200_000, 60, FIRST_DAY, LAST_DAY, LAST_DAY + 1,
  2 ** 31 - 1, 2 ** 31, -(2 ** 31), 2 ** 32, 2 ** 53, 2 ** 53 + 2, 1e-7, 1e15, -1e15, 1e21, 1e300, -1e300, 5e-324, -5e-324, Number.MAX_VALUE,
  -Number.MAX_VALUE, NaN, Infinity, -Infinity,
]; // oxfmt-ignore

export const numbers = fc.oneof(fc.constantFrom(...oddNumbers), fc.integer({ min: -10, max: 60_000 }), fc.double());

/** Numbers and dates as a person or another program types them: text that is not yet a value. */
const typedNumbers = fc
  .tuple(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.constantFrom("", " ", "\u00a0", "%", " €", " mm", "d"))
  .chain(([number, unit]) =>
    fc.constantFrom(
      `${number}${unit}`,
      `${number.toFixed(2).replace(".", ",")}${unit}`,
      `${Math.round(number).toLocaleString("en-US")}${unit}`,
      `${Math.round(number).toLocaleString("en-US").replace(/,/g, "\u202f")}${unit}`,
    ),
  );
const typedDates = fc.integer({ min: FIRST_DAY, max: LAST_DAY }).chain((serial) => {
  const [year, month, day] = isoDate(serial).split("-") as [string, string, string];
  return fc.constantFrom(
    `${year}-${month}-${day}`,
    `${year}-${month}-${day}T10:30:00Z`,
    `${Number(day)}/${Number(month)}/${year.slice(-2)}`,
    `${month}/${day}/${year}`,
    `${day}.${month}.${year}`,
    `${day}. ${month}. ${year}`,
    `${year}年${month}月${day}日`,
    `${day} Feb ${year}`,
    `${year}${month}${day}`,
    String(serial),
  );
});
export const anyText = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...texts) },
  { weight: 2, arbitrary: typedNumbers },
  { weight: 2, arbitrary: typedDates },
  { weight: 1, arbitrary: fc.string({ unit: anyCharacter, maxLength: 12 }) },
  { weight: 1, arbitrary: fc.string({ unit: "grapheme", maxLength: 12 }) },
  { weight: 1, arbitrary: fc.constant(LONGEST_TEXT) },
);

/** Blanks, truth values, errors and formatted or richer values, in the forms in which hosts hand them over. */
const hostValues = fc.constantFrom<unknown>(
  null,
  undefined,
  true,
  false,
  { type: "Error", basicValue: "#N/A" },
  { type: "Error", basicType: "Error", basicValue: "#DIV/0!", errorType: "Div0" },
  { type: "Error" },
  { code: "#N/A", message: "not there" },
  new Error("#VALUE!"),
  { type: "Double", basicValue: 45_000 },
  { type: "FormattedNumber", basicValue: 12.5, numberFormat: "0.0" },
  { type: "String", basicValue: "DD" },
  { type: "Boolean", basicValue: true },
  { type: "Empty", basicValue: "" },
  { type: "Entity", text: "cow 5", basicValue: "#VALUE!" },
  { type: "Array", elements: [[1]] },
  { basicValue: { basicValue: 1 } },
  { basicValue: NaN },
  {},
  [],
  [[1]],
  new Map(),
  Symbol.iterator,
  12n,
  () => 1,
);

/** Anything that a host may hand over for one cell, and what none should. */
export const junkCell: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: numbers },
  { weight: 5, arbitrary: anyText },
  { weight: 2, arbitrary: hostValues },
);

const ragged = fc.array(fc.array(junkCell, { maxLength: 3 }), { maxLength: 6 });
const oneColumn = fc.array(fc.tuple(junkCell), { minLength: 1, maxLength: 40 });
const oneRow = fc.array(junkCell, { minLength: 1, maxLength: 40 }).map((row) => [row]);
const brokenRows = fc.array(fc.oneof(junkCell, fc.tuple(junkCell)), { maxLength: 6 });
const block = fc
  .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 2, max: 4 }))
  .chain(([rows, columns]) =>
    fc.array(fc.array(junkCell, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
  );

/** A cell of junk, or a range: ragged, empty, wide, tall, or of rows that are none. */
export const junkArgument: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 6, arbitrary: junkCell },
  { weight: 2, arbitrary: ragged },
  { weight: 2, arbitrary: oneColumn },
  { weight: 1, arbitrary: oneRow },
  { weight: 1, arbitrary: block },
  { weight: 1, arbitrary: brokenRows },
  { weight: 1, arbitrary: fc.constant([[]]) },
);
