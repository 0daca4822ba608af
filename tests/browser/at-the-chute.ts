import type { Frame, Locator, Page } from "playwright-core";

/** Where the number of a cow is typed. */
export const cowField = (pane: Frame): Locator => pane.getByRole("combobox", { name: "Cow" });

/** Opens Record and waits until the herd is read. */
export async function openRecord(pane: Frame): Promise<void> {
  await pane.getByRole("tab", { name: "Record" }).click();
  await pane.getByText("Number or name, then Enter").waitFor();
}

/** Presses key by key; ⏎ stands for Enter. */
export async function press(page: Page, keys: string): Promise<void> {
  for (const key of keys) await page.keyboard.press(key === "⏎" ? "Enter" : key);
}
