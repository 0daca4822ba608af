import { lesionRates } from "../../../src/blocks/herd/lesion-rates";
import { bothSides } from "./both-sides";
import { AS_OF_DAY, DAY_ZERO, SETTINGS, smallBook, soundCows } from "./small-books";

jest.setTimeout(60_000);

const row = (lesion: string, day: number) => ({ date: DAY_ZERO + day, cow: 100, foot: "LH", lesion });

async function pictureOf(findings: readonly Readonly<Record<string, string | number>>[]) {
  const Targets = [["Lesion", "Target per 100 cow-years"], ["infectious", 30], ["all", 60]]; // oxfmt-ignore
  const book = smallBook({ cows: soundCows, findings, settings: { ...SETTINGS, Targets } });
  const sides = await bothSides(book, AS_OF_DAY, undefined, undefined, [lesionRates]);
  const { charts, places } = sides.laidOut.get("lesion-rates")!;
  const [{ categories, series, description }] = charts as [(typeof charts)[number]];
  const headings = places["lesions"]!.row;
  const rowsOf = ({ firstRow, lastRow }: typeof categories) => [firstRow - headings, lastRow - headings];
  return { categories: rowsOf(categories), values: rowsOf(series[0]!.values), description, sides };
}

test("the picture ends above the groups, all lesions and what is left out: their bars would dwarf the others", async () => {
  // Ulcer, white line disease and dermatitis; below them infectious, all, and the lesion that nobody knows.
  const findings = [row("SU", 100), row("WL", 150), row("DD", 200), row("DD", 300), row("foot thing", 320)];
  const { categories, values, description, sides } = await pictureOf(findings);
  const [rates] = [...sides.computed.values()].map(({ parts }) => parts.find(({ part }) => part.id === "lesions"));
  const codes = rates?.kind === "rows" ? rates.rows.map(([code]) => code) : [];
  expect(codes).toEqual(["Code", "U", "WL", "DD", "infectious", "all", ""]);
  expect(categories).toEqual([1, 3]);
  expect(values).toEqual([1, 3]);
  expect(description).toMatch(/^Bars of the rate of each lesion\. The highest is Digital dermatitis, /);
});

test("without a lesion it stands on the first row", async () => {
  const { categories, values } = await pictureOf([row("none", 100)]);
  expect([categories, values]).toEqual([
    [1, 1],
    [1, 1],
  ]);
});
