import { recheckPlan } from "../../functions/claws/recheck-plan";
import { trimPlan } from "../../functions/claws/trim-plan";
import { CLAWS, FEET, LANDMARKS } from "../../workbook/tables";
import type { NewSheet, NewValidation } from "../../xlsx/write-model";
import { FORMATS, STYLES } from "../look";
import { ALIGNED, Page, resultColumns } from "../page";
import { LESION_CODES, TREATMENT_LIST } from "./data-sheet";

const left = { ...STYLES.computed, horizontal: "left" } as const;
const TOES_AT = 40;

/** One foot at a time, and the last trimming day. */
export function trimmingSheet(): NewSheet {
  const page = new Page("Trimming", "Trimming checks", "Change the sand-coloured cells to the foot in hand.");
  oneFoot(page);
  heelsAndAngle(page);
  aftercare(page);
  lastTrimmingDay(page);
  page.put(
    "A3",
    "Trimming is for trained people. A claw that is short, a sole that yields or shows pink: stop.",
    STYLES.warn,
  );
  for (const column of ["B", "C", "D", "E", "F"]) page.put(`${column}3`, null, STYLES.warn);
  return page.sheet({
    tabColour: "#7A5C86",
    widths: [30, 24, 22, 56, 62, 3],
    frozenRows: 2,
    print: { landscape: true, pagesDown: 1 },
  });
}

function choose(page: Page, area: string, words: readonly string[]): void {
  page.validate({
    area,
    rule: { type: "list", source: `"${words.join(",")}"` },
    refusal: `Choose one of: ${words.join(", ")}.`,
  });
}

const fromList = (area: string, source: string): NewValidation => ({
  area,
  rule: { type: "list", source },
  refusal: "Choose from the list.",
  warnOnly: true,
});

function oneFoot(page: Page): void {
  page.section("A5", "One foot", 5);
  page
    .input("A6", "Foot", "RH")
    .input("A7", "Toe of the inner claw, mm", 88)
    .input("A8", "Toe of the outer claw, mm", 93);
  page
    .input("A9", "Measured from", "hard horn")
    .input("A10", "Lactation", 3)
    .input("A11", "Walks", "lame")
    .input("A12", "Lesion", "SU");
  choose(page, "B6", FEET);
  choose(page, "B9", LANDMARKS);
  choose(page, "B11", ["lame", "sound"]);
  page.validate(fromList("B12", LESION_CODES));
  const text = { ...STYLES.computed, ...ALIGNED.text, wrap: true };
  page.fill(
    "C6",
    "HERD.TRIM.PLAN(B6,B7,B8,B9,B10,B11,B12)",
    resultColumns(trimPlan).map(() => text),
    6,
    STYLES.computedHeading,
  );
  for (let row = 7; row <= 11; row++) page.height(row, 31);
  page.figure("A14", "Claw to start with", "HERD.CLAW.REFERENCE(B6)");
  page.figure("A15", "Leave at least, mm", "HERD.TOE.MINIMUM(B9,B10)");
  page.figure("A16", "Inner claw", "HERD.TOE.CHECK(B7,B9,B10)");
  page.figure("A17", "Outer claw", "HERD.TOE.CHECK(B8,B9,B10)");
}

function heelsAndAngle(page: Page): void {
  page.section("A19", "Heels, angle, an old mark on the wall", 5);
  page.input("A20", "Inner heel, mm", 38).input("A21", "Outer heel, mm", 44);
  page.figure("C20", "Heels", "HERD.CLAW.BALANCE(B20,B21,B6)");
  page.input("A22", "Angle of the toe, degrees", 48);
  page.figure("C22", "Angle", "HERD.CLAW.ANGLE(B22)");
  page.input("A23", "Mark below the skin, mm", 36);
  page.figure("C23", "Months since it arose", "HERD.CLAW.GROWOUT(B23)", FORMATS.one);
  page.input("A24", "Toe to look up the sole of, mm", 76).input("A25", "Claw", "inner");
  choose(page, "B25", CLAWS);
  page.figure("C24", "Sole to expect, mm", "HERD.TOE.SOLE(B24,B25)", FORMATS.one);
}

function aftercare(page: Page): void {
  page.section("A27", "After a treatment", 5);
  page
    .input("A28", "Lesion", "SU")
    .input("A29", "Treated on", 46259, FORMATS.day)
    .input("A30", "Treatment", "trim, block, pain relief");
  page.validate(fromList("B28", LESION_CODES));
  page.validate(fromList("B30", TREATMENT_LIST));
  page.figure("A31", "Last day of pain relief", "HERD.RECHECK.PAINRELIEF(B29)", FORMATS.day);
  page.figure("A32", "Look at the block", "HERD.RECHECK.BLOCKOFF(B29)", FORMATS.day);
  page.table("C28", "HERD.RECHECK.PLAN(B28,B29,B30,Rules[#All])", recheckPlan, 9);
  page.input("A34", "Last dose on", null, FORMATS.day).input("A35", "Hours on the label", null);
  page.figure(
    "A36",
    "Milk or meat may go from",
    'IFNA(HERD.WITHDRAWAL.CLEAR(B34,B35),"enter the dose and the label\'s hours")',
    FORMATS.day,
  );
  page.put(
    "A37",
    "The waiting time stands on the label or in the veterinarian's instruction; there is no usual one.",
    STYLES.note,
  );
}

function lastTrimmingDay(page: Page): void {
  page.section(`A${TOES_AT}`, "Toes measured on the last trimming day", 5);
  page.figure(`A${TOES_AT + 1}`, "Day", 'MAXIFS(Findings[Date],Findings[Lesion],"none")', FORMATS.day);
  const day = `$B$${TOES_AT + 1}`;
  const count = (words: string): string => `COUNTIFS(Findings[Date],${day},Findings[Toe advice],"${words}*")`;
  page.figure(`A${TOES_AT + 2}`, "To leave", count("leave"));
  page.figure(`A${TOES_AT + 3}`, "To shorten", count("shorten"));
  page.figure(`A${TOES_AT + 4}`, "Short: not to be cut", count("short:"));
  page.headings(`C${TOES_AT + 1}`, ["Cow", "Advice"]);
  const wanted = `(Findings[Date]=${day})*ISNUMBER(Findings[Toe mm])`;
  page.fill(`C${TOES_AT + 2}`, `FILTER(HSTACK(Findings[Cow],Findings[Toe advice]),${wanted},"none")`, [left, left], 40);
  page.highlight({
    area: `C${TOES_AT + 2}:D${TOES_AT + 42}`,
    formula: `LEFT($D${TOES_AT + 2},6)="short:"`,
    style: STYLES.warn,
  });
}
