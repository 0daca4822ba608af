import type { Page } from "playwright-core";
import { registry } from "../../src/functions/registry";
import { readWorkbook } from "../../src/xlsx/read";
import { cowField, openRecord, press } from "./at-the-chute";
import { readTable } from "./sample";
import { type SharedTrial, trialForEachTest } from "./trial-page";

/** Dozens of cows typed key by key on a small machine. */
const SLOW = 600_000;
jest.setTimeout(SLOW);

/** 1 September 2026, the day of the sample: by the JS Date, which the pane does not use. */
const TODAY = (Date.UTC(2026, 8, 1) - Date.UTC(1899, 11, 30)) / 86_400_000;
/** A few cows of every sort of visit; AFTERNOON_COWS=30 enters a whole afternoon, which takes minutes. */
const COWS = Number(process.env["AFTERNOON_COWS"] ?? 8);

type Cells = Readonly<Record<string, unknown>>;

/** What a trimmer types for a cow, and what must then stand in the workbook, by heading. Blank cells are left out. */
interface Visit {
  readonly keys: string;
  /** Typed into fields by their label, after the keys. */
  readonly fields?: Readonly<Record<string, string>>;
  readonly button?: string;
  readonly said: string;
  readonly findings: readonly Cells[];
  readonly notes?: readonly string[];
  readonly score: number;
}

const MEASURED = { "Measured from": "hard horn" };

/** "⏎" is Enter. Toe lengths are asked for at each foot; a bare Enter leaves one out. */
const VISITS: readonly Visit[] = [
  { keys: "0n", said: "nothing found", findings: [{ Lesion: "none" }], score: 0 },
  {
    keys: "2lh78⏎80⏎o4⏎su⏎2arh⏎⏎b0⏎dd⏎21⏎",
    said: "2 findings",
    findings: [
      { Foot: "LH", Claw: "outer", Zone: 4, Lesion: "SU", Severity: 2, "Toe mm": 80, ...MEASURED },
      { Foot: "RH", Zone: 0, Lesion: "DD", Stage: "M2", Severity: 1 },
    ],
    notes: ["LH inner toe 78 mm from hard horn"],
    score: 2,
  },
  {
    keys: "1lf⏎⏎b0⏎dd⏎33⏎",
    said: "1 finding",
    findings: [{ Foot: "LF", Zone: 0, Lesion: "DD", Stage: "M3", Severity: 3 }],
    score: 1,
  },
  {
    keys: "3rh⏎⏎o4⏎su⏎3",
    fields: { "Drug, as on its label": "invented relief", "Milk held, hours": "24", "Meat held, days": "5" },
    button: "Save",
    said: "1 finding",
    findings: [{ Foot: "RH", Claw: "outer", Zone: 4, Lesion: "SU", Severity: 3 }],
    notes: ["drug invented relief", "milk withdrawal 24 h", "meat withdrawal 5 d"],
    score: 3,
  },
  {
    keys: "0rh85⏎82⏎o2⏎wl⏎1⏎",
    said: "1 finding",
    findings: [{ Foot: "RH", Claw: "outer", Zone: 2, Lesion: "WL", Severity: 1, "Toe mm": 82, ...MEASURED }],
    notes: ["RH inner toe 85 mm from hard horn"],
    score: 0,
  },
  { keys: "1", button: "Save the score alone", said: "score", findings: [], score: 1 },
];

const trial = trialForEachTest();

async function enter({ page, pane }: SharedTrial, cow: unknown, visit: Visit): Promise<void> {
  await cowField(pane).focus();
  await press(page, `${String(cow)}⏎${visit.keys}`);
  for (const [label, text] of Object.entries(visit.fields ?? {})) await pane.getByLabel(label).fill(text);
  if (visit.button !== undefined) await pane.getByRole("button", { name: visit.button, exact: true }).click();
  const saved = pane.getByRole("heading", { name: `Saved. Cow ${String(cow)}, ${visit.said}` });
  const question = pane.getByRole("button", { name: "Yes" });
  await saved.or(question).first().waitFor();
  // The screen may ask back, as of a lesion that she has had of late; it is as it was typed.
  for (; await question.first().isVisible(); await saved.or(question).first().waitFor()) {
    await question.first().click();
    await pane.getByRole("button", { name: "Save", exact: true }).click();
  }
}

/** Days after which an earlier finding is no longer asked about. */
const LONG_AGO_DAYS = 120;

/** Cows that are in the herd and have no finding of late, by which nothing asks back. */
async function quietCows(page: Page): Promise<readonly unknown[]> {
  const cows = await readTable(page, "Cows", "Cows");
  const findings = await readTable(page, "Findings", "Findings");
  const late = findings.rows.filter(({ Date: day }) => Number(day) > TODAY - LONG_AGO_DAYS);
  const known = new Set(late.map(({ Cow }) => Cow));
  const here = cows.rows.filter(({ Left }) => Left === null || Left === undefined || Left === "");
  return here.map(({ Cow }) => Cow).filter((cow) => !known.has(cow));
}

/** The cells of a row that are typed, blank ones left out. */
function typed(row: Cells, headings: readonly string[]): Cells {
  const filled = headings.filter((heading) => !["", null, undefined].includes(row[heading] as never));
  return Object.fromEntries(filled.map((heading) => [heading, row[heading]]));
}
const TYPED = ["Date", "Cow", "Foot", "Claw", "Zone", "Lesion", "Stage", "Severity", "Toe mm", "Measured from"];

test("a trimmer's afternoon: what was typed for all cows stands in the workbook once, and in its saved copy", async () => {
  const { page, pane } = trial;
  await openRecord(pane);
  const before = {
    findings: await readTable(page, "Findings", "Findings"),
    scores: await readTable(page, "Scores", "Scores"),
  };
  const cows = (await quietCows(page)).slice(0, COWS);
  expect(cows).toHaveLength(COWS);
  await pane.locator("details.visit summary").click();
  await pane.getByRole("radio", { name: "where the horn turns hard" }).click();
  const afternoon = cows.map((cow, index) => ({ cow, visit: VISITS[index % VISITS.length]! }));
  for (const { cow, visit } of afternoon) await enter(trial, cow, visit);

  const expected = {
    findings: afternoon.flatMap(({ cow, visit }) =>
      visit.findings.map((cells) => ({ Date: TODAY, Cow: cow, ...cells })),
    ),
    scores: afternoon.map(({ cow, visit }) => ({ Date: TODAY, Cow: cow, Score: visit.score })),
  };
  const findings = await readTable(page, "Findings", "Findings");
  const scores = await readTable(page, "Scores", "Scores");
  const added = findings.rows.slice(before.findings.rows.length);
  expect(added.map((row) => typed(row, TYPED))).toEqual(expected.findings);
  expect(scores.rows.slice(before.scores.rows.length).map((row) => typed(row, ["Date", "Cow", "Score"]))).toEqual(
    expected.scores,
  );
  // What was there is as it was.
  expect(findings.rows.slice(0, before.findings.rows.length).map((row) => typed(row, TYPED))).toEqual(
    before.findings.rows.map((row) => typed(row, TYPED)),
  );
  for (const { cow, visit } of afternoon) {
    const note = String(added.find(({ Cow }) => Cow === cow)?.["Note"] ?? "");
    for (const part of visit.notes ?? []) expect(note).toContain(part);
  }

  const [download] = await Promise.all([page.waitForEvent("download"), page.click("#save")]);
  const pieces: Buffer[] = [];
  for await (const piece of await download.createReadStream()) pieces.push(piece as Buffer);
  const { sheets } = readWorkbook(
    Buffer.concat(pieces),
    registry.map(({ id }) => id),
  );
  const saved = (name: string, headings: readonly string[]): readonly Cells[] => {
    const sheet = sheets.find((one) => one.name === name)!;
    const { area } = sheet.tables.find((table) => table.name === name)!;
    const valueAt = new Map(sheet.cells.map(({ row, column, value }) => [`${row} ${column}`, value]));
    const rowAt = (row: number): readonly unknown[] =>
      Array.from({ length: area.lastColumn - area.firstColumn + 1 }, (_, at) => valueAt.get(`${row} ${area.firstColumn + at}`)); // oxfmt-ignore
    const titles = rowAt(area.firstRow).map(String);
    const rows = Array.from({ length: area.lastRow - area.firstRow }, (_, at) => rowAt(area.firstRow + 1 + at));
    return rows.map((row) => typed(Object.fromEntries(titles.map((title, at) => [title, row[at]])), headings));
  };
  expect(saved("Findings", TYPED).slice(before.findings.rows.length)).toEqual(expected.findings);
  expect(saved("Scores", ["Date", "Cow", "Score"]).slice(before.scores.rows.length)).toEqual(expected.scores);
});
