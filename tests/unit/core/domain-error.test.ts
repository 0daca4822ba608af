import { DomainError, invalid, shown, unavailable } from "../../../src/core/shared/domain-error";

test("what is wrong is told apart from what is missing, and both are known by their name", () => {
  const wrong = invalid("milkKg", "at least 0 kg", -1);
  expect([wrong.name, wrong.kind, wrong.message]).toEqual([
    "DomainError",
    "invalid",
    "milkKg must be at least 0 kg; got -1",
  ]);
  const missing = unavailable("enter the milk");
  expect([missing.name, missing.kind, missing.message]).toEqual(["DomainError", "unavailable", "enter the milk"]);
  expect(missing).toBeInstanceOf(DomainError);
});

test("a value is shown as the sheet shows it", () => {
  expect([2.5, true, false, null, undefined, "DD", ""].map(shown)).toEqual([
    "2.5",
    "TRUE",
    "FALSE",
    "a blank",
    "a blank",
    '"DD"',
    '""',
  ]);
});

test("text of 40 characters is shown whole, longer text is cut there and says so", () => {
  const forty = "treated on the 3rd, block, bandage, seen";
  expect(forty.length).toBe(40);
  expect(shown(forty)).toBe(`"${forty}"`);
  expect(shown(`${forty}!`)).toBe(`"${forty}…"`);
});
