import { DomainError } from "../../src/core/shared/domain-error";

/** How an action that must be refused is refused. */
export function refusalOf(action: () => unknown): { readonly kind: string; readonly message: string } {
  let given: unknown;
  try {
    given = action();
  } catch (error) {
    if (error instanceof DomainError) return { kind: error.kind, message: error.message };
    throw error;
  }
  throw new Error(`should be refused; gave ${JSON.stringify(given)}`);
}
