import { useEffect, useRef } from "preact/hooks";

/**
 * A line that was settled loses its buttons, and with them the keyboard would be lost. It goes to the line that now
 * stands in the same place, or to the next one that can be opened.
 */
export function useFocusInList(settled: unknown): (event: FocusEvent) => void {
  const place = useRef<number>();
  useEffect(() => {
    if (place.current === undefined || document.activeElement !== document.body) return;
    const lines = [...document.querySelectorAll<HTMLElement>("[data-place]")];
    for (const line of lines.slice(place.current)) {
      const button = line.querySelector<HTMLElement>("button[data-line]");
      if (button === null) continue;
      button.focus();
      return;
    }
  }, [settled]);
  return ({ target }) => {
    const line = target instanceof Element ? target.closest("[data-place]") : null;
    place.current = line === null ? undefined : [...document.querySelectorAll("[data-place]")].indexOf(line);
  };
}
