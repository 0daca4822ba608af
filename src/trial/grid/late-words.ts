import { type ILocales, LocaleService, type Univer } from "@univerjs/core";

/**
 * Closes the grid. What closes a moment later, such as a list of suggestions, still asks for its words; without them it
 * would break.
 */
export function closeWithWords(univer: Univer, locales: ILocales): void {
  const words = univer.__getInjector().get(LocaleService);
  univer.dispose();
  words.load(locales);
}
