import { childrenOf, textOf, unescapeText, type XmlElement } from "../xml";

/** The texts that cells share, in order. */
export function readSharedStrings(root: XmlElement | undefined): string[] {
  return childrenOf(root, "si").map(richText);
}

/** The text of a string item: its plain text, or its runs joined; phonetic hints are left out. */
export function richText(item: XmlElement): string {
  const runs = childrenOf(item, "r").flatMap((run) => childrenOf(run, "t"));
  return unescapeText([...childrenOf(item, "t"), ...runs].map(textOf).join(""));
}
