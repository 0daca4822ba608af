import { nameTheTable } from "../../../src/trial/grid/this-table";

describe("a reference within a table is given the table's name", () => {
  test.each([
    ["=[@Lesion]", "=Findings[[#This Row],[Lesion]]"],
    ["=[@[Toe mm]]+1", "=Findings[[#This Row],[Toe mm]]+1"],
    ["=SUM([Zone])", "=SUM(Findings[Zone])"],
    [
      "=HERD.RECHECK.DATE([@Lesion],[@Date],Rules[#All])",
      "=HERD.RECHECK.DATE(Findings[[#This Row],[Lesion]],Findings[[#This Row],[Date]],Rules[#All])",
    ],
  ])("%s", (typed, named) => expect(nameTheTable(typed, "Findings")).toBe(named));

  test.each([
    "=A1+2",
    "=Rules[Lesion]",
    '=IF(A1="[@x]",1,2)',
    "=Findings[[#This Row],[Lesion]]",
    "=[@",
    "=[1]Sheet1!A1",
  ])("%s stays as it is", (formula) => expect(nameTheTable(formula, "Findings")).toBe(formula));
});
