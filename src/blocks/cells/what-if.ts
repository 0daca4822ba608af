import { USUAL_LIMIT_THOUSAND } from "../../core/cells/high-counts";
import type { Block, Figure } from "../block";
import { largest } from "../expression/aggregates";
import { call } from "../expression/call";
import { type Expression, literal } from "../expression/expression";
import { ifNumber } from "../expression/if-number";
import { arithmetic, iff, is, isNumber } from "../expression/operators";
import { input, part } from "../expression/places";
import { counts, days, lactations, LOSS_NOTES, milk, milkPrice, ofTest, testDay, tests } from "./inputs";

/** Up to this count no model here reckons a loss: a cow that is cured. */
const NO_LOSS = 50;
const USUAL_COWS = 5;

/** The counts of the test, those that meet the condition put down to another. */
function changed(isHigh: (count: Expression) => Expression, to: Expression): Expression {
  const { count } = tests;
  return ofTest(iff(isNumber(count), iff(isHigh(count), to, count), count));
}

/** No cow is cured, and no count is cut down, where a cell that says how far was cleared. */
function ofHighest(value: Expression): Expression {
  return ifNumber(input("highest"), value, "Highest cows cured is blank, below 1 or no number: write how many.", 1);
}

const cured = ofHighest(
  changed((count) => iff(is(count, ">", NO_LOSS), is(count, ">=", part("from")), false), literal(NO_LOSS)),
);
const allBelow = ifNumber(
  input("ceiling"),
  changed((count) => is(count, ">", input("ceiling")), input("ceiling")),
  "No cow above is blank, below 1 or no number: write a count.",
  1,
);

function milkOf(id: string, label: string, of: Expression): Figure {
  return { kind: "figure", id, label, value: call("CELL.HERDLOSS", of, lactations, input("days")), format: "#,##0" };
}

function lessThanNow(id: string, label: string, than: string): Figure {
  const money = arithmetic(arithmetic(part("now"), "-", part(than)), "*", input("milkPrice"));
  const value = ifNumber(input("milkPrice"), money, "Milk price is blank or no number: write the price of a litre.");
  return { kind: "figure", id, label, value, format: "#,##0" };
}

export const whatIf: Block = {
  id: "what-if",
  title: "What if",
  about: "The loss that would be left if the highest cows were cured, or if no cow were above a count.",
  screen: "cells",
  inputs: [
    testDay,
    days,
    milkPrice,
    { name: "highest", label: "Highest cows cured", usual: literal(USUAL_COWS), format: "0" },
    { name: "ceiling", label: "No cow above, thousand cells/mL", usual: literal(USUAL_LIMIT_THOUSAND), format: "0" },
  ],
  parts: [
    milkOf("now", "Litres lost as it is", counts),
    { kind: "figure", id: "from", label: "The highest cows are those from", value: ofHighest(largest(counts, input("highest"))), format: "#,##0" }, // oxfmt-ignore
    milkOf("cured", "Litres lost with those cured", cured),
    lessThanNow("curedMoney", "Money less than now", "cured"),
    { kind: "figure", id: "curedTank", label: "Tank then, thousand cells/mL", value: call("TANK.ESTIMATE", cured, milk), format: "#,##0" }, // oxfmt-ignore
    milkOf("below", "Litres lost with no cow above the count", allBelow),
    lessThanNow("belowMoney", "Money less than now", "below"),
    { kind: "figure", id: "belowTank", label: "Tank then, thousand cells/mL", value: call("TANK.ESTIMATE", allBelow, milk), format: "#,##0" }, // oxfmt-ignore
  ],
  charts: [],
  notes: [
    "Cured is reckoned as 50 thousand cells/mL, from which the models count no loss. Cows that tie with the last are cured too.",
    "It says what is at stake, not what a treatment would bring: talk to the licensed veterinarian.",
    ...LOSS_NOTES,
  ],
};
