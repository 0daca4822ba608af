import { type TwoTestStatus, twoTestStatus } from "../../core/cells/two-tests";
import { dohooLeslie1991 } from "../../core/reference/dohoo-leslie-1991";
import { fauteux2014 } from "../../core/reference/fauteux-2014";
import { jashari2016 } from "../../core/reference/jashari-2016";
import { unavailable } from "../../core/shared/domain-error";
import { defineFunction, optional } from "../define";
import { cellCount, type CountUnit, inThousands, NO_DIAGNOSIS, unitParameter } from "./kinds";
import { limitInThousands, limitParameter } from "./kinds-of-tests";

interface Given {
  readonly previous: number | undefined;
  readonly current: number | undefined;
  readonly limit: number | undefined;
  readonly unit: CountUnit;
}

export const cellStatus = defineFunction({
  id: "CELL.STATUS",
  group: "Cell counts",
  summary:
    "What two tests in a row say of a cow: low, new, recovered or lasting; first high or first low without an earlier test.",
  parameters: {
    previous: optional(cellCount, "Cell count of the test before", "this is the first test: first high or first low"),
    current: optional(cellCount, "Cell count of this test", "#N/A"),
    limit: limitParameter,
    unit: unitParameter,
  },
  result: { shape: "scalar", type: "text" },
  sources: [fauteux2014, dohooLeslie1991, jashari2016],
  limits: [
    "Both tests must be of the same lactation and about a month apart; over the dry period see CELL.DRYPERIOD.",
    "One test at 200 thousand finds under half of the infected cows and calls some healthy ones high (Jashari 2016: sensitivity 44 %, specificity 87 %).",
  ],
  cautions: [NO_DIAGNOSIS],
  examples: [
    {
      arguments: [150, 200],
      result: "new",
      origin: "printed",
      where: "Fauteux 2014: 200,000 or more is high; low before, high now",
    },
    { arguments: [250, 199], result: "recovered", origin: "printed", where: "Fauteux 2014: high before, low now" },
    { arguments: [null, 300], result: "first high", origin: "hand", where: "no earlier test, 300 is above 200" },
    { arguments: [160, 140, 150], result: "recovered", origin: "hand", where: "limit 150: 160 is high, 140 is low" },
  ],
  compute: (given) => read(given).status,
  steps(given, status) {
    const { previous, current, limit } = read(given);
    const word = (count: number): string => (count >= limit ? "high" : "low");
    return [
      {
        label: "Test before",
        working: previous === undefined ? "none" : `${previous} against ${limit} thousand`,
        value: previous === undefined ? "first test" : word(previous),
      },
      { label: "This test", working: `${current} against ${limit} thousand`, value: word(current) },
      { label: "Status", working: "exactly the limit is high", value: String(status) },
    ];
  },
});

function read({ previous, current, limit, unit }: Given): {
  readonly previous: number | undefined;
  readonly current: number;
  readonly limit: number;
  readonly status: TwoTestStatus;
} {
  if (current === undefined) throw unavailable("current is blank: enter the cell count of this test");
  const before = previous === undefined ? undefined : inThousands(previous, unit, "previous");
  const now = inThousands(current, unit, "current");
  const from = limitInThousands(limit, unit);
  return { previous: before, current: now, limit: from, status: twoTestStatus(before, now, from) };
}
