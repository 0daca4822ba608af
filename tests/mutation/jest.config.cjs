const { join } = require("node:path");

/** One file of tests, ended by the first failure. */
module.exports = {
  rootDir: join(__dirname, "../.."),
  preset: "<rootDir>/tests/jest-preset.json",
  testEnvironment: join(__dirname, "first-failure.cjs"),
  roots: ["<rootDir>/tests/mutation"],
  testMatch: ["**/together.ts"],
};
