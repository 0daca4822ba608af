import type { Block } from "../../../src/blocks/block";
import { type ComputedBlock, computeBlock } from "../../../src/blocks/compute";
import { BlockData } from "../../../src/blocks/data";
import { gallery } from "../../../src/blocks/gallery";
import { layOutBlock } from "../../../src/blocks/layout";
import { ownReferences } from "../../../src/blocks/references/own";
import { everyBlock } from "../../../src/blocks/shelves";
import { specOf } from "./both-sides";
import { differences } from "./compare";
import { AT, inSheets, tablesOf } from "./sheet-side";
import { AS_OF_DAY, SETTINGS, smallBook, soundCows, soundFindings, soundScores, soundTests } from "./small-books";

jest.setTimeout(120_000);

const model = smallBook({
  cows: soundCows,
  findings: soundFindings,
  scores: soundScores,
  tests: soundTests,
  settings: SETTINGS,
});
const tables = tablesOf(model);
const data = new BlockData({ tables, asOf: AS_OF_DAY, scale: "0-3" });
const references = ownReferences([...tables.values()], true);

/** Every block once for each of its inputs, that one cleared. */
const cleared = everyBlock.flatMap((block) =>
  block.inputs.map(({ name }): { readonly block: Block; readonly name: string } => ({
    block: { ...block, id: `${block.id} ${name}` },
    name,
  })),
);
const computed = new Map<string, ComputedBlock>(
  cleared.map(({ block, name }) => [block.id, computeBlock(block, data, specOf, { [name]: null })]),
);

function told(block: string, input: string, part: string): unknown {
  const found = computed.get(`${block} ${input}`)!.parts.find(({ part: known }) => known.id === part)!;
  return found.kind === "figure" ? found.value : found.kind === "refused" ? found.sentence : found.rows;
}

test("with any input cleared the sheet shows what the pane shows", async () => {
  const laidOut = cleared.map(({ block, name }) =>
    layOutBlock(block, {
      references,
      specOf,
      at: AT,
      given: { [name]: null },
      computed: computed.get(block.id)!.parts,
    }),
  );
  const answers = await inSheets(model, laidOut);
  const differ = laidOut.flatMap((one) => differences(computed.get(one.id)!.parts, one, answers));
  // Where two things are missing the pane and the sheet may name either first.
  expect(differ.filter((line) => !/pane "#[A-Z/]+[!A]", sheet "#/.test(line))).toEqual([]);
});

describe("a cleared cell is asked for, and is no 0", () => {
  test.each([
    ["lame-and-high", "limit", "link", "High from is blank or no number: write the count from which a cow is high."],
    ["legal-limit", "legalLimit", "against", "The limit is blank or no number: write it."],
    ["what-if", "milkPrice", "curedMoney", "Milk price is blank or no number: write the price of a litre."],
    ["what-if", "milkPrice", "belowMoney", "Milk price is blank or no number: write the price of a litre."],
    ["what-if", "highest", "from", "Highest cows cured is blank, below 1 or no number: write how many."],
    ["what-if", "highest", "cured", "Highest cows cured is blank, below 1 or no number: write how many."],
    ["what-if", "ceiling", "below", "No cow above is blank, below 1 or no number: write a count."],
    ["dry-period", "from", "dry", "Calved from is blank or no day: write a date."],
    ["dry-period", "firstDays", "dry", "First test from day is blank or no number: write a number of days."],
    ["new-and-repeat", "from", "new", "From is blank or no day: write a date."],
    ["new-and-repeat", "to", "new", "To is blank or no day: write a date."],
    ["lame-to-treated", "to", "treated", "To is blank or no day: write a date."],
    ["coverage", "to", "milking", "To is blank or no day: write a date."],
    ["coverage", "to", "enough", "To is blank or no day: write a date."],
    ["against-before", "from", "fromBefore", "From is blank or no day: write a date."],
    ["against-before", "from", "toBefore", "From is blank or no day: write a date."],
    ["against-before", "from", "now", "From is blank or no day: write a date."],
    ["against-before", "from", "before", "From is blank or no day: write a date."],
    ["against-before", "to", "now", "To is blank or no day: write a date."],
    ["against-before", "to", "before", "To is blank or no day: write a date."],
    ["against-before", "to", "verdict", "To is blank or no day: write a date."],
    ["lesion-rates-first", "from", "cowDays", "From is blank or no day: write a date."],
    ["lesion-rates-later", "to", "cowDays", "To is blank or no day: write a date."],
    ["visit-report", "visit", "days", "Day of the visit is blank or no day: write a date."],
    ["visit-report", "visit", "scored now", "Day of the visit is blank or no day: write a date."],
    ["visit-report", "visit", "examined", "Day of the visit is blank or no day: write a date."],
    ["visit-report", "visit", "lastTest", "Day of the visit is blank or no day: write a date."],
    ["visit-report", "since", "from now", "Visit before is blank or no day: write a date."],
    ["visit-report", "since", "lame before", "Visit before is blank or no day: write a date."],
    ["tank-and-cows", "test", "ratio", "counts holds no count: enter at least one"],
    ["lesion-costs", "to", "costs", "To is blank or no day: write a date."],
    ["side-by-side", "to", "lesions", "To is blank or no day: write a date."],
  ])("%s without %s", (block, input, part, sentence) => {
    expect(told(block, input, part)).toBe(sentence);
  });

  test("none is cured where no cow is asked for", () => {
    const whatIf = gallery.find(({ id }) => id === "what-if")!;
    const { parts } = computeBlock(whatIf, data, specOf, { highest: 0 });
    const refused = parts.flatMap((part) => (part.kind === "refused" ? [part.part.id] : []));
    expect(refused).toEqual(["from", "cured", "curedMoney", "curedTank"]);
  });
});
