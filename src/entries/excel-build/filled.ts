import type { BuildOptions } from "./options";

/** The two editions; Excel tells add-ins apart by the id and functions by the namespace. */
const EDITIONS = {
  release: { id: "2f3c641f-32c2-44d6-ab8a-585e6b5d4e2a", displayName: "Evenfoot", namespace: "HERD" },
  development: {
    id: "baa2bbff-900c-44ed-b6e5-384c5fbdee8f",
    displayName: "Evenfoot (development)",
    namespace: "HERD.DEV",
  },
} as const;

/** What a source file may have filled in: {{address}}, {{id}} and so on. */
export type Values = Readonly<Record<string, string>>;

export function valuesOf({ address, edition, officeJs }: Omit<BuildOptions, "folder">, packageVersion: string): Values {
  const microsoft = "https://appsforoffice.microsoft.com";
  const scripts = officeJs === "copy" ? "'self'" : `'self' ${microsoft}`;
  return {
    address,
    ...EDITIONS[edition],
    version: manifestVersion(packageVersion),
    officeJs: officeJs === "copy" ? "office/office.js" : `${microsoft}/lib/1/hosted/office.js`,
    policy: `default-src 'none'; script-src ${scripts}; style-src 'self'; img-src 'self' data:; connect-src 'self'`,
  };
}

/**
 * Version 0.1.0 of the package is 1.0.1.0 in the manifest: Microsoft takes no manifest version below 1.0, and a later
 * package must have a higher one.
 */
function manifestVersion(packageVersion: string): string {
  return `1.${packageVersion}`;
}

/** The text with every {{name}} filled in. Throws on a name without a value. */
export function filled(text: string, values: Values): string {
  return text.replace(/\{\{(\w+)\}\}/g, (_, name: string) => {
    const value = values[name];
    if (value === undefined) throw new Error(`nothing is known to fill in for {{${name}}}`);
    return value;
  });
}
