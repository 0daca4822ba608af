import { useRef } from "preact/hooks";

interface TabsProps {
  readonly tabs: readonly { readonly id: string; readonly title: string }[];
  readonly open: string;
  show(id: string): void;
}

const STEPS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowLeft: -1 };

/** The way from screen to screen; each shows the element `screen-<id>`. */
export function Tabs({ tabs, open, show }: TabsProps) {
  const list = useRef<HTMLDivElement>(null);
  const onKeyDown = (event: KeyboardEvent) => {
    const step = STEPS[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const at = tabs.findIndex(({ id }) => id === open);
    const next = tabs[(at + step + tabs.length) % tabs.length]!;
    show(next.id);
    list.current?.querySelector<HTMLElement>(`#tab-${next.id}`)?.focus();
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
