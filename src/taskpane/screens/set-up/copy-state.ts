/** Where copying from an old book stands. */
export type CopyState = { readonly kind: "none" };

export type CopyEvent = { readonly type: "old book put away" };

export const noCopy: CopyState = { kind: "none" };
