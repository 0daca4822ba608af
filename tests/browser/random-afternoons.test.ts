import { RANDOM_SEED } from "../random";
import { TestPage } from "./test-page";

/** Sequences of actions. RANDOM_AFTERNOONS raises it for a long run. */
const COUNT = Number(process.env["RANDOM_AFTERNOONS"] ?? 80);
/** A machine at other work may take long: for the page, and for each sequence. */
const SLOW = 120_000 + COUNT * 1_000;
jest.setTimeout(SLOW);

let host: TestPage;
beforeAll(async () => {
  host = await TestPage.start({ name: "random-page", today: new Date("2026-03-10T09:00:00") });
}, SLOW);
afterAll(() => host.close());

test("whatever is done in the pane as drawn, every saved row stands once and nothing typed is lost", async () => {
  const { page, errors } = await host.open();
  const asked = [COUNT, RANDOM_SEED] as const;
  expect(await page.evaluate(([count, seed]) => window.runSequences(count, seed), asked)).toBe("");
  expect(errors).toEqual([]);
});
