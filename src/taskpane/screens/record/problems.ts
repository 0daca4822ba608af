import type { Field, Foot } from "./fields";

/**
 * What is to be said about a field. "stop" must be mended before saving, "ask" must be answered with yes or mended,
 * "tell" is only told.
 */
export interface Problem {
  readonly field: Field;
  readonly kind: "stop" | "ask" | "tell";
  readonly text: string;
  /** For "ask": what the yes is remembered under. It names the values, so that other values ask again. */
  readonly question?: string;
  /** Place of the finding concerned; absent where it is about the visit or the cow. */
  readonly finding?: number;
  /** The foot concerned, of a toe length. */
  readonly foot?: Foot;
}

export const stop = (field: Field, text: string): Problem => ({ field, kind: "stop", text });
export const tell = (field: Field, text: string): Problem => ({ field, kind: "tell", text });
export const ask = (field: Field, question: string, text: string): Problem => ({ field, kind: "ask", text, question });
