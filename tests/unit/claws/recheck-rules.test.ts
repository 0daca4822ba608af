import { checkRecheckRules, defaultRecheckRules, ruleFor } from "../../../src/core/claws/recheck-rules";
import { printedRecheckRules, recheckRules } from "../../../src/functions/claws/kinds-of-care";

const HEADINGS = ["Lesion", "First recheck (days)", "Second recheck (days)", "Block check (days)", "Block off (days)"];
const read = (...rows: unknown[][]) => recheckRules.read([HEADINGS, ...rows], "rules");

describe("recheck rules", () => {
  test("the built-in rules agree with themselves", () => {
    expect(() => checkRecheckRules(defaultRecheckRules)).not.toThrow();
  });

  test("the built-in rules printed as a table are read back as they are", () => {
    const rules = recheckRules.read(printedRecheckRules(), "rules");
    defaultRecheckRules.forEach(({ source, ...rule }, index) => {
      expect(source.citation).not.toBe("");
      expect(rules[index]).toEqual(expect.objectContaining(rule));
    });
    expect(rules).toHaveLength(defaultRecheckRules.length);
  });

  test("every row of the printed table has as many cells as headings and says where it comes from", () => {
    const [headings, ...rows] = printedRecheckRules();
    expect(headings!.at(-1)).toBe("Basis");
    for (const row of rows) {
      expect(row).toHaveLength(headings!.length);
      expect(row.at(-1)).not.toBe("");
    }
  });

  test("a form of a disorder takes its parent's row, and its own row first", () => {
    const rules = read(["WL", 7, "", "", ""], ["WLA", 3, "", "", ""]);
    expect(ruleFor(rules, "WLF")?.lesion).toBe("WL");
    expect(ruleFor(rules, "WLA")?.lesion).toBe("WLA");
    expect(ruleFor(rules, "DD")).toBeUndefined();
  });

  test("blank cells handed over as 0 are blank, and a row of zeros is no row", () => {
    expect(read(["SU", 7, 0, 0, 0], [0, 0, 0, 0, 0])).toEqual([
      expect.objectContaining({ lesion: "SU", firstRecheckDays: 7 }),
    ]);
    expect(read(["SU", 7, 0, 0, 0])[0]!.secondRecheckDays).toBeUndefined();
  });

  test.each<[string, unknown[][], RegExp]>([
    [
      "a lesion twice",
      [
        ["SU", 7, "", "", ""],
        ["Sole ulcer", 8, "", "", ""],
      ],
      /SU stands in two rows/,
    ],
    ["rechecks out of order", [["SU", 14, 7, "", ""]], /second recheck \(7 d\) after its first recheck \(14 d\)/],
    ["the same day twice", [["SU", 7, 7, "", ""]], /second recheck \(7 d\) after/],
    ["a second recheck without a first", [["SU", "", 7, "", ""]], /a second recheck but no first recheck/],
    [
      "a block off before it is looked at",
      [["SU", 7, "", 14, 10]],
      /block off \(10 d\) before its block check \(14 d\)/,
    ],
    [
      "a block for seven weeks",
      [["SU", 7, "", "", 49]],
      /rules row 2 "Block off \(days\)" must be .*from 1 to 42 days.*got 49/,
    ],
    ["half a day", [["SU", 7.5, "", "", ""]], /"First recheck \(days\)" must be a whole number from 1 to 365 days/],
    ["text", [["SU", "7 d", "", "", ""]], /rules row 2 "First recheck \(days\)" must be .*got "7 d"/],
    ["an unknown lesion", [["WLD", 7, "", "", ""]], /rules row 2 "Lesion" must be a code or name .*got "WLD"/],
  ])("refuses %s", (_, rows, message) => {
    expect(() => read(...rows)).toThrow(message);
  });

  test("a third recheck needs a second before it, on an earlier day", () => {
    const three = (second: unknown, third: unknown) =>
      recheckRules.read([["Lesion", "First recheck (days)", "Second recheck (days)", "Third recheck (days)"], ["SU", 7, second, third]], "rules"); // oxfmt-ignore
    expect(three(14, 21)[0]).toMatchObject({ secondRecheckDays: 14, thirdRecheckDays: 21 });
    expect(() => three(14, 14)).toThrow("third recheck (14 d) after its second recheck (14 d)");
    expect(() => three("", 21)).toThrow("has a third recheck but no second recheck");
    expect(() => three(14, 14)).toThrow(expect.objectContaining({ kind: "invalid" }));
  });

  test("a block's look without its end, and its end without a look, contradict nothing", () => {
    expect(read(["SU", 7, "", 14, ""])[0]).toMatchObject({ blockCheckDays: 14 });
    expect(read(["SU", 7, "", "", 14])[0]).toMatchObject({ blockOffDays: 14 });
  });

  test("a block may be looked at and taken off on one day", () => {
    expect(read(["SU", 7, "", 14, 14])[0]).toMatchObject({ blockCheckDays: 14, blockOffDays: 14 });
  });
});
