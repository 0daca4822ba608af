import { nextLook } from "../../../src/core/claws/next-look";
import { day } from "../../../src/core/shared/days";

/** First, second and third recheck after 7, 28 and 35 days. */
const rule = { lesion: "SU", firstRecheckDays: 7, secondRecheckDays: 28, thirdRecheckDays: 35 };
const treatedOn = day("2024-02-20");
const [first, second, third] = [day("2024-02-27"), day("2024-03-19"), day("2024-03-26")];

const look = (seen: string, dueOn: number, outcome: "better" | "same" | "worse" = "same") =>
  nextLook(rule, { treatedOn, seenOn: day(seen), dueOn, outcome });

describe("the next look at a foot that is not healed", () => {
  test("is the rule's next recheck, for better and for same", () => {
    expect(look("2024-02-27", first)).toBe(second);
    expect(look("2024-03-02", first, "better")).toBe(second);
    expect(look("2024-03-19", second)).toBe(third);
  });

  test("passes over a recheck that was done before its day", () => {
    expect(look("2024-02-26", first)).toBe(second);
    expect(look("2024-03-18", second)).toBe(third);
  });

  test("begins anew after the last recheck: 26 March + 7 days", () => {
    expect(look("2024-03-26", third)).toBe(day("2024-04-02"));
  });

  test("comes no later than the days to the first recheck where the foot is worse", () => {
    expect(look("2024-02-27", first, "worse")).toBe(day("2024-03-05"));
    expect(look("2024-03-17", first, "worse")).toBe(second);
  });

  test("is not known without a rule, or where the rule has no rechecks", () => {
    const seen = { treatedOn, seenOn: first, dueOn: first, outcome: "same" } as const;
    expect(nextLook(undefined, seen)).toBeUndefined();
    expect(nextLook({ lesion: "HHE" }, seen)).toBeUndefined();
  });
});
