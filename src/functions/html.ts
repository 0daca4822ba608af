/** Markup that is already safe. Everything else put into a template is escaped. */
export class Markup {
  constructor(readonly text: string) {}
}

type Part = Markup | string | number | readonly Part[];

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** A template of markup: html`<p>${text}</p>` escapes the text and keeps nested templates as they are. */
export function html(strings: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  return new Markup(strings.reduce((text, string, index) => text + safe(parts[index - 1] ?? "") + string));
}

function safe(part: Part): string {
  if (part instanceof Markup) return part.text;
  if (typeof part === "object") return part.map(safe).join("");
  return String(part).replace(/[&<>"]/g, (character) => ESCAPES[character] ?? character);
}
