import { OfficePort } from "../../../../src/workbook/office/port";
import type { FunctionCall, SelectedCell } from "../../../../src/workbook/port";
import type { FakeBook } from "./fake-excel";
import { FakeHost } from "./fake-host";

/** A herd of three cows, its rules, and a sheet of figures. */
const book = (): FakeBook => ({
  active: { sheet: "Tests", address: "D2" },
  today: 45_700,
  sheets: [
    {
      name: "Tests",
      values: [
        ["Cow", "Count", "Lactation", "Score", "", "Filled"],
        [114, 200, 1, 4, "", "a"],
        [115, "", 3, "", "", "b"],
        [116, "#N/A", 2, "#VALUE!"],
      ],
      formulas: { D2: "=HERD.CELL.SCORE([@Count])", F2: "=HERD.LESION.NEWCASE(A2:A4)" },
      spilledFrom: { F3: "F2" },
      spillsTo: { F2: "F2:F3" },
      names: { Local: "B2" },
    },
    {
      name: "My rules",
      values: [
        ["Lesion", "Days"],
        ["SU", 14],
        ["DD", 7],
      ],
    },
    {
      name: "Prices",
      values: [
        ["Item", "Price"],
        ["Milk", 0.4],
        ["Total", 0.4],
      ],
    },
    { name: "Empty", values: [] },
  ],
  tables: [
    { name: "Counts", sheet: "Tests", address: "A1:D4" },
    { name: "Rules", sheet: "My rules", address: "A1:B3" },
    { name: "Prices", sheet: "Prices", address: "A1:B3", totals: true },
  ],
  names: { Price: "My rules!B2", Local: "My rules!A2", Rate: undefined },
});

async function calls(formula: string, address = "D2", sheet = "Tests"): Promise<readonly FunctionCall[]> {
  new FakeHost(book());
  return new OfficePort().readCalls({ sheet, address, formula, shown: "" });
}

async function argumentsOf(formula: string, address?: string): Promise<unknown> {
  const [call] = await calls(formula, address);
  return call!.rawArguments ?? call!.errorMessage;
}

describe("what a formula hands to a function", () => {
  test.each([
    [
      '=HERD.F(1,-2.5,"a ""b""",TRUE,#N/A,,{1,2;3,4})',
      [
        1,
        -2.5,
        'a "b"',
        true,
        "#N/A",
        null,
        [
          [1, 2],
          [3, 4],
        ],
      ],
    ],
    ["=HERD.F(B2,$B$2)", [200, 200]],
    ["=HERD.F(B3)", [null]],
    ["=HERD.F(B4)", ["#N/A"]],
    [
      "=HERD.F(A2:B4)",
      [
        [
          [114, 200],
          [115, null],
          [116, "#N/A"],
        ],
      ],
    ],
    ["=HERD.F('My rules'!B2:B3)", [[[14], [7]]]],
    ["=HERD.F(@B2)", [200]],
    ["=HERD.F(F2#)", [[["a"], ["b"]]]],
    ["=HERD.F([@Count],[@Lactation])", [200, 1]],
    ["=HERD.F(Counts[[#This Row],[Count]])", [200]],
    ["=HERD.F(Counts[Cow])", [[[114], [115], [116]]]],
    [
      "=HERD.F(Counts[[Cow]:[Count]])",
      [
        [
          [114, 200],
          [115, null],
          [116, "#N/A"],
        ],
      ],
    ],
    [
      "=HERD.F(Rules[#All])",
      [
        [
          ["Lesion", "Days"],
          ["SU", 14],
          ["DD", 7],
        ],
      ],
    ],
    ["=HERD.F(Rules[#Headers])", [[["Lesion", "Days"]]]],
    ["=HERD.F(Rules[[#Headers],[#Data],[Days]])", [[["Days"], [14], [7]]]],
    [
      "=HERD.F(Rules)",
      [
        [
          ["SU", 14],
          ["DD", 7],
        ],
      ],
    ],
    ["=HERD.F(Prices[Price],Prices[[#Totals],[Price]])", [0.4, 0.4]],
    ["=HERD.F(Price)", [14]],
    ["=HERD.F(Local)", [200]],
    ["=HERD.F(Empty!A1:A3)", [null]],
    ["=HERD.F(TODAY(),DATE(2024,2,20))", [45_700, 45_342]],
    ["=HERD.F()", []],
  ])("%s", async (formula, expected) => {
    expect(await argumentsOf(formula)).toEqual(expected);
  });

  test("a row of a table is that of the formula", async () => {
    expect(await argumentsOf("=HERD.F([@Cow])", "D4")).toEqual([116]);
  });

  test("whole columns end with the last used row, all at the same", async () => {
    expect(await argumentsOf("=HERD.F(A:A,E:E)")).toEqual([
      [["Cow"], [114], [115], [116]],
      [[null], [null], [null], [null]],
    ]);
  });

  test("the formula that fills a cell is read where it stands", async () => {
    new FakeHost(book());
    const cell: SelectedCell = {
      sheet: "Tests",
      address: "D4",
      formula: "=HERD.F([@Cow])",
      shown: "",
      spill: { anchor: "D2", row: 2, column: 0 },
    };
    expect(await new OfficePort().readCalls(cell)).toMatchObject([{ rawArguments: [114] }]);
  });
});

describe("what cannot be read is said plainly", () => {
  test.each([
    ["=HERD.F(B2,IF(A1>1,2,3))", "IF(A1>1,2,3)"],
    ["=HERD.F(B2*1000)", "B2*1000"],
    ["=LET(x,B2,HERD.F(x))", "x"],
    ["=MAP(B2:B4,LAMBDA(Price,HERD.F(Price)))", "Price"],
    ["=HERD.F(Nowhere)", "Nowhere"],
    ["=HERD.F(Rate)", "Rate"],
    ["=HERD.F('[Other.xlsx]Sheet1'!A1)", "'[Other.xlsx]Sheet1'!A1"],
    ["=HERD.F(HERD.G(1)+1,B2&B3)", "HERD.G(1)+1 and B2&B3"],
  ])("%s", async (formula, unread) => {
    const message = await argumentsOf(formula);
    expect(message).toContain(`The working cannot be shown here: ${unread} is computed`);
  });
});

describe("which calls a formula makes", () => {
  test("are found wherever they stand, outermost first, and with their text", async () => {
    const found = await calls('=IFNA(HERD.CELL.COUNT(herd.cell.score(B2),),"")&HERD.TOE.CUT(81,"hard horn")');
    expect(found.map(({ functionId, argumentTexts }) => [functionId, argumentTexts])).toEqual([
      ["CELL.COUNT", ["herd.cell.score(B2)", ""]],
      ["CELL.SCORE", ["B2"]],
      ["TOE.CUT", ["81", '"hard horn"']],
    ]);
  });

  test("include those of the development edition", async () => {
    expect(await calls("=HERD.DEV.CELL.SCORE(B2)")).toMatchObject([{ functionId: "CELL.SCORE", rawArguments: [200] }]);
  });

  test("are none in a formula without ours, and Excel is not asked", async () => {
    const host = new FakeHost(book());
    const cell = { sheet: "Tests", address: "D2", shown: "" };
    expect(await new OfficePort().readCalls({ ...cell, formula: "=SUM(B2:B4)" })).toEqual([]);
    expect(await new OfficePort().readCalls(cell)).toEqual([]);
    expect(host.syncs).toBe(0);
  });
});

describe("how Excel is asked", () => {
  test("three times, whatever the number of arguments", async () => {
    const host = new FakeHost(book());
    const formula = "=HERD.F(B2,Price,[@Count],Rules[#All],A2:A4,TODAY())+HERD.G(C2,Counts[Cow])";
    await new OfficePort().readCalls({ sheet: "Tests", address: "D2", formula, shown: "" });
    expect(host.syncs).toBe(3);
  });

  test("for large ranges in parts that it can answer", async () => {
    const rows = Array.from({ length: 300_000 }, (_, row) => [row, row % 2]);
    const large: FakeBook = {
      active: { sheet: "Large", address: "A1" },
      sheets: [{ name: "Large", values: rows }],
    };
    new FakeHost(large);
    const [call] = await new OfficePort().readCalls({
      sheet: "Large",
      address: "D1",
      formula: "=HERD.F(A1:B300000)",
      shown: "",
    });
    expect(call!.rawArguments![0]).toEqual(rows);
  });
});
