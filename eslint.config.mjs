import js from "@eslint/js";
import officeAddins from "eslint-plugin-office-addins";
import tseslint from "typescript-eslint";

/** The plugin's own rules, without the general rules and the second copy of the TypeScript plugin it brings along. */
const officeRules = Object.fromEntries(
  officeAddins.configs.recommended
    .flatMap((config) => Object.entries(config.rules ?? {}))
    .filter(([name]) => name.startsWith("office-addins/")),
);

export default tseslint.config(
  { ignores: ["dist/**", ".cache/**", "coverage/**", "node_modules/**"] },
  js.configs.recommended,
  ...tseslint.configs.strict,
  { plugins: { "office-addins": officeAddins }, rules: officeRules },
  {
    files: ["**/*.{ts,tsx}"],
    languageOptions: { parserOptions: { projectService: true } },
    rules: { "@typescript-eslint/no-floating-promises": "error", "@typescript-eslint/no-misused-promises": "error" },
  },
  {
    rules: {
      // TypeScript already refuses unknown names.
      "no-undef": "off",
      // tsconfig has noUncheckedIndexedAccess: an index that was just checked needs the mark.
      "@typescript-eslint/no-non-null-assertion": "off",
    },
  },
  { files: ["**/*.cjs", "**/*.config.js"], rules: { "@typescript-eslint/no-require-imports": "off" } },
);
