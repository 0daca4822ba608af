import { isoDate } from "../core/shared/days";
import type { Source, Standing } from "../core/shared/source";
import type { CellValue } from "./cell";
import type { Example, FunctionSpec, Result, ResultColumn } from "./define";
import { formulaText } from "./formula-text";
import { byGroup } from "./groups";
import { html, type Markup } from "./html";
import { anchorOf, worksheetName } from "./names";

/** A table in an example shows at most so many rows; the formula gives them all. */
const MOST_EXAMPLE_ROWS = 12;

const STANDINGS: Readonly<Record<Standing, string>> = {
  read: "read in the source",
  memory: "quoted from memory: check it before you rely on it",
  "common practice": "habit of the trade, no source",
  definition: "definition or plain arithmetic",
};

const ORIGINS: Readonly<Record<Example["origin"], string>> = {
  printed: "printed in the source",
  oracle: "computed by another program",
  hand: "worked by hand",
};

/** The help page behind every function's help link: static, one anchor a function; its script only searches it. */
export function referencePage(specs: readonly FunctionSpec[]): string {
  const groups = byGroup(specs);
  return html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta
          http-equiv="Content-Security-Policy"
          content="default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'"
        />
        <title>Evenfoot worksheet functions</title>
        <link rel="stylesheet" href="functions.css" />
        <script src="search.js" defer="defer"></script>
      </head>
      <body>
        <header>
          <p><a href="index.html">Help</a></p>
          <h1>Evenfoot worksheet functions</h1>
          <p>
            Each entry says what the function needs, in which units, where its figures come from and what they cannot
            tell. Figures support the judgement of the people in the barn; for treatment, the veterinarian and the label
            decide.
          </p>
          <form id="search" role="search" hidden="hidden">
            <label for="find">Find a function</label>
            <input id="find" type="search" autocomplete="off" />
            <p id="found" role="status"></p>
          </form>
        </header>
        <nav aria-label="Functions">
          <h2>Contents</h2>
          ${groups.map(([group, members]) => contentsOf(group, members))}
        </nav>
        <main>
          ${groups.map(
            ([group, members]) =>
              html`<section aria-labelledby="${groupAnchor(group)}">
                <h2 id="${groupAnchor(group)}">${group}</h2>
                ${members.map(entry)}
              </section> `,
          )}
        </main>
      </body>
    </html> `.text;
}

function contentsOf(group: string, members: readonly FunctionSpec[]): Markup {
  return html`<h3><a href="#${groupAnchor(group)}">${group}</a></h3>
    <ul>
      ${members.map(({ id }) => html`<li><a href="#${anchorOf(id)}">${id}</a></li>`)}
    </ul> `;
}

function groupAnchor(group: string): string {
  return `group-${anchorOf(group)}`;
}

/** The call as help shows it, optional arguments in brackets. */
export function signature({ id, parameters }: FunctionSpec): string {
  return `${worksheetName(id)}(${parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ")})`;
}

function entry(spec: FunctionSpec): Markup {
  const [firstExample] = spec.examples;
  return html`<article id="${anchorOf(spec.id)}">
    <h3>${worksheetName(spec.id)}</h3>
    <p>${spec.summary}</p>
    <p><code>${signature(spec)}</code></p>
    ${
      spec.cautions.length > 0
        ? html`<div class="caution">
            <h4>Cautions</h4>
            ${list(spec.cautions)}
          </div>`
        : ""
    }
    ${
      firstExample
        ? html`<h4>To paste into a cell</h4>
            <pre><code>${formulaText(spec, firstExample)}</code></pre>`
        : ""
    }
    ${spec.parameters.length > 0 ? argumentsTable(spec) : ""}
    <h4>Result</h4>
    ${resultText(spec.result)}
    <h4>Examples</h4>
    ${examplesTable(spec)}
    <h4>Sources</h4>
    <ul>
      ${spec.sources.map(sourceItem)}
    </ul>
    ${
      spec.limits.length > 0
        ? html`<h4>What it cannot tell</h4>
            ${list(spec.limits)}`
        : ""
    }
  </article> `;
}

function list(texts: readonly string[]): Markup {
  return html`<ul>
    ${texts.map((text) => html`<li>${text}</li>`)}
  </ul>`;
}

function argumentsTable({ parameters }: FunctionSpec): Markup {
  const rows = parameters.map(
    ({ name, description, kind, whenLeftOut }) =>
      html`<tr>
        <th scope="row">${name}</th>
        <td>${description}</td>
        <td>${kind.must}${kind.limits.reason === undefined ? "" : ` (${kind.limits.reason})`}</td>
        <td>${whenLeftOut === undefined ? "must be given" : whenLeftOut}</td>
      </tr> `,
  );
  return html`<h4>Arguments</h4>
    <table>
      <thead>
        <tr>
          <th scope="col">Argument</th>
          <th scope="col">What it is</th>
          <th scope="col">Must be</th>
          <th scope="col">When left out</th>
        </tr>
      </thead>
      <tbody>
        ${rows}
      </tbody>
    </table>`;
}

const SHAPES = {
  scalar: "One value",
  column: "One value a row, to stand beside the column handed over",
} as const;

function resultText(result: Result): Markup {
  if (result.shape !== "table") return html`<p>${SHAPES[result.shape]}: ${typeText(result)}.</p>`;
  return html`<p>A table with its headings in the first row:</p>
    <ul>
      ${result.columns.map((column) => html`<li>${column.heading}: ${typeText(column)}</li>`)}
    </ul>`;
}

function typeText({ type, unit }: Pick<ResultColumn, "type" | "unit">): string {
  return unit === undefined ? type : `${type}, ${unit}`;
}

function examplesTable(spec: FunctionSpec): Markup {
  const rows = spec.examples.map(
    (example) =>
      html`<tr>
        <td><code>${formulaText(spec, example)}</code></td>
        <td>${exampleResult(spec.result, example)}</td>
        <td>${ORIGINS[example.origin]}: ${example.where}</td>
      </tr> `,
  );
  return html`<table>
    <thead>
      <tr>
        <th scope="col">Formula</th>
        <th scope="col">Gives</th>
        <th scope="col">Known from</th>
      </tr>
    </thead>
    <tbody>
      ${rows}
    </tbody>
  </table>`;
}

function exampleResult(shape: Result, { result }: Example): Markup | string {
  if (typeof result !== "object") return cellText(result, shape.shape === "table" ? "text" : shape.type);
  const typeOf = (column: number) => (shape.shape === "table" ? (shape.columns[column]?.type ?? "text") : shape.type);
  const rows = result.slice(0, MOST_EXAMPLE_ROWS).map(
    (row) =>
      html`<tr>
        ${row.map((cell, column) => html`<td>${cellText(cell, typeOf(column))}</td>`)}
      </tr>`,
  );
  const more = result.length - MOST_EXAMPLE_ROWS;
  return html`<table class="cells">
      <tbody>
        ${rows}
      </tbody>
    </table>
    ${more > 0 ? `and ${more} more rows` : ""}`;
}

function cellText(cell: CellValue, type: ResultColumn["type"]): string {
  if (typeof cell === "number") return type === "date" ? isoDate(cell) : String(cell);
  return typeof cell === "boolean" ? String(cell).toUpperCase() : cell;
}

function sourceItem({ name, citation, standing }: Source): Markup {
  return html`<li><strong>${name}</strong> (${STANDINGS[standing]}). ${citation}</li>`;
}
