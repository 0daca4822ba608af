import { clawZones, codesInZone, isUsualZone, usualZones } from "../../../src/core/claws/claw-zones";

// Zones and the lesions in them as the foot map of Shearer et al. 2004 has them, from memory.
test.each([
  ["SU", 4, true],
  ["TU", 1, true],
  ["BU", 6, true],
  ["WL", 3, true],
  ["DD", 10, true],
  ["SU", 1, false],
  ["WL", 4, false],
  ["DD", 4, false],
  ["IH", 6, false],
  ["CC", 4, true],
])("%s in zone %i: %s", (code, zone, expected) => {
  expect(isUsualZone(code, zone)).toBe(expected);
});

test("a zone whose place is not certain rules nothing out", () => {
  for (const zone of [7, 8, 9, 11, 12]) expect(isUsualZone("SU", zone)).toBe(true);
});

test("13 zones, each with a place, and lists that begin with what is found there", () => {
  expect(clawZones.map(({ zone }) => zone)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
  expect(codesInZone(0).slice(0, 4)).toEqual(["DD", "ID", "IP", "IH"]);
  expect(codesInZone(6)).toContain("BU");
  expect(codesInZone(6)).not.toContain("TU");
});

test("what takes the whole claw has no zones of its own, and ends the list of every zone", () => {
  expect(usualZones("SU")).toEqual([4, 5]);
  expect(usualZones("CC")).toBeUndefined();
  for (const { zone } of clawZones) expect(codesInZone(zone).slice(-4)).toEqual(["AC", "CD", "CC", "SC"]);
});
