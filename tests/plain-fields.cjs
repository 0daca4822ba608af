const { createHash } = require("node:crypto");
const withPlainFields = require("../src/entries/trial-build/with-plain-fields.cjs");

/** Tests run the formula engine as the trial page does, with plain fields. */
module.exports = {
  process: (source) => ({ code: withPlainFields(source) }),
  getCacheKey: (source) => createHash("sha256").update(`${withPlainFields.toString()} ${source}`).digest("hex"),
};
