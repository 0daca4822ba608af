import { day } from "../../../../src/core/shared/days";
import { rulesInForce } from "../../../../src/taskpane/rules";
import { contentOf } from "../../../../src/taskpane/screens/record/content";
import { initialState } from "../../../../src/taskpane/screens/record/model";
import type { RecordState } from "../../../../src/taskpane/screens/record/state";
import { herdOf, TODAY } from "./herd";
import { Typist } from "./typist";

/** The save that the screen asks for. */
function saveOf({ phase }: RecordState) {
  if (phase.kind !== "saving") throw new Error(`nothing is saved: ${phase.kind}`);
  return phase.planned.save;
}

test("a cow with two findings takes fewer than 25 keys beside the numbers", async () => {
  const typist = (await Typist.at()).type("12⏎").type("2").type("lh").type("o").type("4⏎").type("su⏎").type("2");
  typist.type("a").type("rh").type("b").type("0⏎").type("dd⏎").type("2").type("1").type("⏎");
  expect(saveOf(typist.state)).toEqual({
    id: "id-1",
    title: "Cow 12, 2 findings",
    changes: [
      {
        append: "Findings",
        rows: [
          {
            Date: { day: TODAY }, Cow: 12, Lactation: 3, "Days in milk": 110, Foot: "LH", Claw: "outer", Zone: 4,
            Lesion: "SU", Severity: 2, Treatment: "trim, block on inner claw 28 d, pain relief 3 d",
            Note: "milk and meat withdrawal not entered",
          },
          {
            Date: { day: TODAY }, Cow: 12, Lactation: 3, "Days in milk": 110, Foot: "RH", Zone: 0,
            Lesion: "DD", Stage: "M2", Severity: 1, Treatment: "topical 3 times every 7 d, bandage 24 h",
            Note: "milk and meat withdrawal not entered",
          },
        ],
      },
      { append: "Scores", rows: [{ Date: { day: TODAY }, Cow: 12, Score: 2 }] },
    ],
  }); // oxfmt-ignore
  expect(typist.keystrokes).toBeLessThan(25);
});

describe("keys typed before the list of cows is read", () => {
  const keys = (cow: string) => `${cow}⏎2lho4⏎su⏎2`;

  test.each([
    ["nothing is read", () => Promise.resolve(new Typist(initialState(TODAY, "id-1")))],
    ["a book without cows is read", () => Typist.at({ cows: [] })],
  ])("go where they belong while %s, and are saved as if she had been there", async (_, open) => {
    const typist = (await open()).type(keys("12"));
    const wanted = (await Typist.at()).type(keys("12"));
    expect(typist.state.entry).toEqual(wanted.state.entry);
    const herd = await herdOf();
    typist.send({ type: "herd read", herd, rules: rulesInForce(herd.rules), past: [] }).type("⏎");
    expect(saveOf(typist.state)).toEqual(saveOf(wanted.type("⏎").state));
  });

  test("of a number that nobody has lead to the question before anything is saved", async () => {
    const typist = new Typist(initialState(TODAY, "id-1")).type(keys("4711"));
    const herd = await herdOf();
    typist.send({ type: "herd read", herd, rules: rulesInForce(herd.rules), past: [] }).type("⏎");
    expect(typist.state.phase.kind).toBe("typing");
    expect(typist.state.announced).toContain("The table Cows has no 4711.");
  });
});

test("with toe lengths it still takes fewer than 25", async () => {
  const typist = await Typist.at();
  typist.send({ type: "typed", field: "landmark", text: "hard horn" });
  typist.type("12⏎2").type("lh").type("85⏎88⏎").type("o4⏎su⏎2a").type("rh").type("84⏎86⏎").type("b0⏎dd⏎21⏎");
  expect(typist.state.phase.kind).toBe("saving");
  expect(typist.keystrokes).toBeLessThan(25);
});

test("one key says that nothing was found, and saves it", async () => {
  const typist = (await Typist.at()).type("12⏎0n");
  expect(saveOf(typist.state)).toEqual({
    id: "id-1",
    title: "Cow 12, nothing found",
    changes: [
      {
        append: "Findings",
        rows: [{ Date: { day: TODAY }, Cow: 12, Lactation: 3, "Days in milk": 110, Lesion: "none" }],
      },
      { append: "Scores", rows: [{ Date: { day: TODAY }, Cow: 12, Score: 0 }] },
    ],
  });
});

test("a lame cow without a finding is asked about first", async () => {
  const typist = (await Typist.at()).type("12⏎2n");
  expect(typist.state.phase.kind).toBe("typing");
  const [problem] = contentOf(typist.state).problemsAt("foot");
  expect(problem).toMatchObject({ kind: "ask", text: expect.stringContaining("veterinarian") as string });
  typist.send({ type: "agreed", question: problem!.question!, field: "foot" });
  expect(saveOf(typist.state).title).toBe("Cow 12, nothing found");
});

test("a number is never completed by guess", async () => {
  const typist = (await Typist.at()).type("1⏎");
  expect(typist.state.entry.cow).toBe("1");
  expect(contentOf(typist.state).problemsAt("cow")).toMatchObject([{ kind: "ask" }]);
  typist.send({ type: "typed", field: "cow", text: "12" }).type("⏎");
  expect(typist.state.entry.cow).toBe("12");
  expect(contentOf(typist.state).problemsAt("cow")).toEqual([]);
});

test("an unknown cow is written only after a yes, as a number, without a lactation", async () => {
  const typist = (await Typist.at()).type("999⏎");
  typist.send({ type: "chose", field: "score", value: "1" }, { type: "save" });
  expect(typist.state.phase.kind).toBe("typing");
  expect(typist.field).toBe("cow");
  typist.send({ type: "agreed", question: "unknown:999", field: "cow" }, { type: "save" });
  expect(saveOf(typist.state).changes).toEqual([
    { append: "Scores", rows: [{ Date: { day: TODAY }, Cow: 999, Score: 1 }] },
  ]);
});

test("cows are found by part of the number, those in the herd first", async () => {
  const typist = (await Typist.at()).type("2");
  const herd = typist.state.herd!;
  expect(herd.cows.find("12", TODAY, 6).map(({ name }) => name)).toEqual(["12", "123", "1234"]);
  expect(herd.cows.find("23", TODAY, 6).map(({ name }) => name)).toEqual(["123", "1234"]);
  expect(herd.cows.find("bel", TODAY, 6).map(({ name }) => name)).toEqual(["Bella"]);
});

describe("bad input is told beside its field", () => {
  const problemAt = async (field: Parameters<ReturnType<typeof contentOf>["problemsAt"]>[0], act: (typist: Typist) => Typist) =>
    contentOf(act(await Typist.at()).send({ type: "left", field }).state)
      .problemsAt(field)
      .map(({ kind, text }) => `${kind}: ${text}`)
      .join(" "); // oxfmt-ignore

  test.each([
    ["date", "2026-03-11", "stop: Date must be no later than today, 2026-03-10; got 2026-03-11."],
    ["date", "2026-02-30", "stop: Date must be a day, such as 2026-03-10."],
    ["date", "2025-03-10", "ask: 2025-03-10 is 365 days ago. Is the date right?"],
    ["score", "4", "stop: Score must be 0, 1, 2 or 3; got 4."],
  ] as const)("%s %s", async (field, text, expected) => {
    expect(await problemAt(field, (typist) => typist.type("12⏎").send({ type: "typed", field, text }))).toBe(expected);
  });

  test("a date before she was born", async () => {
    const told = await problemAt("date", (typist) =>
      typist.type("bella").type("⏎").send({ type: "typed", field: "date", text: "2023-12-31" }),
    );
    expect(told).toBe("stop: Cow Bella was born on 2024-01-01, after 2023-12-31.");
  });

  test("a toe length in cm", async () => {
    const told = await problemAt("toeInner", (typist) =>
      typist.send({ type: "typed", field: "landmark", text: "hard horn" }).type("12⏎2lh").type("8.5"),
    );
    expect(told).toBe("stop: LH inner toe is in mm: 8.5 looks like cm. Is it 85 mm?");
  });

  test("a toe length of a foot that was left again", async () => {
    const typist = (await Typist.at()).send({ type: "typed", field: "landmark", text: "hard horn" }).type("12⏎0lh8.5");
    typist.send({ type: "chose", field: "foot", value: "RH" }).type("⏎⏎o4⏎su⏎1⏎");
    expect(typist.state.phase.kind).toBe("typing");
    expect(contentOf(typist.state).problemsAt("toeInner")).toMatchObject([
      { text: "LH inner toe is in mm: 8.5 looks like cm. Is it 85 mm?" },
    ]);
  });

  test("a lesion that is not found in the zone", async () => {
    const told = await problemAt("lesion", (typist) => typist.type("12⏎2lho2⏎su⏎"));
    expect(told).toBe("ask: Sole ulcer is found in zone 4, 5, not in zone 2. Are both right?");
  });

  test("a cow that has left", async () => {
    expect(await problemAt("cow", (typist) => typist.type("1234⏎"))).toBe(
      "ask: Cow 1234 left on 2026-01-31. Is it she?",
    );
  });

  test("a word that is no disorder, with the nearest codes", async () => {
    const told = await problemAt("lesion", (typist) => typist.type("12⏎2lho").send({ type: "typed", field: "lesion", text: "SUU" })); // oxfmt-ignore
    expect(told).toMatch(/^stop: "SUU" is not in the claw disorder key\. Near: SU/);
  });

  test("a block on the claw with the lesion", async () => {
    const told = await problemAt("care.block", (typist) =>
      typist.type("12⏎2lho4⏎su⏎").send({ type: "typed", field: "care.block", text: "outer" }),
    );
    expect(told).toMatch(/^ask: The block is on the outer claw/);
  });
});

describe("the same cow twice on a day", () => {
  const row = { date: TODAY, cow: 12, foot: "LH", claw: "outer", lesion: "SU" };

  test("is told, and the same finding is asked about", async () => {
    const typist = (await Typist.at({ findings: [row] })).type("12⏎2lho4⏎su⏎2");
    const content = contentOf(typist.state);
    expect(content.problemsAt("cow")).toMatchObject([{ kind: "tell", text: "Already entered on this day: LH outer SU." }]);
    expect(content.problemsAt("lesion")).toMatchObject([{ kind: "ask" }]);
    expect(typist.send({ type: "save" }).state.phase.kind).toBe("typing");
  }); // oxfmt-ignore

  test("she is not called sound beside a finding", async () => {
    const typist = (await Typist.at({ findings: [row] })).type("12⏎0n");
    expect(typist.state.phase.kind).toBe("typing");
    expect(contentOf(typist.state).problemsAt("foot")).toMatchObject([{ kind: "stop" }]);
  });

  test("a finding takes the place of the row that called her sound", async () => {
    const sound = { date: TODAY, cow: 12, lesion: "none" };
    const typist = (await Typist.at({ findings: [sound] })).type("12⏎⏎lho4⏎su⏎2⏎");
    expect(saveOf(typist.state).changes).toMatchObject([
      { update: { table: "Findings", index: 0, cells: { Lesion: "none" } }, set: { Lesion: "SU", Foot: "LH" } },
    ]);
  });

  test("a second score of the day takes the place of the first", async () => {
    const typist = (await Typist.at({ scores: [{ date: TODAY, cow: 12, score: 1 }] })).type("12⏎2");
    expect(contentOf(typist.state).problemsAt("score")).toMatchObject([{ kind: "tell" }]);
    typist.send({ type: "save" });
    expect(saveOf(typist.state).changes).toEqual([
      expect.objectContaining({ update: expect.objectContaining({ index: 0 }) as unknown, set: { Score: 2 } }),
    ]);
  });
});

describe("what the pane says of a cow", () => {
  test("days to dry-off are told with a question once she has a lesion", async () => {
    const typist = (await Typist.at()).type("123⏎");
    expect(contentOf(typist.state).now).toEqual([]);
    typist.type("2lho4⏎su⏎");
    // 10 March to 13 April: 21 days left of March and 13.
    expect(contentOf(typist.state).now).toContainEqual(
      expect.objectContaining({ title: "Late in lactation", texts: expect.arrayContaining(["34 days to dry-off on 2026-04-13."]) as unknown }), // oxfmt-ignore
    );
  });

  test("a repeat cow and one that is lame most of the time", async () => {
    const findings = ["2025-06-01", "2025-09-01", "2026-01-01"].map((date) => ({ date: day(date), cow: 12, foot: "LH", lesion: "SU" })); // oxfmt-ignore
    const scores = [2, 3, 2, 1].map((score, index) => ({ date: day("2025-10-01") + 14 * index, cow: 12, score }));
    const { past } = contentOf((await Typist.at({ findings, scores })).type("12⏎").state);
    expect(past.map(({ title, texts }) => `${title}: ${texts[0]}`)).toEqual([
      "Repeat cow: 3 new cases in the last 12 months, most on LH.",
      "Lame most of the time: Lame at 3 of 4 scores in the last 12 months. Ask the veterinarian what can still be expected.",
    ]);
  });

  test("open rechecks and earlier findings", async () => {
    const findings = [{ date: day("2026-03-03"), cow: 12, foot: "LH", claw: "outer", zone: 4, lesion: "SU", treatment: "trim" }]; // oxfmt-ignore
    const content = contentOf((await Typist.at({ findings })).type("12⏎").state);
    expect(content.open[0]).toBe("first recheck, LH outer SU: 2026-03-10, today");
    expect(content.earlier).toEqual(["2026-03-03: LH outer zone 4, SU, trim"]);
    expect(content.cowLine).toBe("lactation 3 · 110 days in milk · high");
  });
});
