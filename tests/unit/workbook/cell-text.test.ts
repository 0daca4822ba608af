import { cellAddress, cellPosition } from "../../../src/workbook/cell-address";
import { isDateFormat } from "../../../src/workbook/number-format";
import { cellText, markedText, needsTextMark } from "../../../src/workbook/plain-text";

describe("text for a cell", () => {
  test.each([
    ["as it is", "block off, left hind", "block off, left hind"],
    ["with its spaces", "  x ", "  x "],
    ["with line ends of one kind", "a\r\nb\rc\nd", "a\nb\nc\nd"],
    ["without characters that no file can hold", "a\u0000b\u0007\u001f\u007f\ufffe", "ab"],
    ["with tabs", "a\tb", "a\tb"],
    ["with whole emoji", "🐄", "🐄"],
    ["with a half emoji replaced", "a\ud83d", "a\ufffd"],
    ["with the other half replaced", "\udc04b", "\ufffdb"],
  ])("%s", (_, text, expected) => expect(cellText(text)).toBe(expected));

  test.each(["", " ", "\n\t", "\u0000", "\u00a0"])("%j is a blank", (text) => expect(cellText(text)).toBeNull());
});

describe("the text mark", () => {
  test.each([
    ...["=1+1", "+1", "-1", "-", "@x", "\t=1", "\n=1", " =1", "'=1", "'x"],
    ...["\u00a0=1", "\u3000=1", '"=1"', "\uff1d1+1", "\uff0b1", "\uff0d1", "\uff20x"],
    ...["007", "1/2", "2024-02-03", "3 Mar", "Mar 3", "12 %", "1e5", "B7", "M4.1", "#N/A", "TRUE", "False", "½"],
  ])("%j needs it", (text) => {
    expect(needsTextMark(text)).toBe(true);
    expect(markedText(text)).toBe(`'${text}`);
  });

  test.each(["DD", "block off", "trim, block", "Größe", "Åsa's cow", "牛", "see note (left)"])(
    "%j does not",
    (text) => {
      expect(needsTextMark(text)).toBe(false);
      expect(markedText(text)).toBe(text);
    },
  );
});

describe("an address", () => {
  test.each([
    ["A1", 0, 0],
    ["Z9", 8, 25],
    ["AA10", 9, 26],
    ["AZ1", 0, 51],
    ["BA1", 0, 52],
    ["XFD1048576", 1_048_575, 16_383],
  ])("%s is row %i, column %i", (address, row, column) => {
    expect(cellPosition(address)).toEqual({ row, column });
    expect(cellAddress({ row, column })).toBe(address);
  });
});

describe("a number format", () => {
  test.each(["yyyy-mm-dd", "dd/mm/yyyy", "m/d/yy", "d. mmm", "[$-407]d. mmmm yyyy", '"on" dd.mm.'])(
    "%s shows a day",
    (format) => expect(isDateFormat(format)).toBe(true),
  );
  test.each(["General", "0.00", "#,##0", '0 "days"', "[Red]0", "0\\d", "@", "0%", undefined])(
    "%s shows none",
    (format) => expect(isDateFormat(format)).toBe(false),
  );
});
