import { guessBook } from "../../../../src/herd/mapping/guess-book";
import type { PlainBook, PlainSheet } from "../../../../src/workbook/plain-book";
import type { PlainCell } from "../../../../src/workbook/port";
import { variants } from "./variants";
import { laterVariants } from "./variants/later";
import { ROWS, type Variant, type VariantSheet } from "./variants/variant";

function sheetOf({ sheet, above = [], columns, shownAsDays = [] }: VariantSheet): PlainSheet {
  const titles = above.map((text): PlainCell[] => [text === "" ? null : text]);
  const headings = columns.map(([heading]) => heading);
  const rows = Array.from({ length: ROWS }, (_, row) => columns.map(([, , cells]) => cells[row] ?? null));
  const firstRow = titles.length + 1;
  return {
    name: sheet,
    rows: [...titles, headings, ...rows],
    tables: [],
    formulas: [],
    merges: [],
    days: shownAsDays.map((heading) => {
      const column = headings.indexOf(heading);
      return { firstRow, lastRow: firstRow + ROWS - 1, firstColumn: column, lastColumn: column };
    }),
  };
}

function guesses(variant: Variant): { readonly right: number; readonly wrong: readonly string[] } {
  const book: PlainBook = { sheets: variant.sheets.map(sheetOf) };
  const { sources } = guessBook(book);
  let right = 0;
  const wrong: string[] = [];
  for (const { sheet, holds, columns } of variant.sheets) {
    const source = sources.find((one) => one.sheet === sheet);
    for (const [heading, means] of columns) {
      const guessed = source?.table === holds ? source.columns.find((one) => one.heading === heading)?.key : undefined;
      if ((guessed ?? "-") === means && source?.table === holds) right++;
      else wrong.push(`${sheet} (${source?.table ?? "no table"}): "${heading}" is ${means}, guessed ${guessed ?? "-"}`);
    }
  }
  return { right, wrong };
}

const results = variants.map((variant) => ({ variant, ...guesses(variant) }));

test("at least nine in ten columns of all the invented books are guessed right", () => {
  const right = results.reduce((sum, result) => sum + result.right, 0);
  const wrong = results.flatMap((result) => result.wrong);
  expect({ share: right / (right + wrong.length) >= 0.9, wrong }).toMatchObject({ share: true });
});

test("at least nine in ten columns of books that no word list was made for are guessed right", () => {
  const later = laterVariants.map(guesses);
  const right = later.reduce((sum, result) => sum + result.right, 0);
  const wrong = later.flatMap((result) => result.wrong);
  expect({ share: right / (right + wrong.length) >= 0.9, wrong }).toMatchObject({ share: true });
});
