import { between, cycle, days, numbers, type Variant, written } from "./variant";

export const trimmersDiary: Variant = {
  farm: "a trimmer's diary, England",
  sheets: [
    {
      sheet: "Trimming 25-26",
      holds: "Findings",
      above: ["Foot trimming diary", "Started by hand in July"],
      columns: [
        ["Visit", "date", days("2025-07-02", 3)],
        ["Freeze brand", "cow", numbers(112, 4)],
        ["Leg", "foot", cycle("LH", "RH", "LH", "RF", "LF", "RH")],
        ["In/out", "claw", cycle("outer", "inner", "outer", null)],
        ["Problem found", "lesion", cycle("sole ulcer", "digi", "white line", "digi", "foul", "sole ulcer", "growth")],
        ["How bad", "severity", cycle(1, 2, 1, 3, 2)],
        ["What was done", "treatment", cycle("trim and block", "sprayed", "trim", "bandage", "trim")],
        ["See again", "nextLook", days("2025-07-30", 3)],
        ["Trimmer", "-", cycle("me", "me", "lad")],
        ["Remarks", "note", cycle(null, null, null, "kicks", null)],
      ],
      shownAsDays: ["Visit", "See again"],
    },
  ],
};

export const testDayPounds: Variant = {
  farm: "a milk test file in pounds, Wisconsin",
  sheets: [
    {
      sheet: "Sheet1",
      holds: "Tests",
      columns: [
        ["Barn name", "cow", cycle("Daisy", "Bess", "Ruby", "Olive", "Pearl", "Hazel", "Ivy", "Fern")],
        ["Test day", "date", written("mm/dd/yyyy", "2025-08-04", 1)],
        ["LACT", "lactation", cycle(1, 2, 3, 1, 4)],
        ["DIM", "daysInMilk", between(8, 330, 0)],
        ["Lbs", "milkKg", between(42, 118, 1)],
        ["SCC", "count", cycle(35, 120, 410, 66, 1890, 22, 245)],
        ["Fat %", "-", between(3.1, 4.6, 2)],
        ["Prot %", "-", between(2.9, 3.5, 2)],
      ],
    },
  ],
};

export const adviserFile: Variant = {
  farm: "an adviser's file, Ireland",
  sheets: [
    {
      sheet: "Cow file",
      holds: "Cows",
      columns: [
        ["Jumbo tag", "cow", numbers(301, 3)],
        ["D.O.B.", "born", days("2019-02-01", 37)],
        ["Lact No", "lactation", cycle(1, 3, 2, 5, 4)],
        ["Last calved", "calved", days("2025-02-01", 5)],
        ["Dried", "dryOff", cycle(day0(320), null, day0(335), null)],
        ["Came in", "entered", days("2021-02-01", 31)],
        ["Sold/died", "left", cycle(null, null, null, null, day0(300), null)],
        ["Pen", "group", cycle("high", "low", "fresh", "dry")],
        ["Sire", "-", cycle("AB12", "CD34", "EF56")],
      ],
      shownAsDays: ["D.O.B.", "Last calved", "Dried", "Came in", "Sold/died"],
    },
    {
      sheet: "Walk",
      holds: "Scores",
      columns: [
        ["Jumbo tag", "cow", numbers(301, 3)],
        ["Scored on", "date", days("2025-10-01", 0)],
        ["Loco score", "score", cycle(0, 1, 0, 2, 1, 3)],
        ["Scorer", "-", cycle("A", "B")],
      ],
      shownAsDays: ["Scored on"],
    },
  ],
};

export const shortHand: Variant = {
  farm: "a book in shorthand, Ontario",
  sheets: [
    {
      sheet: "Feet",
      holds: "Findings",
      columns: [
        ["When", "date", written("yyyy-mm-dd", "2025-09-01", 2)],
        ["Cow no", "cow", numbers(20, 2)],
        ["Ft", "foot", cycle("LR", "RR", "LF", "RF")],
        ["Cl", "claw", cycle("lat", "med", "lat", "lat")],
        ["Zn", "zone", cycle(4, 3, 10, 1, 0)],
        ["Dx", "lesion", cycle("SU", "WL", "DD", "DD", "HHE")],
        ["Toe (in)", "toeMm", between(2.9, 3.8, 2)],
        ["Rx", "treatment", cycle("block", "wrap", "topical", "trim")],
        ["Chk due", "nextLook", written("yyyy-mm-dd", "2025-09-15", 2)],
        ["Invoice", "-", numbers(9001, 1)],
        ["Comments", "note", cycle(null, "watch", null, null, null)],
      ],
    },
  ],
};

function day0(back: number): number {
  return 46_023 - back;
}
