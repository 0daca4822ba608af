/** What a user sees of the Record screen and does there, by the page's own elements alone. */
export class Hands {
  constructor(private readonly page: Document) {}

  private field(name: string): HTMLElement | null {
    return this.page.querySelector<HTMLElement>(`[data-field="${name}"]`);
  }

  private button(text: RegExp): HTMLButtonElement | undefined {
    return [...this.page.querySelectorAll<HTMLButtonElement>("button")].find(
      ({ textContent, disabled }) => text.test(textContent) && !disabled,
    );
  }

  press(text: RegExp): boolean {
    const button = this.button(text);
    button?.click();
    return button !== undefined;
  }

  type(name: string, text: string): void {
    const input = this.field(name);
    if (!(input instanceof HTMLInputElement || input?.tagName === "INPUT")) return;
    const box = input as HTMLInputElement;
    if (box.disabled) return;
    box.value = text;
    box.dispatchEvent(new InputEvent("input", { bubbles: true }));
  }

  key(name: string, ...keys: readonly string[]): void {
    for (const key of keys) this.field(name)?.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true }));
  }

  valueOf(name: string): string {
    return (this.field(name) as HTMLInputElement | null)?.value ?? "";
  }

  /** All that stands in the fields, to be compared before and after. */
  typed(): Readonly<Record<string, string>> {
    const boxes = [...this.page.querySelectorAll<HTMLInputElement>("input[data-field]")];
    const choices = [...this.page.querySelectorAll<HTMLElement>('[data-field] button[aria-checked="true"]')];
    const shown = [
      ...boxes.map(
        (box) => [box.dataset["field"]!, box.type === "checkbox" ? String(box.checked) : box.value] as const,
      ),
      ...choices.map(
        (radio) => [radio.closest<HTMLElement>("[data-field]")!.dataset["field"]!, radio.textContent] as const,
      ),
    ];
    return Object.fromEntries(shown.filter(([, value]) => value !== "" && value !== "false").sort());
  }

  private get main(): HTMLButtonElement | null {
    return this.page.querySelector('[data-field="actions"] .main');
  }

  /** The screen is drawn, and no save is on its way. */
  get isAtRest(): boolean {
    return this.main?.disabled === false;
  }

  get isUncertain(): boolean {
    return this.main?.textContent.startsWith("Save again") ?? false;
  }

  get isOffered(): boolean {
    return this.button(/^Go on with it$/) !== undefined;
  }

  /** The last thing said to a screen reader. */
  get announced(): string {
    return this.page.querySelector('.record > [role="status"]')?.textContent ?? "";
  }

  takeBack(place: number): boolean {
    const buttons = [...this.page.querySelectorAll<HTMLButtonElement>('button[aria-label^="Take back: "]')];
    const button = buttons[place];
    if (button === undefined || button.disabled) return false;
    button.click();
    return true;
  }
}
