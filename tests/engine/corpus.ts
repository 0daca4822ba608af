import type { Cells } from "./support";

type Value = number | string | boolean;

export interface Case {
  readonly formula: string;
  /** Worked out by hand or taken from Microsoft's page on the function, never from an engine. */
  readonly expected: Value | readonly (readonly Value[])[];
  /** Referees that cannot judge the formula: they lack a function or an operator of it, or differ and are outvoted. */
  readonly not?: readonly Referee[];
}

export type Referee = "ironcalc" | "excelts";

/** Five findings and four cell counts, as a herd sheet may hold them. */
export const DATA: Cells = {
  A1: "Cow",
  B1: "Lesion",
  C1: "Date",
  D1: "Count",
  E1: "Days",
  F1: "Left",
  A2: 11,
  B2: "DD",
  C2: 45_658,
  D2: 100,
  E2: 7,
  F2: true,
  A3: 12,
  B3: "SU",
  C3: 45_689,
  D3: 400,
  E3: 21,
  F3: false,
  A4: 13,
  B4: "WLD",
  C4: 45_717,
  D4: "dry",
  E4: 28,
  F4: false,
  A5: 11,
  B5: "dd",
  C5: 45_748,
  D5: 50,
  E5: 7,
  F5: true,
  A6: 14,
  B6: "TU",
  C6: 45_778,
  E6: 30,
  F6: false,
};

/** In DATA the dates are 1 January, 1 February, 1 March, 1 April and 1 May 2025. */
export const CASES: readonly Case[] = [
  // Counting and summing by condition
  { formula: 'COUNTIFS(B2:B6,"DD")', expected: 2 },
  { formula: 'COUNTIFS(B2:B6,"W*")', expected: 1 },
  { formula: 'COUNTIFS(B2:B6,"?U")', expected: 2 },
  { formula: 'COUNTIFS(C2:C6,">="&DATE(2025,2,1),C2:C6,"<"&DATE(2025,4,1))', expected: 2 },
  { formula: 'COUNTIFS(B2:B6,"<>DD")', expected: 3 },
  { formula: 'COUNTIFS(D2:D6,"")', expected: 1 },
  { formula: 'COUNTIF(D2:D6,"<>")', expected: 4 },
  { formula: 'SUMIFS(E2:E6,B2:B6,"dd")', expected: 14 },
  { formula: 'SUMIF(B2:B6,"DD",E2:E6)', expected: 14 },
  { formula: 'AVERAGEIFS(E2:E6,C2:C6,">45689")', expected: 65 / 3 },
  { formula: 'MAXIFS(C2:C6,B2:B6,"DD")', expected: 45_748 },
  { formula: "MINIFS(C2:C6,A2:A6,11)", expected: 45_658 },
  { formula: 'SUMPRODUCT((B2:B6="dd")*(E2:E6))', expected: 14 },
  { formula: "SUMPRODUCT(--(C2:C6>45689),E2:E6)", expected: 65, not: ["ironcalc"] },
  { formula: "COUNT(D2:D6)", expected: 3 },
  { formula: "COUNTA(D2:D6)", expected: 4 },
  { formula: "COUNTBLANK(D2:D6)", expected: 1 },
  { formula: "COUNTIF(F2:F6,TRUE)", expected: 2 },
  { formula: 'SUM(D2:D6,TRUE,"3")', expected: 554 },
  // Statistics
  { formula: "AVERAGE(D2:D6)", expected: 550 / 3 },
  { formula: "MEDIAN(E2:E6)", expected: 21 },
  { formula: "GEOMEAN(D2,D3,D5)", expected: Math.cbrt(2_000_000) },
  { formula: "STDEV.S(E2:E6)", expected: Math.sqrt((11.6 ** 2 * 2 + 2.4 ** 2 + 9.4 ** 2 + 11.4 ** 2) / 4) },
  { formula: "PERCENTILE.INC(E2:E6,0.9)", expected: 29.2 },
  { formula: "QUARTILE.INC(E2:E6,1)", expected: 7 },
  { formula: "LARGE(E2:E6,2)", expected: 28 },
  { formula: "RANK.EQ(28,E2:E6)", expected: 2 },
  { formula: "MODE.SNGL(E2:E6)", expected: 7 },
  { formula: "NORM.S.INV(0.975)", expected: 1.959963984540054, not: ["excelts"] },
  { formula: "CHISQ.INV(0.025,10)", expected: 3.2469727802368396 },
  // Looking up
  { formula: 'XLOOKUP("wld",B2:B6,E2:E6)', expected: 28 },
  { formula: 'XLOOKUP("ZZ",B2:B6,E2:E6,"none")', expected: "none" },
  { formula: "XLOOKUP(45700,C2:C6,A2:A6,,-1)", expected: 12 },
  { formula: 'INDEX(E2:E6,MATCH("TU",B2:B6,0))', expected: 30 },
  { formula: "MATCH(45700,C2:C6)", expected: 2 },
  { formula: "VLOOKUP(13,A2:E6,5,FALSE)", expected: 28 },
  { formula: 'MATCH("ZZ",B2:B6,0)', expected: "#N/A" },
  { formula: 'IFNA(MATCH("ZZ",B2:B6,0),-1)', expected: -1 },
  { formula: "CHOOSE(2,A2,A3,A4)", expected: 12 },
  { formula: "SUM(OFFSET(A2,0,4,5,1))", expected: 93 },
  { formula: 'SUM(INDIRECT("E2:E6"))', expected: 93 },
  { formula: "ROWS(A2:E6)*COLUMNS(A2:E6)", expected: 25 },
  { formula: "SUM(A2:INDEX(A2:A6,3))", expected: 36, not: ["ironcalc", "excelts"] },
  // Dates
  { formula: "EDATE(DATE(2025,1,31),1)", expected: 45_716 },
  { formula: "EOMONTH(C2,0)", expected: 45_688 },
  { formula: 'DATEDIF(DATE(2024,1,15),DATE(2025,3,1),"m")', expected: 13 },
  { formula: "ISOWEEKNUM(DATE(2025,12,29))", expected: 1 },
  { formula: "NETWORKDAYS(DATE(2025,12,1),DATE(2025,12,31))", expected: 23 },
  { formula: "WORKDAY(DATE(2025,1,3),1)", expected: 45_663 },
  { formula: "YEAR(C6)*100+MONTH(C6)", expected: 202_505 },
  { formula: "WEEKDAY(DATE(2025,1,1),2)", expected: 3 },
  { formula: "DATE(2024,2,30)", expected: 45_352, not: ["ironcalc"] },
  { formula: 'DATEVALUE("2025-01-01")', expected: 45_658 },
  { formula: 'TEXT(45658,"yyyy-mm-dd")', expected: "2025-01-01" },
  { formula: 'TEXT(45658,"ddd d mmm yy")', expected: "Wed 1 Jan 25" },
  // Texts
  { formula: 'TEXT(1234.567,"#,##0.0")', expected: "1,234.6" },
  { formula: 'TEXT(0.256,"0.0%")', expected: "25.6%" },
  { formula: 'TEXTJOIN(", ",TRUE,B2:B6)', expected: "DD, SU, WLD, dd, TU" },
  { formula: 'LEFT("hoof",2)&RIGHT("hoof",1)&MID("hoof",2,2)', expected: "hofoo" },
  { formula: 'SUBSTITUTE("a-b-c","-","/",2)', expected: "a-b/c" },
  { formula: 'FIND("b","abc")+SEARCH("B","abc")', expected: 4 },
  { formula: 'TRIM("  a   b ")&UPPER("x")&LEN("abc")', expected: "a bX3" },
  { formula: 'EXACT("DD","dd")', expected: false },
  { formula: '"DD"="dd"', expected: true },
  { formula: 'VALUE("12.5")', expected: 12.5 },
  { formula: '"a"&1/4', expected: "a0.25" },
  { formula: 'TEXTAFTER("LF-12","-")', expected: "12" },
  { formula: 'TEXTBEFORE("LF-12","-")', expected: "LF" },
  // Conditions and errors
  { formula: 'IF(D4>300,"high","low")', expected: "high" },
  { formula: 'IFS(D3>1000,"a",D3>300,"b",TRUE,"c")', expected: "b" },
  { formula: 'SWITCH(B3,"DD",1,"SU",2,3)', expected: 2 },
  { formula: 'IFERROR(1/0,"bad")', expected: "bad" },
  { formula: "1/0", expected: "#DIV/0!" },
  { formula: "D4+1", expected: "#VALUE!" },
  { formula: "SQRT(-1)", expected: "#NUM!" },
  { formula: "NOSUCHFUNCTION(1)", expected: "#NAME?" },
  { formula: 'AND(A2>10,OR(B2="SU",NOT(F3)))', expected: true },
  { formula: "XOR(TRUE,TRUE,TRUE)", expected: true },
  { formula: "ISNUMBER(D4)+ISTEXT(D4)*2+ISBLANK(D6)*4", expected: 6 },
  // Arithmetic
  { formula: "-2^2", expected: 4 },
  { formula: "2^-1", expected: 0.5 },
  { formula: "10%*50", expected: 5 },
  { formula: "1+2&3", expected: "33" },
  { formula: "ROUND(2.5,0)+ROUND(-2.5,0)+ROUND(1234.5,-2)", expected: 1200 },
  { formula: "MOD(-3,7)", expected: 4 },
  { formula: "INT(-2.5)", expected: -3 },
  { formula: "ROUNDUP(2.1,0)+ROUNDDOWN(-2.9,0)+MROUND(7,3)", expected: 7 },
  { formula: "LOG(8,2)+LN(EXP(1))+LOG10(100)", expected: 6 },
  { formula: "CEILING.MATH(2.1)+FLOOR.MATH(2.9)", expected: 5 },
  // Results that fill cells
  {
    formula: "SEQUENCE(2,3)",
    expected: [
      [1, 2, 3],
      [4, 5, 6],
    ],
  },
  { formula: "SORT(UNIQUE(A2:A6))", expected: [[11], [12], [13], [14]] },
  {
    formula: "FILTER(A2:B6,E2:E6>20)",
    expected: [
      [12, "SU"],
      [13, "WLD"],
      [14, "TU"],
    ],
  },
  { formula: 'FILTER(A2:A6,E2:E6>99,"none")', expected: "none" },
  { formula: "TAKE(SORTBY(A2:A6,E2:E6,-1),2)", expected: [[14], [13]] },
  {
    formula: "SORT(A2:B6,2,-1)",
    expected: [
      [13, "WLD"],
      [14, "TU"],
      [12, "SU"],
      [11, "DD"],
      [11, "dd"],
    ],
  },
  { formula: "DROP(A2:A6,3)", expected: [[11], [14]] },
  {
    formula: "HSTACK(A2:A3,E2:E3)",
    expected: [
      [11, 7],
      [12, 21],
    ],
  },
  {
    formula: "VSTACK({1,2},{3,4})",
    expected: [
      [1, 2],
      [3, 4],
    ],
  },
  {
    formula: "TRANSPOSE(A2:B3)",
    expected: [
      [11, 12],
      ["DD", "SU"],
    ],
  },
  { formula: "E2:E4*2", expected: [[14], [42], [56]] },
  { formula: "COUNTIFS(A2:A6,UNIQUE(A2:A6))", expected: [[2], [1], [1], [1]], not: ["ironcalc", "excelts"] },
  {
    formula: "CHOOSECOLS(A2:E3,5,1)",
    expected: [
      [7, 11],
      [21, 12],
    ],
  },
  { formula: "TOCOL(A2:B3)", expected: [[11], ["DD"], [12], ["SU"]] },
  { formula: 'ROWS(FILTER(A2:A6,B2:B6="DD"))', expected: 2, not: ["ironcalc"] },
  { formula: 'SUM(IF(B2:B6="DD",E2:E6,0))', expected: 14 },
  { formula: "INDEX(SORT(E2:E6,1,-1),1)", expected: 30 },
  // Names of the formula's own
  { formula: "LET(x,SUM(E2:E6),y,COUNT(E2:E6),x/y)", expected: 18.6 },
  { formula: "LAMBDA(a,b,a+b)(2,3)", expected: 5, not: ["excelts"] },
  { formula: "MAP(E2:E4,LAMBDA(v,v*2))", expected: [[14], [42], [56]] },
  { formula: "BYROW(A2:B3,LAMBDA(r,COUNTA(r)))", expected: [[2], [2]] },
  { formula: "REDUCE(0,E2:E6,LAMBDA(a,v,a+v))", expected: 93 },
];
