/**
 * Words of one language for disorders, by code of the claw disorder key; "none" for a sound foot. Common practice, no
 * source. They are only ever proposed: what a word means on a farm is for the farm to say.
 */
export type LesionWords = Readonly<Record<string, readonly string[]>>;
