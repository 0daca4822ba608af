import { formulaForms } from "../../src/xlsx/stored-formula";

const forms = formulaForms(["RECHECK.DATE", "RECHECK.DATE_OLD", "LESION.TABLE", "CELL.SCORE"]);

/**
 * Stored spellings as Microsoft documents them: [MS-XLSX] 2.2.3 for the _xlfn. names, "Dynamic array formulas vs.
 * legacy CSE array formulas" and the implicit intersection operator's page for ANCHORARRAY and SINGLE.
 */
const pairs: readonly (readonly [typed: string, stored: string])[] = [
  ["1+1", "1+1"],
  ["HERD.CELL.SCORE(A1)", "_xldudf_HERD_CELL_SCORE(A1)"],
  ["HERD.RECHECK.DATE_OLD(A1)", "_xldudf_HERD_RECHECK_DATE_OLD(A1)"],
  [
    "SUM(HERD.CELL.SCORE(A1),HERD.RECHECK.DATE(B1,C1))",
    "SUM(_xldudf_HERD_CELL_SCORE(A1),_xldudf_HERD_RECHECK_DATE(B1,C1))",
  ],
  ["XLOOKUP(A1,B:B,C:C)", "_xlfn.XLOOKUP(A1,B:B,C:C)"],
  ["SORT(FILTER(A1:B9,B1:B9>2),1)", "_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:B9,B1:B9>2),1)"],
  ["STDEV.S(A1:A9)+NETWORKDAYS.INTL(A1,A2)", "_xlfn.STDEV.S(A1:A9)+NETWORKDAYS.INTL(A1,A2)"],
  ["SUM(D5#)", "SUM(_xlfn.ANCHORARRAY(D5))"],
  ["'My sheet'!D5#*2", "_xlfn.ANCHORARRAY('My sheet'!D5)*2"],
  ["INDEX(A1:A3,2)#", "_xlfn.ANCHORARRAY(INDEX(A1:A3,2))"],
  ["@A1:A3+1", "_xlfn.SINGLE(A1:A3)+1"],
  ["@HERD.LESION.TABLE(A1:A3)", "_xlfn.SINGLE(_xldudf_HERD_LESION_TABLE(A1:A3))"],
  ["@D5#", "_xlfn.SINGLE(_xlfn.ANCHORARRAY(D5))"],
  ["@(A1:A3+B1:B3)", "_xlfn.SINGLE(A1:A3+B1:B3)"],
  ["LET(x,ROWS(A1:A3),y,2,x*y)", "_xlfn.LET(_xlpm.x,ROWS(A1:A3),_xlpm.y,2,_xlpm.x*_xlpm.y)"],
  ["LAMBDA(a,b,a+b)(2,3)+a", "_xlfn.LAMBDA(_xlpm.a,_xlpm.b,_xlpm.a+_xlpm.b)(2,3)+a"],
  ["LET(f,LAMBDA(v,v*2),f(3))", "_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.v,_xlpm.v*2),_xlpm.f(3))"],
  ['"_xlfn.SORT(A1#) @B2 HERD.CELL.SCORE("&A1', '"_xlfn.SORT(A1#) @B2 HERD.CELL.SCORE("&A1'],
  ["'_xlfn.odd sheet'!A1+SEQUENCE(2)", "'_xlfn.odd sheet'!A1+_xlfn.SEQUENCE(2)"],
  ["Findings[@Lesion]", "Findings[[#This Row],[Lesion]]"],
  ["SUM(Findings[Days since (d)])", "SUM(Findings[Days since (d)])"],
  ["COUNTA(Findings[[#Headers],[Cow]])", "COUNTA(Findings[[#Headers],[Cow]])"],
];

describe("formulas as typed and as stored", () => {
  test.each(pairs)("typed %s", (typed, stored) => {
    expect(forms.stored(typed)).toBe(stored);
  });
  test.each(pairs)("stored as typed: %s", (typed, stored) => {
    expect(forms.typed(stored)).toBe(typed);
  });

  test("dots and underscores of a name come back as they were", () => {
    expect(forms.typed("_xldudf_HERD_RECHECK_DATE_OLD(1)+_xldudf_HERD_RECHECK_DATE(1)")).toBe(
      "HERD.RECHECK.DATE_OLD(1)+HERD.RECHECK.DATE(1)",
    );
  });
  test("a function of the add-in that is not known stays as stored", () => {
    expect(forms.typed("_xldudf_HERD_NO_SUCH(1)")).toBe("_xldudf_HERD_NO_SUCH(1)");
  });
  test("a later function that is not known keeps its prefix, as spreadsheets show it", () => {
    expect(forms.typed("_xlfn.NOT.YET(1)")).toBe("_xlfn.NOT.YET(1)");
  });
  test("names are found in any case", () => {
    expect(forms.stored("herd.cell.score(a1)")).toBe("_xldudf_HERD_CELL_SCORE(a1)");
    expect(forms.typed("_XLDUDF_HERD_CELL_SCORE(A1)")).toBe("HERD.CELL.SCORE(A1)");
  });
  test("a bare table name is stored with brackets, and shown without", () => {
    expect(forms.stored("VLOOKUP(1,Lesions,3)", { tables: ["Lesions"] })).toBe("VLOOKUP(1,Lesions[],3)");
    expect(forms.typed("VLOOKUP(1,Lesions[],3)")).toBe("VLOOKUP(1,Lesions,3)");
  });
  test("a column of the formula's own row is stored with the table's name", () => {
    expect(forms.stored("[@Lesion]&[Cow]", { ownTable: "Findings" })).toBe(
      "Findings[[#This Row],[Lesion]]&Findings[Cow]",
    );
  });
});
