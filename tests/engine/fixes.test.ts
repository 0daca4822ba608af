import { answers } from "./support";

jest.setTimeout(60_000);

/** Each test fails on the engine as it comes, without the fix that it names. */
describe("what the engine gets wrong, mended", () => {
  test("sort: SORT leaves the range that other formulas read as it was", async () => {
    const result = await answers({
      Data: {
        A1: 3,
        A2: 1,
        A3: 2,
        // One reader stands before the formula that sorts and one after it, whichever the engine takes up first.
        B1: "=SUMPRODUCT(A1:A3,{1;2;3})",
        C1: "=SORT(A1:A3)",
        D1: "=SUMPRODUCT(A1:A3,{1;2;3})",
      },
    });
    expect(result.block("C1:C3")).toEqual([[1], [2], [3]]);
    expect([result.value("B1"), result.value("D1")]).toEqual([11, 11]);
  });

  test("take: more rows from the end than there are gives all of them", async () => {
    const result = await answers({
      Data: {
        A1: "=SUM(TAKE({1;2;3},-5))",
        A2: "=SUM(TAKE({1;2;3},-2))",
        A3: "=SUM(TAKE({1,2,3},,-5))",
        A4: "=SUM(TAKE({1;2;3},5))",
        A5: "=TAKE(7,-3)",
      },
    });
    expect(result.block("A1:A5")).toEqual([[6], [5], [6], [6], [7]]);
  });

  test("inverted-index: a number equals no text, and a blank 0 and an empty text, however often it is asked", async () => {
    // Cells: 0, 1, blank, "1" and FALSE.
    const cells = { A1: 0, A2: 1, A4: "1", A5: false };
    const asked = ['A1:A5=""', "A1:A5=0", "A1:A5=1", 'A1:A5="1"', "A1:A5=FALSE", "A1:A5=Z9"];
    const wanted = [
      [false, false, true, false, false],
      [true, false, true, false, false],
      [false, true, false, false, false],
      [false, false, false, true, false],
      [false, false, true, false, true],
      [true, false, true, false, true],
    ];
    const formulas = asked.flatMap((formula, index) =>
      ["B", "I"].map((first) => [`${String.fromCharCode(first.charCodeAt(0) + index)}1`, `=${formula}`] as const),
    );
    const result = await answers({ Data: { ...cells, ...Object.fromEntries(formulas) } });
    const columns = wanted[0]!.map((_, row) => wanted.map((column) => column[row]!));
    expect(result.block("B1:G5")).toEqual(columns);
    expect(result.block("I1:N5")).toEqual(columns);
  });

  test("inverted-index: an error among cells stays one in every comparison, however often it is asked", async () => {
    // Expected as LibreOffice computes the same with SUMPRODUCT.
    const asked = ["(A1:A3>=2)*1", "(A1:A3=5)*1", '(A1:A3<>"")*1', "--(A1:A3=9)"];
    const formulas = asked.flatMap((formula, index) => [
      [`B${index + 1}`, `=SUM(${formula})`] as const,
      [`C${index + 1}`, `=SUM(${formula})`] as const,
    ]);
    const result = await answers({ Data: { A1: 5, A2: "#DIV/0!", A3: 3, ...Object.fromEntries(formulas) } });
    expect(result.block("B1:C4")).toEqual(asked.map(() => ["#DIV/0!", "#DIV/0!"]));
  });

  test("result-position, minifs: results are compared, not the cells where their formula stands; none found is 0", async () => {
    const cells = { A1: 10, A2: 5, A3: 7, B1: 1, B2: 2, B3: 3, D1: 1, D2: 7, D3: 3 };
    const first = "MINIFS(A1:A3,B1:B3,D1:D3)";
    const result = await answers({
      Data: {
        ...cells,
        F1: `=${first}>0`,
        G1: `=FILTER(D1:D3,${first}=0)`,
        H1: "=MAXIFS(A1:A3,B1:B3,D1:D3)+1-9*(D1:D3=1)",
      },
    });
    // Of 1, 7 and 3 no row has 7.
    expect(result.block("F1:F3")).toEqual([[true], [false], [true]]);
    expect(result.value("G1")).toBe(7);
    expect(result.block("H1:H3")).toEqual([[2], [1], [8]]);
  });

  test("edate: a day that the month lacks becomes its last day", async () => {
    const result = await answers({
      Data: { A1: "=EDATE(DATE(2025,1,31),1)", A2: "=EDATE(DATE(2024,1,31),1)", A3: "=EDATE(DATE(2024,3,31),-1)" },
    });
    // 28 February 2025, 29 February 2024 twice; serials by hand: DATE(2025,1,1) is 45658.
    expect(result.block("A1:A3")).toEqual([[45_658 + 58], [45_658 - 366 + 59], [45_658 - 366 + 59]]);
  });

  test("isoweeknum: the last days of December may belong to week 1", async () => {
    const result = await answers({
      Data: {
        // Weeks as a printed ISO calendar gives them.
        A1: "=ISOWEEKNUM(DATE(2025,12,29))",
        A2: "=ISOWEEKNUM(DATE(2025,12,28))",
        A3: "=ISOWEEKNUM(DATE(2027,1,3))",
        A4: "=ISOWEEKNUM(DATE(2026,12,31))",
      },
    });
    expect(result.block("A1:A4")).toEqual([[1], [52], [53], [53]]);
  });

  test("let-and-lambda: a formula that stands in two cells works in both", async () => {
    const result = await answers({
      Data: {
        A1: 4,
        B1: "=LET(x,A1,y,2,x*y)",
        B2: "=LET(x,A1,y,2,x*y)",
        C1: "=LAMBDA(a,b,a+b)(2,3)",
        C2: "=LAMBDA(a,b,a+b)(2,3)",
        D1: "=SUM(MAP(A1:A2,LAMBDA(v,v*2)))",
        D2: "=SUM(MAP(A1:A2,LAMBDA(v,v*2)))",
      },
    });
    expect(result.block("B1:D2")).toEqual([
      [8, 5, 8],
      [8, 5, 8],
    ]);
  });

  test("anchor-array: A1# is all that the formula in A1 fills", async () => {
    const result = await answers({
      Data: {
        A1: "=SEQUENCE(4)",
        C1: "=SUM(A1#)",
        C2: "=ROWS(A1#)",
        C3: "=SUM(E1#)",
        E1: "=1+1",
        C4: "=SUM(F1#)",
        F1: 7,
        D1: "=A1#*2",
      },
      Other: { A1: "=SUM(Data!A1#)" },
    });
    expect(result.block("C1:C4")).toEqual([[10], [4], [2], ["#REF!"]]);
    expect(result.block("D1:D4")).toEqual([[2], [4], [6], [8]]);
    expect(result.value("A1", "Other")).toBe(10);
  });

  test("single: @ takes the cell of the formula's own row or column", async () => {
    const result = await answers({
      Data: {
        A1: 5,
        A2: 6,
        A3: 7,
        B2: "=@A1:A3",
        C2: "=@A1:A3+1",
        D5: "=@A1:A3",
        E2: "=@SEQUENCE(3,1,9)",
        F2: "=@A2",
        G2: "=SUM(@A1:A3,1)",
        A10: 1,
        B10: 2,
        B11: "=@A10:C10",
      },
    });
    expect(result.block("B2:G2")).toEqual([[6, 7, null, 9, 6, 7]]);
    expect(result.value("D5")).toBe("#VALUE!");
    expect(result.value("B11")).toBe(2);
  });

  test("sheet-limits: a range may reach beyond the rows in use", async () => {
    const result = await answers({
      Data: {
        A1: 1,
        A2: 2,
        C1: "=SUM(A1:A90000)",
        C2: "=COUNT(A:A)",
        C3: "=SUM(A1:A1048576)",
        C4: "=A99999+1",
        C5: "=ROWS(A1:A90000)",
        C6: "=SUM(AZ1:BC3)",
      },
    });
    expect(result.block("C1:C6")).toEqual([[3], [2], [3], [1], [90_000], [0]]);
  });

  test("spill-order: what follows from filled cells is up to date, however long the chain", async () => {
    const result = await answers({
      // Written so that each reader stands before what it reads.
      Data: {
        A1: "=SUM(C2:C9)",
        B1: "=C2:C4*10",
        C1: "=SEQUENCE(E1)",
        E1: "=SUM(G2:G9)",
        F1: "=TAKE(G2:G3,1)",
        G1: "=SEQUENCE(3)",
        I1: "=SUM(B2:B3)",
        J1: "=SEQUENCE(I1/10)",
        K1: "=SUM(J1:J100)",
      },
    });
    // G1:G3 = 1,2,3; E1 = 2+3 = 5; C1:C5 = 1..5; A1 = 2+3+4+5; B1:B3 = 20,30,40; I1 = 70; J1:J7; K1 = 28.
    expect(result.value("E1")).toBe(5);
    expect(result.value("A1")).toBe(14);
    expect(result.block("B1:B3")).toEqual([[20], [30], [40]]);
    expect(result.value("F1")).toBe(2);
    expect(result.value("I1")).toBe(70);
    expect(result.value("K1")).toBe(28);
  });

  test("spill-order: a filled cell that only formulas of single cells read", async () => {
    const result = await answers({ Data: { D1: "=E3*10", E1: "=SEQUENCE(3)" } });
    expect(result.value("D1")).toBe(30);
  });

  test("spill-order: what a formula filled in an earlier run and no longer fills is blank", async () => {
    const result = await answers({
      Data: {
        // D1 is computed first from an E1 that has not seen G2:G3 yet, and fills more cells than in the end.
        D1: "=SEQUENCE(E1)",
        E1: "=5-SUM(G2:G3)",
        G1: "=SEQUENCE(2)",
        H1: "=SUM(D1:D9)",
      },
    });
    expect(result.block("D1:D6")).toEqual([[1], [2], [3], [null], [null], [null]]);
    expect(result.value("H1")).toBe(6);
    expect(result.computed.sheets[0]?.spills).toContainEqual({
      row: 0,
      column: 3,
      area: { firstRow: 0, lastRow: 2, firstColumn: 3, lastColumn: 3 },
    });
  });

  test("image: no picture is asked for", async () => {
    const result = await answers({ Data: { A1: '=IMAGE("http://127.0.0.1:9/none.png")', A2: "=1+1" } });
    expect(result.block("A1:A2")).toEqual([["#N/A"], [2]]);
  });

  test("blank-result: a formula's result is never blank", async () => {
    const result = await answers({
      Data: {
        A1: "=IF(TRUE,Z9)",
        B1: "=Y8:Z9",
        A3: "=HSTACK(Z9,1)",
        A5: '=IF(TRUE,"",1)',
        A6: "=FILTER(Y1:Y2,Z1:Z2=1)",
        Z1: 1,
        Z2: 1,
        Y2: 4,
        A8: "=COUNT(Y1:Y2)",
        A9: '=Y1=""',
      },
    });
    expect(result.value("A1")).toBe(0);
    expect(result.block("B1:C2")).toEqual([
      [0, 0],
      [0, 0],
    ]);
    expect(result.block("A3:B3")).toEqual([[0, 1]]);
    expect(result.value("A5")).toBe("");
    expect(result.block("A6:A7")).toEqual([[0], [4]]);
    // Inside of formulas a blank stays one.
    expect(result.block("A8:A9")).toEqual([[1], [true]]);
  });

  test("search: ? and * stand for other characters, ~ takes that away", async () => {
    const result = await answers({
      Data: {
        A1: '=SEARCH("b?d","abcd")',
        A2: '=SEARCH("c*","abcd")',
        A3: '=SEARCH("~*","a*b")',
        A4: '=SEARCH("x?","abcd")',
        A5: '=SEARCH("B","abcb",3)',
        A6: '=SEARCH("a.c","abc a.c")',
        A7: '=SUM(SEARCH("*o",C1:C2))',
        C1: "sole",
        C2: "toe",
      },
    });
    expect(result.block("A1:A7")).toEqual([[2], [3], [2], ["#VALUE!"], [4], [5], [2]]);
  });

  test("unique: texts in any case are the same, a text and a number are not", async () => {
    const result = await answers({
      Data: {
        A1: "DD",
        A2: "dd",
        A3: "SU",
        A4: 1,
        A5: '="1"',
        C1: "=UNIQUE(A1:A5)",
        E1: "=UNIQUE(A1:A5,FALSE,TRUE)",
        G1: "=UNIQUE({1,2,1},TRUE)",
      },
    });
    expect(result.block("C1:C5")).toEqual([["DD"], ["SU"], [1], ["1"], [null]]);
    expect(result.block("E1:E4")).toEqual([["SU"], [1], ["1"], [null]]);
    expect(result.block("G1:I1")).toEqual([[1, 2, null]]);
  });

  test("concat: TRUE is written in capitals, an error is an error", async () => {
    const result = await answers({
      Data: { A1: '=CONCAT(TRUE,1,"a",C1:D1)', A2: '=CONCAT("a",1/0)', C1: 5, D1: false },
    });
    expect(result.block("A1:A2")).toEqual([["TRUE1a5FALSE"], ["#DIV/0!"]]);
  });

  test("if: a text is no condition", async () => {
    const result = await answers({
      Data: {
        A1: '=IF("",1,2)',
        A2: '=IF("x",1,2)',
        A3: '=IF("true",1,2)',
        A4: "=IF(Z9,1,2)",
        A5: "=IF(C1,1,2)",
        C1: "yes",
      },
    });
    expect(result.block("A1:A5")).toEqual([["#VALUE!"], ["#VALUE!"], [1], [2], ["#VALUE!"]]);
  });
});
