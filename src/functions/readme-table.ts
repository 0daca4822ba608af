import type { FunctionSpec } from "./define";
import { byGroup } from "./groups";
import { signature } from "./reference-page";

const START = "<!-- functions:start -->";
const END = "<!-- functions:end -->";

/** The README with its list of functions brought up to date between the two markers. Throws without the markers. */
export function withFunctionTable(readme: string, specs: readonly FunctionSpec[]): string {
  const start = readme.indexOf(START);
  const end = readme.indexOf(END);
  if (start < 0 || end < start) throw new Error(`README.md must hold the lines ${START} and ${END}`);
  return `${readme.slice(0, start + START.length)}\n\n${functionTable(specs)}\n${readme.slice(end)}`;
}

function functionTable(specs: readonly FunctionSpec[]): string {
  return byGroup(specs)
    .map(([group, members]) => `**${group}**\n\n| Function | Gives |\n| --- | --- |\n${members.map(row).join("")}`)
    .join("\n");
}

function row(spec: FunctionSpec): string {
  return `| \`${signature(spec)}\` | ${spec.summary.replaceAll("|", "\\|")} |\n`;
}
