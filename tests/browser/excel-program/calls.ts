import type { Page } from "playwright-core";
import type { ExampleArgument } from "../../../src/functions/define";
import type { Message } from "./stand-in";

/** functions.json as Excel reads it, so far as calls go by it. */
export interface Metadata {
  readonly functions: readonly {
    readonly id: string;
    readonly name: string;
    readonly parameters: readonly { readonly dimensionality: "scalar" | "matrix"; readonly optional?: true }[];
  }[];
}

/** A formula of one function: its name without the namespace, and what stands in its brackets. */
export interface Call {
  readonly name: string;
  readonly given: readonly (ExampleArgument | ErrorCell | undefined)[];
}

/** A cell with an error, as the program hands it over. */
export interface ErrorCell {
  readonly type: "CustomFunctionError";
  readonly code: string;
}

/** What the library answers for a call; the error code is the program's own number for an error. */
export interface Answer {
  readonly failed: boolean;
  readonly value: unknown;
  readonly error: "#N/A" | "#VALUE!" | "other" | undefined;
}

/** Numbers of errors, as excel-win32-16.01.js gives them (_getCustomFunctionResultErrorCodeFromErrorCode). */
const ERROR_NUMBERS: Readonly<Record<number, Answer["error"]>> = { 1: "#N/A", 7: "#VALUE!" };

/** Flag of a call whose arguments may be error cells, which functions.json asks for. */
const TAKES_ERRORS = 4;

/**
 * Calls functions as Excel does, by what functions.json says of them alone: by their name there, with as many
 * arguments, a range or a single cell as it asks for, null for what is left out. Answers in the order of the calls.
 */
export async function callAll(page: Page, metadata: Metadata, calls: readonly Call[]): Promise<readonly Answer[]> {
  const messages = calls.map((call, invocationId): Message => {
    const { id, values } = handedOver(metadata, call);
    return {
      messageCategory: 1,
      messageType: 1000,
      message: { invocationId, functionName: id, parameterValues: values, address: "Sheet1!A1", flags: TAKES_ERRORS },
    };
  });
  const raw = await page.evaluate(async (entries) => {
    const from = window.excelProgram.asked.length;
    window.excelProgram.tell(entries);
    // The library gathers answers for half a second and more; those that load the texts first come later.
    for (;;) {
      const answers = window.excelProgram.asked
        .slice(from)
        .flatMap(([method, results]) => (method === "SetInvocationResults" ? (results as RawAnswer[]) : []));
      if (answers.length >= entries.length) return answers;
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  }, messages);
  const byId = new Map(raw.map((answer) => [answer.id, answer]));
  return calls.map((_, id) => {
    const { failed = false, value, errorCode } = byId.get(id)!;
    return { failed, value, error: failed ? (ERROR_NUMBERS[errorCode ?? 0] ?? "other") : undefined };
  });
}

interface RawAnswer {
  readonly id: number;
  readonly failed?: boolean;
  readonly value: unknown;
  readonly errorCode?: number;
}

function handedOver({ functions }: Metadata, { name, given }: Call): { id: string; values: unknown[] } {
  const entry = functions.find((candidate) => candidate.name === name);
  if (entry === undefined) throw new Error(`Excel shows #NAME? for ${name}: functions.json does not have it`);
  if (given.length > entry.parameters.length) throw new Error(`Excel takes no formula ${name} with so many arguments`);
  const values = entry.parameters.map(({ dimensionality, optional }, place) => {
    const value = given[place];
    if (value === undefined && place >= given.length && optional !== true)
      throw new Error(`Excel takes no formula ${name} without its argument ${place + 1}`);
    if (value === undefined) return null;
    if (dimensionality === "matrix") return Array.isArray(value) ? value : [[value]];
    if (Array.isArray(value)) throw new Error(`Excel hands a range over to ${name} cell by cell`);
    return value;
  });
  return { id: entry.id, values };
}
