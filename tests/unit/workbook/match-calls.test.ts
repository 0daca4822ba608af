import type { RecordedCall } from "../../../src/engine/call-log";
import { matchCalls } from "../../../src/workbook/grid/match-calls";
import { writtenCalls } from "../../../src/workbook/written-calls";

function ran(id: string, ...rawArguments: unknown[]): RecordedCall {
  return { spec: { id } as RecordedCall["spec"], rawArguments, outcome: { value: 0, remarks: [] } };
}

function matched(formula: string, ...runs: RecordedCall[]) {
  return matchCalls(writtenCalls(formula).calls, runs).map(({ functionId, argumentTexts, rawArguments }) => ({
    functionId,
    argumentTexts,
    rawArguments,
  }));
}

describe("calls as written and runs as recorded", () => {
  test("side by side keep their order", () => {
    expect(matched("=HERD.CELL.SCORE(A1)-HERD.CELL.SCORE(A2)", ran("CELL.SCORE", 400), ran("CELL.SCORE", 100))).toEqual(
      [
        { functionId: "CELL.SCORE", argumentTexts: ["A1"], rawArguments: [400] },
        { functionId: "CELL.SCORE", argumentTexts: ["A2"], rawArguments: [100] },
      ],
    );
  });

  test("a call inside another has run before it", () => {
    expect(
      matched("=HERD.CELL.SCORE(HERD.CELL.COUNT(5))", ran("CELL.COUNT", 5), ran("CELL.SCORE", 400)).map(
        ({ functionId, rawArguments }) => [functionId, rawArguments],
      ),
    ).toEqual([
      ["CELL.SCORE", [400]],
      ["CELL.COUNT", [5]],
    ]);
  });

  test("the same function inside itself is told apart", () => {
    const inner = ran("CELL.SCORE", 200);
    const outer = ran("CELL.SCORE", 4);
    expect(
      matched("=HERD.CELL.SCORE(HERD.CELL.SCORE(200))", inner, outer).map(({ rawArguments }) => rawArguments),
    ).toEqual([[4], [200]]);
  });

  test("a branch that did not run has no values and says so", () => {
    const formula = "=IF(A1,HERD.CELL.SCORE(400),HERD.CELL.COUNT(5))";
    const [score, count] = matchCalls(writtenCalls(formula).calls, [ran("CELL.COUNT", 5)]);
    expect(score?.rawArguments).toBeUndefined();
    expect(score?.errorMessage).toMatch(/was not computed/);
    expect(count?.rawArguments).toEqual([5]);
  });

  test("the message of an error goes with its call", () => {
    const failed: RecordedCall = { ...ran("CELL.SCORE", "x"), outcome: { error: "#VALUE!", message: "count must be" } };
    expect(matchCalls(writtenCalls("=HERD.CELL.SCORE(A1)").calls, [failed])[0]?.errorMessage).toBe("count must be");
  });
});
