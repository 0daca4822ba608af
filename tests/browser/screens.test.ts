import type { Page } from "playwright-core";
import { RecordPage } from "./record-page/open";

jest.setTimeout(120_000);

let host: RecordPage;
beforeAll(async () => {
  host = await RecordPage.start();
});
afterAll(() => host.close());

const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent);

test("a screen's code is asked for when the screen is first opened", async () => {
  const { page, errors } = await host.open();
  const asked: string[] = [];
  page.on("request", (request) => asked.push(new URL(request.url()).pathname));
  await page.getByRole("tab", { name: "Due" }).click();
  await page.locator(".due-summary").waitFor();
  // Beside it comes what Due shares with screens that are not opened yet, and nothing of a screen.
  const scripts = asked.filter((path) => path.endsWith(".js"));
  expect(scripts.filter((path) => !/^\/chunks\/\d+\.js$/.test(path))).toEqual(["/chunks/due.js"]);
  await page.getByRole("tab", { name: "Record" }).click();
  await page.getByRole("tab", { name: "Due" }).click();
  expect(asked.filter((path) => path === "/chunks/due.js")).toHaveLength(1);
  expect(errors).toEqual([]);
});

test("while it is loaded the pane says so, and what was open stays as it was", async () => {
  const { page, errors } = await host.open();
  let answer = (): void => undefined;
  const held = new Promise<void>((resolve) => (answer = resolve));
  await page.route("**/due.js", async (route) => {
    await held;
    await route.continue();
  });
  await page.getByRole("combobox", { name: "Cow" }).fill("12");
  await page.getByRole("tab", { name: "Due" }).click();
  await page.getByRole("status").getByText("Loading Due").waitFor();
  await page.getByRole("tab", { name: "Record" }).click();
  expect(await page.getByRole("combobox", { name: "Cow" }).inputValue()).toBe("12");
  await page.getByRole("tab", { name: "Due" }).click();
  answer();
  await page.locator(".due-summary").waitFor();
  expect(await page.getByText("Loading Due").count()).toBe(0);
  expect(errors).toEqual([]);
});

test("what could not be loaded can be tried again, with the keyboard alone", async () => {
  const { page } = await host.open();
  await page.route("**/due.js", (route) => route.abort());
  await page.getByRole("tab", { name: "Due" }).focus();
  await page.keyboard.press("Enter");
  await page.getByRole("alert").getByText("Due could not be loaded").waitFor();
  await page.getByRole("button", { name: "Try again" }).focus();
  await page.keyboard.press("Enter");
  await page.getByRole("alert").getByText("Due could not be loaded").waitFor();
  await page.unroute("**/due.js");
  await page.getByRole("button", { name: "Try again" }).focus();
  await page.keyboard.press("Enter");
  await page.locator(".due-summary").waitFor();
  expect(await page.getByRole("alert").count()).toBe(0);
  // The keyboard goes on inside the screen, not from the top of the page.
  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => document.activeElement?.closest("#screen-due") !== null)).toBe(true);
});

test("the arrow keys go from tab to tab and open nothing; Enter and the space bar open", async () => {
  const { page } = await host.open();
  const isOpen = (title: string) => page.getByRole("tab", { name: title }).getAttribute("aria-selected");
  await page.getByRole("tab", { name: "Record" }).focus();
  await page.keyboard.press("ArrowRight");
  expect(await focused(page)).toBe("Due");
  expect(await isOpen("Record")).toBe("true");
  await page.keyboard.press("End");
  expect(await focused(page)).toBe("Explain");
  await page.keyboard.press("ArrowRight");
  expect(await focused(page)).toBe("Record");
  await page.keyboard.press("ArrowLeft");
  expect(await focused(page)).toBe("Explain");
  await page.keyboard.press("Space");
  expect(await isOpen("Explain")).toBe("true");
  await page.keyboard.press("Home");
  await page.keyboard.press("Enter");
  expect(await isOpen("Record")).toBe("true");
});
