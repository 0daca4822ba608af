const { createHash } = require("node:crypto");
const { buildSync, version } = require("esbuild");

/** Joins a package of many hundred small files into one module, which is loaded at once by every test file. */
module.exports = {
  process(_, path) {
    const { outputFiles } = buildSync({
      entryPoints: [path],
      bundle: true,
      format: "cjs",
      target: "es2022",
      write: false,
    });
    return { code: outputFiles[0].text };
  },
  getCacheKey: (text, path) => createHash("sha256").update(`${version} ${path} ${text}`).digest("hex"),
};
