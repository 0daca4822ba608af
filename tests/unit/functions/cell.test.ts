import { isBlankCell, looksLikeDate, looksLikeNumber, readCell } from "../../../src/functions/cell";

const where = (): string => "count row 3";

describe("one cell as any host hands it over", () => {
  test.each([
    ["null", null],
    ["undefined", undefined],
    ["empty text", ""],
    ["spaces and a no-break space", " \u00a0 "],
  ])("%s is a blank", (_, raw) => expect(readCell(raw, where)).toBeNull());

  test.each([
    [0, 0],
    [-0.5, -0.5],
    ["  DD ", "DD"],
    [false, false],
    [{ type: "Double", basicValue: 45_000, numberFormat: "yyyy-mm-dd" }, 45_000],
    [{ type: "FormattedNumber", basicValue: 2 }, 2],
  ])("%j is read as %j", (raw, expected) => expect(readCell(raw, where)).toBe(expected));

  test.each([
    ["#N/A", "#N/A"],
    ["#SPILL!", "#SPILL!"],
    [{ type: "Error", basicValue: "#DIV/0!" }, "#DIV/0!"],
    [{ code: "#VALUE!", message: "bad" }, "#VALUE!"],
    [Object.assign(new Error("x"), { code: "#REF!" }), "#REF!"],
  ])("the error %j is named with its place", (raw, name) => {
    expect(() => readCell(raw, where)).toThrow(`count row 3 holds the error ${name}: mend that cell first`);
    expect(() => readCell(raw, where)).toThrow(expect.objectContaining({ kind: "invalid" }));
  });

  test.each([
    [new Error("x")],
    [{ type: "Error" }],
    [{ type: "Error", basicValue: 42 }],
    [{ code: 7, message: "bad" }],
  ])("the error %j has no name to tell", (raw) =>
    expect(() => readCell(raw, where)).toThrow("count row 3 holds the error in it: mend that cell first"),
  );

  test.each([[NaN], [Infinity], [{}], [[]], [() => 1], [Symbol("x")], [10n]])("%p is refused", (raw) => {
    expect(() => readCell(raw, where)).toThrow(/^count row 3 is not/);
    expect(() => readCell(raw, where)).toThrow(expect.objectContaining({ kind: "invalid" }));
  });

  test.each([[{ code: "#REF!" }], [{ message: "bad" }]])("%j is no error that a host hands over", (raw) => {
    expect(() => readCell(raw, where)).toThrow("count row 3 is not something a cell can hold");
  });

  test("a blank may come as an object around nothing, and as 0 only where no 0 is meant", () => {
    expect(isBlankCell({ type: "String", basicValue: " " }, false)).toBe(true);
    expect(isBlankCell({ type: "Double", basicValue: 0 }, true)).toBe(true);
    expect(isBlankCell({ type: "Double", basicValue: 0 }, false)).toBe(false);
    expect(isBlankCell({ type: "Entity" }, true)).toBe(false);
  });
});

describe("text that someone may take for something else", () => {
  test.each(["12", "-12", "1 250", "1,5", "12 %", "1'250.50", "1\u00a0250"])("%s looks like a number", (text) => {
    expect(looksLikeNumber(text)).toBe(true);
  });
  test.each(["", "2b", "DD", "-", "M4.1", "12 cows"])("%s does not", (text) =>
    expect(looksLikeNumber(text)).toBe(false),
  );
  test("is told at once from the longest text that a cell can hold", () => {
    const started = performance.now();
    for (const almost of ["7", " 7", "1,", "\u00a0"]) {
      expect(looksLikeNumber(`${almost.repeat(16_000)}x`)).toBe(false);
      expect(looksLikeNumber(`${almost.repeat(16_000)}7`)).toBe(true);
    }
    expect(performance.now() - started).toBeLessThan(200);
  });
  test.each(["2024-02-20", "20/2/24", "20.02.2024"])("%s looks like a date", (text) => {
    expect(looksLikeDate(text)).toBe(true);
  });
  test.each(["Feb 2024", "2024", "a/b/c", "on 2024-02-20", "2024-02-20 seen"])("%s does not", (text) =>
    expect(looksLikeDate(text)).toBe(false),
  );
});
