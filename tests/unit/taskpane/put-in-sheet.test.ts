import type { Block } from "../../../src/blocks/block";
import { literal } from "../../../src/blocks/expression/expression";
import { ownReferences } from "../../../src/blocks/references/own";
import { putBlock } from "../../../src/taskpane/parts/put-in-sheet/put-block";
import { nextPut, nothingPut, type PutBlock } from "../../../src/taskpane/parts/put-in-sheet/state";
import type { PlainSheet } from "../../../src/workbook/plain-book";
import { memoryBook, portsOn } from "./set-up/memory-book";

const block: Block = {
  id: "one",
  title: "Share [of] cows: lame/sound",
  about: "A figure to try with.",
  screen: "herd",
  inputs: [],
  parts: [{ kind: "figure", id: "share", label: "Share", value: literal(0.25) }],
  charts: [],
  notes: [],
};

const wanted = {
  block,
  specOf: () => undefined,
  references: () => Promise.resolve(ownReferences([], false)),
};

const sheet = (name: string, rows: PlainSheet["rows"]): PlainSheet => ({ name, rows, tables: [], days: [], formulas: [], merges: [] }); // oxfmt-ignore

function ports() {
  return portsOn(
    memoryBook({
      sheets: [
        sheet("Herd", [
          ["Cow", "Pen"],
          [1, "high"],
        ]),
      ],
    }),
  );
}

const names = async ({ book }: ReturnType<typeof ports>) => (await book.readBook()).sheets.map(({ name }) => name);

test("on a new sheet, named by the title without the signs that no sheet may carry; the next one gets a number", async () => {
  const on = ports();
  const first = await putBlock(on, wanted, "new sheet", undefined, { id: "a" });
  expect(first.place).toEqual({ sheet: "Share of cows lame sound", address: "A1" });
  const second = await putBlock(on, wanted, "new sheet", undefined, { id: "b" });
  expect(second.place.sheet).toBe("Share of cows lame sound 2");
  expect(await names(on)).toEqual(["Herd", first.place.sheet, second.place.sheet]);
  expect(on.tables.pastSaves()).toEqual([
    { id: "b", title: block.title },
    { id: "a", title: block.title },
  ]);
  await on.tables.takeBack("b");
  expect(await names(on)).toEqual(["Herd", first.place.sheet]);
});

test.each([
  ["Heifers, first and later lactations", "Heifers, first and later", "Heifers, first and later 2"],
  ["Lesions: new cases and rates: first lactation", "Lesions new cases and rates", "Lesions new cases and rates 2"],
  ["This time against the time before it", "This time against the time", "This time against the time 2"],
  ["Exactly one and thirty letters!", "Exactly one and thirty letters!", "Exactly one and thirty 2"],
  ["Klauenerkrankungsneuerkrankungsrate", "Klauenerkrankungsneuerkrankungs", "Klauenerkrankungsneuerkrankun 2"],
])("a long title makes a name of whole words: %s", async (title, ...expected) => {
  const on = ports();
  const long = { ...wanted, block: { ...block, title } };
  const puts = [];
  for (const id of ["a", "b"]) puts.push(await putBlock(on, long, "new sheet", undefined, { id }));
  expect(puts.map(({ place }) => place.sheet)).toEqual(expected);
});

test("on the sheet that is open it stands beside the list, so that the list can grow", async () => {
  const on = ports();
  const { place } = await putBlock(on, wanted, "this sheet", { sheet: "Herd", address: "A2" }, { id: "a" });
  expect(place.sheet).toBe("Herd");
  expect(place.address).toMatch(/^[D-Z]1$/);
});

test("a try that broke off is made again at its own place, and nothing is written twice", async () => {
  const on = ports();
  const attempt = { id: "a" };
  const first = await putBlock(on, wanted, "new sheet", undefined, attempt);
  const again = await putBlock(on, wanted, "new sheet", undefined, attempt);
  expect(again.place).toEqual(first.place);
  expect(await names(on)).toEqual(["Herd", first.place.sheet]);
});

test("a place that is in use is refused, and what stands there stays", async () => {
  const on = ports();
  await expect(putBlock(on, wanted, "selected cell", { sheet: "Herd", address: "A2" }, { id: "a" })).rejects.toThrow(
    /in use/,
  );
  expect((await on.book.readSheet("Herd")).rows).toEqual([
    ["Cow", "Pen"],
    [1, "high"],
  ]);
});

describe("the state", () => {
  const put: PutBlock = { place: { sheet: "Lame", address: "A1" }, refusals: [], chartsLeftOut: [] };

  test("pressed twice, it is put once; pressed while it is written, nothing is chosen", () => {
    const putting = nextPut(nothingPut, { type: "put pressed" });
    expect(nextPut(putting, { type: "put pressed" })).toBe(putting);
    expect(nextPut(putting, { type: "target chosen", target: "this sheet" })).toBe(putting);
  });

  test("put and taken back, it is as before; what is refused stays as it was", () => {
    const done = nextPut(nextPut(nothingPut, { type: "put pressed" }), { type: "put", put });
    expect(done.told?.text).toBe("It stands on the sheet Lame, from A1 on. Its figures go on with the workbook.");
    const back = nextPut(done, { type: "take back pressed", id: "a" });
    expect(nextPut(back, { type: "refused", message: "Changed." })).toMatchObject({
      put,
      told: { kind: "error", text: "Changed." },
    });
    expect(nextPut(back, { type: "taken back" }).put).toBeUndefined();
    expect(nextPut(back, { type: "take back pressed", id: "b" })).toBe(back);
  });
});
