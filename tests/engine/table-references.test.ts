import { type Answers, answers } from "./support";

jest.setTimeout(60_000);

/**
 * Structured references after Microsoft's page "Using structured references with Excel tables"; values by hand.
 */
describe("references to tables", () => {
  let result: Answers;
  beforeAll(async () => {
    result = await answers(
      {
        "Farm's data": {
          A1: "A title above the table",
          B4: "Cow",
          C4: "Milk (kg)",
          D4: "Cell count, 1000/mL",
          E4: "Twice",
          B5: 11,
          C5: 30,
          D5: 100,
          E5: "=Milk_tests[@Cow]*2",
          B6: 12,
          C6: 20,
          D6: 400,
          E6: "=Milk_tests[[#This Row],[Cow]]*2",
          B7: 13,
          C7: 25,
          D7: 50,
          E7: "=-Milk_tests[@Cow]*2+SUM(Milk_tests[@[Milk (kg)]:[Cell count, 1000/mL]])",
          B8: "Total",
          C8: "=SUM(Milk_tests[Milk (kg)])",
          G2: "=Milk_tests[@Cow]",
          G6: "=Milk_tests[@Cow]+1",
        },
        Summary: {
          A1: "=SUM(Milk_tests[Milk (kg)])",
          A2: "=SUM(milk_tests[MILK (KG)])",
          A3: "=ROWS(Milk_tests)",
          A4: "=ROWS(Few[#All])",
          K1: "Few",
          K2: 1,
          K3: 2,
          A5: "=INDEX(Milk_tests[#Headers],1,3)",
          A6: "=Milk_tests[[#Headers],[Cell count, 1000/mL]]",
          A7: "=COLUMNS(Milk_tests[[Cow]:[Cell count, 1000/mL]])",
          A8: "=VLOOKUP(12,Milk_tests,2,FALSE)",
          A9: '=COUNTIFS(Milk_tests[Milk (kg)],">=25",Milk_tests[Cow],"<>13")',
          A10: "=SUM(Milk_tests[[#All],[Cow]])",
          A11: "=Milk_tests[[#Totals],[Milk (kg)]]",
          A12: "=SUM(Milk_tests[No such column])",
          A13: "=SUM(Nowhere[Cow])",
          A14: '=SUM(INDIRECT("Milk_tests[Cow]"))',
          A15: "=SUM(Cows)+SUM(Counts)",
          A16: "=Milk_tests[@Cow]",
          A17: "=COUNTA(Milk_tests[[#Data],[Cow]])",
          C1: "=SORT(Milk_tests[Cow],1,-1)",
        },
      },
      {
        tables: [
          { sheet: "Farm's data", name: "Milk_tests", area: "B4:E8", totals: true },
          { sheet: "Summary", name: "Few", area: "K1:K3" },
        ],
        names: { Cows: "Milk_tests[Cow]", Counts: "'Farm''s data'!$D$5:$D$7" },
      },
    );
  });

  test.each([
    ["A1", 75],
    ["A2", 75],
    ["A3", 3],
    ["A4", 3],
    ["A5", "Cell count, 1000/mL"],
    ["A6", "Cell count, 1000/mL"],
    ["A7", 3],
    ["A8", 20],
    ["A9", 1],
    ["A10", 36],
    ["A11", 75],
    ["A12", "#REF!"],
    ["A13", "#REF!"],
    ["A14", 36],
    ["A15", 36 + 550],
    ["A17", 3],
  ])("%s of another sheet is %p", (address, expected) => {
    expect(result.value(address, "Summary")).toBe(expected);
  });

  test("the formula's own row, in a table that does not begin in row 1", () => {
    expect(result.block("E5:E7")).toEqual([[22], [24], [-26 + 75]]);
    expect(result.value("G6")).toBe(13);
  });

  test("own-row: there is none outside of the table's rows or on another sheet", () => {
    expect(result.value("G2")).toBe("#VALUE!");
    expect(result.value("A16", "Summary")).toBe("#VALUE!");
  });

  test("a column fills cells of another sheet", () => {
    expect(result.block("C1:C4", "Summary")).toEqual([[13], [12], [11], [null]]);
  });
});
