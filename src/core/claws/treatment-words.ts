/** What a treatment as written asks for afterwards. */
export interface Treatment {
  readonly block: boolean;
  readonly painRelief: boolean;
  readonly bandage: boolean;
  readonly topical: boolean;
}

/** Words of the trade for what was done. Common practice, no source. */
const WORDS: Readonly<Record<keyof Treatment, RegExp>> = {
  block: /\b(block(ed|s)?|hoof shoe|claw shoe)\b/,
  painRelief: /\b(pain ?(relief|killers?)|painkillers?|analgesi[ac]\w*|nsaids?|anti-?inflammator(y|ies))\b/,
  bandage: /\b(bandaged?|wrap(ped|s)?|dressing)\b/,
  topical: /\b(topical(ly)?|spray(ed)?|paste|powder(ed)?|ointment|gel)\b/,
};

/** "no block", "without bandage", "block not needed". */
const DENIED = /\b(no|without|not)\s+(\w+\s+)?$/;
const DENIED_AFTER = /^\s*(not|refused|declined)\b/;

/** Reads a treatment such as "block, pain relief 3 d". Words that ask for nothing afterwards are passed over. */
export function treatmentOf(text: string): Treatment {
  const words = text.toLowerCase();
  return {
    block: names(words, WORDS.block),
    painRelief: names(words, WORDS.painRelief),
    bandage: names(words, WORDS.bandage),
    topical: names(words, WORDS.topical),
  };
}

function names(text: string, word: RegExp): boolean {
  const found = word.exec(text);
  if (found === null) return false;
  const after = text.slice(found.index + found[0].length);
  return !DENIED.test(text.slice(0, found.index)) && !DENIED_AFTER.test(after);
}
