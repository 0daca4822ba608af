import { disorderOf } from "../../../../src/core/claws/disorder-key";
import { isLesionWord, likelyCode } from "../../../../src/herd/codes/likely-code";
import { LesionWords, proposedRows } from "../../../../src/herd/codes/words";
import { lesionLanguages } from "../../../../src/herd/codes/words/all";
import type { PlainCell } from "../../../../src/workbook/port";
import { rowSchema } from "../../../../src/workbook/table-rows";
import { wordsTable } from "../../../../src/workbook/words-table";

function words(...rows: PlainCell[][]): LesionWords {
  const columns = ["Word", "Code"].map((heading) => ({ heading, calculated: false }));
  return new LesionWords({ name: "Words", sheet: "Words", columns, rowCount: rows.length, rows });
}

test("every listed word stands under a code of the key, and no word of a language under two", () => {
  for (const [language, lists] of Object.entries(lesionLanguages)) {
    const seen = new Map<string, string>();
    for (const [code, list] of Object.entries(lists)) {
      expect([language, code, code === "none" || disorderOf(code)?.code === code]).toEqual([language, code, true]);
      for (const word of list) {
        const key = word.toLowerCase();
        expect([language, word, seen.get(key) ?? code]).toEqual([language, word, code]);
        seen.set(key, code);
      }
    }
  }
});

test.each([
  ["ulcer", "U"],
  ["hairy warts", "DD"],
  ["WLD", "WL"],
  ["Sohlengeschwür", "SU"],
  ["ulcère de la sole", "SU"],
  ["zoolzweer", "SU"],
  ["úlcera de suela", "SU"],
  ["sålesår", "SU"],
  ["Tylom", "IH"],
  ["panaris", "IP"],
  ["RAS", "none"],
])("the likeliest code of %s is %s", (word, code) => {
  expect(likelyCode(word)).toMatchObject({ code });
});

test("a misspelt word and a word in a sentence are less certain than a listed one", () => {
  const listed = likelyCode("hairy wart")!;
  const misspelt = likelyCode("hairy watr")!;
  const part = likelyCode("hairy wart again, left")!;
  expect([misspelt.code, part.code]).toEqual(["DD", "DD"]);
  expect(listed.certainty).toBeGreaterThan(misspelt.certainty);
  expect(misspelt.certainty).toBeGreaterThan(part.certainty);
  expect(likelyCode("bad un")).toBeUndefined();
});

test("a word is never read by its likeliest code until the farm says so", () => {
  expect(new LesionWords().codeOf("hairy wart")).toBeUndefined();
  expect(words(["Hairy  Wart", "dd"]).codeOf("hairy wart")).toBe("DD");
  expect(words(["clean", "none"]).codeOf("Clean")).toBe("none");
});

test("the farm's word comes before the key: ID may be its word for something else", () => {
  expect(words(["ID", "IP"]).codeOf("id")).toBe("IP");
  expect(new LesionWords().codeOf("Foul in the foot")).toBe("IP");
});

test("rows that cannot be used are named", () => {
  expect(words(["digi", "XX"], ["digi", "DD"], ["digi", "IP"]).problems.map(({ problem }) => problem)).toEqual([
    'Words: the code of "digi" must be one of the claw disorder key; got "XX"',
    'Words: "digi" stands twice, for DD and for IP; the first counts',
  ]);
});

test("unknown words are counted and proposed, the likely ones with a code, the others blank", () => {
  const unknown = new LesionWords().unknown(["digi", "Digi", "SU", "bad un", "hairy wart again"]);
  expect(unknown.map(({ word, times }) => [word, times])).toEqual([
    ["digi", 2],
    ["bad un", 1],
    ["hairy wart again", 1],
  ]);
  const rows = proposedRows(unknown);
  expect(rows.map(({ word, code }) => [word, code])).toEqual([
    ["digi", "DD"],
    ["bad un", null],
    ["hairy wart again", null],
  ]);
  expect(rows[2]!.note).toMatch(/may mean DD/);
  for (const row of rows) expect(rowSchema(wordsTable).parse(row)).toEqual(row);
});

test("only whole words tell that a column holds lesions", () => {
  expect(["sole ulcer", "Limax", "DD M2", "cerise"].every(isLesionWord)).toBe(true);
  expect(["LH", "inner", "trimmed", "block"].some(isLesionWord)).toBe(false);
});
