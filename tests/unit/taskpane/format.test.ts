import { counted, dateText, formatNumber, plainNumber, valueText } from "../../../src/taskpane/format";

describe("numbers as the pane writes them", () => {
  test.each([
    [3.14159, "0", "3"],
    [3.14159, "0.00", "3.14"],
    [12500.5, "#,##0", "12,501"],
    [1234567.891, "#,##0.0", "1,234,567.9"],
    [-1234.5, "#,##0.00", "-1,234.50"],
    [0.1234, "0.0%", "12.3 %"],
    [45658, "yyyy-mm-dd", "2025-01-01"],
  ])("%d in the format %s is %s", (value, format, text) => {
    expect(formatNumber(value, format)).toBe(text);
  });

  test("without a format the noise of binary fractions is cut and thousands are set apart", () => {
    expect(plainNumber(0.1 + 0.2)).toBe("0.3");
    expect(plainNumber(1234567)).toBe("1,234,567");
    expect(plainNumber(12500.25)).toBe("12,500.25");
    expect(plainNumber(-1000)).toBe("-1,000");
    expect(plainNumber(1e-7)).toBe("1e-7");
  });

  test("a number that is no day of the calendar stays a number", () => {
    expect(dateText(45658.75)).toBe("2025-01-01");
    expect(dateText(12)).toBe("12");
  });

  test("texts, truth values and the empty text", () => {
    expect(valueText("leave", "text")).toBe("leave");
    expect(valueText("", "number")).toBe("empty");
    expect(valueText(true, "number")).toBe("TRUE");
    expect(counted(1, "row")).toBe("1 row");
    expect(counted(1240, "row")).toBe("1,240 rows");
  });
});
