/**
 * The tests of core and functions by their titles, with the few words of Jest that they use: loaded once into one
 * process, so that a changed place of the source costs the running of its tests and no loading.
 */
require("tsx/cjs");
const { readdirSync } = require("node:fs");
const { join } = require("node:path");
const { expect } = require("expect");
const { bind } = require("jest-each");

const TESTS = join(__dirname, "..");
const AREAS = ["core", "cells", "claws", "barn", "money", "ration", "functions"].map((area) => `unit/${area}`);

/**
 * These try very many values: with them a change costs seconds instead of milliseconds. What only they would notice
 * counts as not noticed.
 */
const LEFT_OUT = /^derived\/random-arguments|a million rows|100,000 findings|2140 days/;

const tests = new Map();
let group = "";

function describe(title, define) {
  const around = group;
  group = group === "" ? title : `${group} > ${title}`;
  define();
  group = around;
}

/** Rows of one table may share their title: a number tells them apart. */
function test(title, run) {
  const inGroup = `${group} > ${title}`;
  if (LEFT_OUT.test(inGroup)) return;
  let ownTitle = inGroup;
  for (let count = 2; tests.has(ownTitle); count++) ownTitle = `${inGroup} (${count})`;
  tests.set(ownTitle, run);
}

describe.each = bind(describe);
test.each = bind(test);
Object.assign(globalThis, { expect, describe, test, afterAll: () => undefined });

const inFolders = [...AREAS, "published", "derived"].flatMap((folder) =>
  readdirSync(join(TESTS, folder), { encoding: "utf8", recursive: true }).map((file) => `${folder}/${file}`),
);
const ofTexts = ["formula-text", "metadata", "name-lock", "reference-page"].map(
  (name) => `excel-build/${name}.test.ts`,
);
for (const file of [...inFolders, ...ofTexts].filter((name) => name.endsWith(".test.ts"))) {
  describe(file, () => void require(join(TESTS, file)));
}

module.exports = tests;
