import type { Injector } from "@univerjs/core";
import { ILayoutService } from "@univerjs/preset-sheets-core";

/**
 * A message of the grid leaves the keyboard to nobody when it closes, and what is typed next would be lost. The cells
 * have it then. Gives back what ends the watch.
 */
export function keepKeyboard(injector: Injector): () => void {
  const layout = injector.get(ILayoutService);
  // Messages and menus are laid over the page as its children.
  const watch = new MutationObserver((changes) => {
    if (!changes.some(({ removedNodes }) => removedNodes.length > 0)) return;
    if (document.activeElement === document.body) layout.focus();
  });
  watch.observe(document.body, { childList: true });
  return () => watch.disconnect();
}
