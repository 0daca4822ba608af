import { day } from "../../core/shared/days";
import type { FarmList, ListCell } from "./list";
import { type FarmLists, writtenDay } from "./lists";

const AHEAD = day("2027-04-12");
const HORN_WORDS = ["sole ulcer", "white line", "bruising"];

/** Puts every kind of mistake that the check knows into the lists, each once or twice. */
export function plantMistakes(lists: FarmLists): void {
  inCows(lists);
  inFeet(lists);
  inMilk(lists);
  inWalking(lists);
}

function inCows({ cows, feet, milk, walking }: FarmLists): void {
  const recorded = new Set([feet, milk, walking].flatMap((list) => list.rows.map((_, row) => list.get(row, "Tag"))));
  const withoutRecords = (get: (heading: string) => ListCell): boolean => !recorded.has(get("Tag"));
  const young = cows.find((get) => get("Went") === null);
  cows.plant("impossible date", young, "Last calving", Number(cows.get(young, "DOB")) + 100);
  const later = cows.find((get) => get("Went") === null && Number(get("Lact no")) > 1);
  cows.plant("date out of time", later, "Last calving", AHEAD);
  cows.plant("text number", cows.find((get) => Number(get("Lact no")) === 3), "Lact no", "3"); // oxfmt-ignore
  const gone = cows.find((get) => withoutRecords(get) && get("Went") !== null);
  cows.plant("impossible date", gone, "Went", Number(cows.get(gone, "Last calving")) - 3);
  cows.plantDouble(cows.find((get) => get("Went") === null), "Tag"); // oxfmt-ignore
}

function inFeet({ feet }: FarmLists): void {
  const found = (...words: string[]): number => feet.find((get) => words.includes(String(get("What found"))) && get("Leg") !== null); // oxfmt-ignore
  const measured = (): number => feet.find((get) => get("Toe cm") !== null && get("What found") === "clean");
  const horn = (): number => feet.find((get) => HORN_WORDS.includes(String(get("What found"))) && get("Inside/outside") !== null); // oxfmt-ignore
  feet.plant("text date", found("clean"), "Visit", "05/23/2026");
  feet.plant("text date", found("clean"), "Visit", "31/06/2026");
  feet.plant("date out of time", found("clean"), "Visit", writtenDay(AHEAD));
  feet.plant("unknown cow", found("clean"), "Tag", 9014);
  const padded = found("clean");
  feet.plant("unknown cow", padded, "Tag", `#0${String(feet.get(padded, "Tag"))}`);
  feet.plant("finding without foot or claw", found("slurry heel"), "Leg", null);
  feet.plant("finding without foot or claw", horn(), "Inside/outside", null);
  feet.plant("mixed unit", measured(), "Toe cm", 84);
  feet.plant("toe length", measured(), "Toe cm", 4.1);
  feet.plant("toe length", measured(), "Measured from", null);
  feet.plant("treatment without recheck", lastOfItsFoot(feet), "Look again", null);
  const early = found("digi", "hairy wart");
  feet.plant("impossible date", early, "Look again", Number(feet.get(early, "Look again")) - 60);
  const treated = found("foul");
  feet.plant("withdrawal left blank", treated, "Medicine", "antibiotic, by the vet", "Withdrawal");
  const noted = found("digi", "hairy wart");
  feet.rows[noted]![feet.headings.indexOf("Medicine")] = "oxytetracycline spray";
  feet.rows[noted]![feet.headings.indexOf("Withdrawal")] = "as on the label, see medicine book";
  feet.plant("unknown lesion", found("slurry heel"), "What found", "bad un");
  feet.plant("row without cow or date", found("clean"), "Tag", null);
  feet.plantDouble(found("digi", "hairy wart"), "Tag");
}

/** A treated wart that stands in no later row of the same cow and leg. */
function lastOfItsFoot(feet: FarmList): number {
  const isWart = (row: number): boolean => ["digi", "hairy wart"].includes(String(feet.get(row, "What found")));
  return feet.find((get) => {
    if (!["digi", "hairy wart"].includes(String(get("What found"))) || get("What done") === null) return false;
    const same = feet.rows.filter((_, row) => isWart(row) && feet.get(row, "Tag") === get("Tag") && feet.get(row, "Leg") === get("Leg")); // oxfmt-ignore
    return same.length === 1;
  });
}

function inMilk({ milk, cows }: FarmLists): void {
  const counted = (): number => milk.find((get) => typeof get("Cells/ml") === "number");
  milk.plant("mixed unit", counted(), "Cells/ml", 240);
  milk.plant("capped count", counted(), "Cells/ml", 9_999_000);
  milk.plant("zero count", counted(), "Cells/ml", 0);
  milk.plant("text number", counted(), "Cells/ml", "185000");
  milk.plant("mixed unit", counted(), "Litres", 412);
  milk.plant("unreadable cell", counted(), "DIM", "1o4");
  const middle = betweenTests(milk);
  milk.plant("lactation going down", middle, "Lact no", Number(milk.get(middle, "Lact no")) - 1);
  milk.plantDouble(counted(), "Tag");
  const lastTest = Math.max(...milk.rows.map((_, row) => Number(milk.get(row, "Test day"))));
  const gone = cows.find((get) => Number(get("Went")) > 0 && Number(get("Went")) < lastTest - 30);
  milk.plantRow(
    "impossible date",
    { Tag: cows.get(gone, "Tag"), "Test day": lastTest, Litres: 22.4, "Cells/ml": 96_000, Butterfat: 4.1 },
    "Test day",
  );
}

/** A row of a later lactation with rows of the same lactation before and after it. */
function betweenTests(milk: FarmList): number {
  return milk.find((get) => {
    const [tag, lactation, date] = [get("Tag"), get("Lact no"), Number(get("Test day"))];
    const days = milk.rows.flatMap((_, row) => (milk.get(row, "Tag") === tag && milk.get(row, "Lact no") === lactation ? [Number(milk.get(row, "Test day"))] : [])); // oxfmt-ignore
    return Number(lactation) > 1 && days.some((day) => day < date) && days.some((day) => day > date);
  });
}

function inWalking({ walking }: FarmLists): void {
  const scored = (): number => walking.find((get) => typeof get("Mobility 0-3") === "number");
  walking.plant("score off the scale", scored(), "Mobility 0-3", 7);
  walking.plant("score off the scale", scored(), "Mobility 0-3", 1.5);
  walking.plant("unreadable cell", scored(), "Mobility 0-3", "2?");
  walking.plant("date out of time", scored(), "Scored on", AHEAD);
  walking.plantDouble(scored(), "Tag");
}
