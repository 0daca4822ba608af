import { useRef } from "preact/hooks";

interface TabsProps {
  readonly tabs: readonly { readonly id: string; readonly title: string }[];
  readonly open: string;
  show(id: string): void;
}

/** Where a key leads from a tab, by its place among so many. */
const STEPS: Readonly<Record<string, (at: number, count: number) => number>> = {
  ArrowRight: (at, count) => (at + 1) % count,
  ArrowLeft: (at, count) => (at - 1 + count) % count,
  Home: () => 0,
  End: (_, count) => count - 1,
};

/**
 * The way from screen to screen; each shows the element `screen-<id>`. The arrow keys go from tab to tab and open
 * nothing, since a screen reads the workbook when it is opened: Enter or the space bar opens.
 */
export function Tabs({ tabs, open, show }: TabsProps) {
  const list = useRef<HTMLDivElement>(null);
  const onKeyDown = (event: KeyboardEvent) => {
    const step = STEPS[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const buttons = [...list.current!.querySelectorAll("button")];
    const at = buttons.findIndex((button) => button === document.activeElement);
    buttons[step(at, buttons.length)]!.focus();
  };
  return (
    <div ref={list} class="tabs" role="tablist" aria-label="Screens" onKeyDown={onKeyDown}>
      {tabs.map(({ id, title }) => (
        <button
          key={id}
          id={`tab-${id}`}
          type="button"
          role="tab"
          aria-selected={id === open}
          aria-controls={`screen-${id}`}
          tabIndex={id === open ? 0 : -1}
          onClick={() => show(id)}
        >
          {title}
        </button>
      ))}
    </div>
  );
}
