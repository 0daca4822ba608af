import { useEffect, useRef } from "preact/hooks";

/** What can be pressed, typed into or opened. */
const CONTROLS = "button:not(:disabled), select:not(:disabled), input:not(:disabled), summary";

interface KeptFocus {
  onFocusIn(event: FocusEvent): void;
  onPointerDown(event: PointerEvent): void;
}

/**
 * A line that was dealt with loses its buttons, and with them the keyboard would be lost. It goes to the line that now
 * stands in the same place, or else to the heading of the opened part. While something is written it waits.
 */
export function useKeptFocus(isBusy: boolean): KeptFocus {
  const place = useRef<number>();
  useEffect(() => {
    if (isBusy || place.current === undefined || document.activeElement !== document.body) return;
    const lines = [...document.querySelectorAll<HTMLElement>(".set-up [data-place]")];
    const next = place.current === NO_LINE ? [] : lines.slice(place.current);
    const controls = next.map((line) => line.querySelector<HTMLElement>(CONTROLS));
    const control = controls.find((found) => found?.checkVisibility() === true);
    (control ?? document.querySelector<HTMLElement>(".set-up-part.opened .set-up-head"))?.focus();
  });
  return {
    onFocusIn: ({ target }) => {
      const line = target instanceof Element ? target.closest("[data-place]") : null;
      place.current = line === null ? NO_LINE : [...document.querySelectorAll(".set-up [data-place]")].indexOf(line);
    },
    onPointerDown: ({ target }) => {
      // Someone who presses beside all controls lets go of the keyboard.
      if (target instanceof Element && target.closest(`${CONTROLS}, label`) === null) place.current = undefined;
    },
  };
}

/** The keyboard stood outside all lines. */
const NO_LINE = -1;
