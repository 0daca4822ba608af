import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Browser, Page } from "playwright-core";
import sirv from "sirv";
import { DomainError } from "../../src/core/shared/domain-error";
import { evaluate } from "../../src/functions/evaluate";
import { registry } from "../../src/functions/registry";
import { bareValues, expectResult } from "../derived/expect-result";
import { buildInto } from "../excel-build/build-into";
import { type Answer, type Call, callAll, type Metadata } from "./excel-program/calls";
import { standIn } from "./excel-program/stand-in";
import "./test-worker";
import { axeFindings, overhang } from "./well-made";

/** The build and a browser that has only just come up may take long on a small machine. */
const SLOW = 120_000;
jest.setTimeout(SLOW);

const SHOTS = process.env["SHOTS"];

/** The pages as built, with the unmodified Office.js, in a browser that is not Excel. */
const folder = mkdtempSync(join(tmpdir(), "evenfoot-"));
const trouble: string[] = [];
const outside: string[] = [];
let server: Server;
let browser: Browser;
let page: Page;
let address: string;

beforeAll(async () => {
  expect(buildInto(folder)).toMatchObject({ status: 0 });
  server = createServer(sirv(folder));
  await new Promise<void>((resolve) => server.listen(0, "localhost", resolve));
  address = `http://localhost:${(server.address() as AddressInfo).port}`;
  browser = await testWorker.browser();
  page = await browser.newPage();
  page.on("pageerror", ({ message }) => trouble.push(message));
  page.on("console", (message) => {
    if (message.type() !== "error") return;
    // Office.js itself tries, after some seconds, to open a frame of another server, which the policy refuses.
    const isRefusedOffice = /\/office\//.test(message.location().url) && /Security Policy/.test(message.text());
    if (!isRefusedOffice) trouble.push(message.text());
  });
  page.on("request", (request) => {
    if (!request.url().startsWith(address)) outside.push(request.url());
  });
});

afterAll(async () => {
  await page.close();
  await new Promise((resolve) => server.close(resolve));
  rmSync(folder, { recursive: true });
});

/** What CustomFunctions.associate of the unmodified library has taken. */
interface Associations {
  readonly CustomFunctions: {
    readonly _association: { readonly mappings: Record<string, (...args: unknown[]) => unknown> };
  };
}

test("every function is associated with Microsoft's own library, and answers", async () => {
  await page.goto(`${address}/taskpane.html`);
  const ids = await page.evaluate(() =>
    Object.keys((globalThis as unknown as Associations).CustomFunctions._association.mappings),
  );
  expect(ids.sort()).toEqual(registry.map(({ id }) => id).sort());
  const score = await page.evaluate(() =>
    (globalThis as unknown as Associations).CustomFunctions._association.mappings["CELL.SCORE"]!(200, null, {}),
  );
  expect(score).toBeCloseTo(4, 12);
});

test("the functions that tell of others load the texts from the same server", async () => {
  const source = await page.evaluate(() =>
    (globalThis as unknown as Associations).CustomFunctions._association.mappings["ABOUT.SOURCE"]!("SHARE.LOW", {}),
  );
  expect(source).toContain("Wilson EB 1927");
});

test("outside Excel the pane says where it works", async () => {
  await page.locator("#pane", { hasText: "Evenfoot works inside Excel" }).waitFor();
});

/** Stands for Office.js inside Excel where no workbook answers. */
const EXCEL_WITHOUT_WORKBOOK = `
  globalThis.Office = {
    HostType: { Excel: "Excel" },
    onReady: async () => ({ host: "Excel" }),
    context: { document: { url: "" }, requirements: { isSetSupported: () => false } },
  };
  globalThis.CustomFunctions = { associate() {} };
  globalThis.Excel = { run: async () => { throw new Error("no workbook"); } };
`;

/** What the pane may weigh before another screen is opened, gzip, styles and all. */
const PANE_BYTES = 70 * 1024;

test("inside Excel the pane is drawn after the functions, with its style, small, and loads the texts for Explain", async () => {
  const inExcel = await browser.newPage();
  inExcel.on("pageerror", ({ message }) => trouble.push(message));
  const files: string[] = [];
  inExcel.on("request", (request) => files.push(request.url().slice(address.length + 1)));
  await inExcel.route("**/office/office.js", (route) =>
    route.fulfill({ contentType: "text/javascript", body: EXCEL_WITHOUT_WORKBOOK }),
  );
  await inExcel.goto(`${address}/taskpane.html`);
  await inExcel.getByRole("tabpanel", { name: "Record" }).getByRole("button").first().waitFor();
  await inExcel.waitForFunction(() => document.styleSheets.length === 1);
  const asked = [...files];
  expect(asked.slice(0, 4)).toEqual(["taskpane.html", "office/office.js", "functions.js", "taskpane.js"]);
  expect(asked).toContain("pane.js");
  const ofPane = asked.slice(3).filter((file) => !file.startsWith("office/"));
  const sizes = ofPane.map((file) => gzipSync(readFileSync(join(folder, file)), { level: 9 }).length);
  expect(sizes.reduce((sum, bytes) => sum + bytes, 0)).toBeLessThan(PANE_BYTES);

  await inExcel.getByRole("tab", { name: "Explain" }).click();
  await inExcel.getByText("Select a cell with a HERD function").waitFor();
  expect(asked).not.toContain("specs.js");
  expect(files).toContain("specs.js");
  await inExcel.close();
});

describe("with the program around it that Office.js expects", () => {
  let excel: Page;
  let metadata: Metadata;

  beforeAll(async () => {
    const manifest = readFileSync(join(folder, "manifest.xml"), "utf8");
    // The program has the parts of Office.js that the manifest asks for, and the one that the keys need.
    const needed = [...manifest.matchAll(/<Set Name="(\w+)" MinVersion="([\d.]+)"/g)].map(([, set, least]) => [
      set,
      least,
    ]);
    expect(needed.length).toBeGreaterThan(2);
    metadata = JSON.parse(readFileSync(join(folder, "functions.json"), "utf8")) as Metadata;
    excel = await browser.newPage();
    excel.on("pageerror", ({ message }) => trouble.push(message));
    excel.on("console", (message) => {
      if (message.type() === "error") trouble.push(message.text());
    });
    excel.on("request", (request) => {
      if (!request.url().startsWith(address)) outside.push(request.url());
    });
    await excel.addInitScript(standIn, { ...Object.fromEntries(needed), KeyboardShortcuts: "1.1" });
    await excel.goto(`${address}/taskpane.html`);
    await excel.getByRole("tabpanel", { name: "Record" }).waitFor();
  });

  afterAll(() => excel.close());

  const examples = registry.flatMap((spec) => spec.examples.map((example) => ({ spec, example })));

  test("every worked example of every function gives its result, called by functions.json", async () => {
    const calls = examples.map(({ spec, example }): Call => ({ name: spec.id, given: example.arguments }));
    const answers = await callAll(excel, metadata, calls);
    expect(answers.length).toBeGreaterThan(registry.length);
    examples.forEach(({ spec, example }, place) => {
      const { failed, value, error } = answers[place]!;
      expect([spec.id, failed, error]).toEqual([spec.id, false, undefined]);
      expectResult(bareValues(value), example);
    });
  });

  test("a blank cell may come as null or as an empty text", async () => {
    const withBlanks = examples.filter(({ example }) => /null/.test(JSON.stringify(example.arguments)));
    expect(withBlanks.length).toBeGreaterThan(10);
    const emptied = (cell: unknown): unknown => (Array.isArray(cell) ? cell.map(emptied) : (cell ?? ""));
    const calls = withBlanks.map(({ spec, example }): Call => ({
      name: spec.id,
      given: example.arguments.map(emptied) as Call["given"],
    }));
    const answers = await callAll(excel, metadata, calls);
    withBlanks.forEach(({ example }, place) => expectResult(bareValues(answers[place]!.value), example));
  });

  const ERRORS: Readonly<Record<DomainError["kind"], Answer["error"]>> = { invalid: "#VALUE!", unavailable: "#N/A" };

  test("what a function refuses reaches the cell as its error, with its whole message", async () => {
    const refused = registry.flatMap((spec) => {
      const first = spec.examples[0]!.arguments;
      return ([null, { type: "CustomFunctionError", code: "#DIV/0!" }, "?"] as const).map((bad) => ({
        spec,
        given: [bad, ...first.slice(1)],
      }));
    });
    const expected = refused.map(({ spec, given }) => {
      const raw = given.map((cell) => (typeof cell === "object" && cell !== null && "code" in cell ? cell.code : cell));
      try {
        return { value: evaluate(spec, raw).value, failed: false };
      } catch (error) {
        if (!(error instanceof DomainError)) throw error;
        return { value: error.message, failed: true, error: ERRORS[error.kind] };
      }
    });
    expect(expected.filter(({ failed }) => failed).length).toBeGreaterThan(2 * registry.length);
    const calls = refused.map(({ spec, given }): Call => ({ name: spec.id, given }));
    const answers = await callAll(excel, metadata, calls);
    refused.forEach(({ spec, given }, place) => {
      const { failed, value, error } = answers[place]!;
      expect({ id: spec.id, given, failed, value: bareValues(value), error }).toEqual({
        id: spec.id,
        given,
        ...expected[place],
      });
    });
  });

  test("the add-in asks to load with the workbook, and the keys of the file show the pane", async () => {
    const asked = () => excel.evaluate(() => window.excelProgram.asked);
    expect(await asked()).toContainEqual(["SetAppRuntimeStartState", "Background"]);
    const { actions } = JSON.parse(readFileSync(join(folder, "shortcuts.json"), "utf8")) as {
      readonly actions: readonly { readonly id: string }[];
    };
    expect(actions.length).toBeGreaterThan(0);
    for (const { id } of actions) {
      await excel.evaluate(
        (action) => window.excelProgram.tell([{ messageCategory: 2, messageType: 1000, message: [action, ""] }]),
        id,
      );
      await excel.waitForFunction(() => window.excelProgram.asked.some(([method]) => method === "SetAppRuntimeState"));
    }
    expect(await asked()).toContainEqual(["SetAppRuntimeState", "Visible"]);
  });

  test("every screen opens on an empty workbook", async () => {
    const tabs = await excel.getByRole("tab").allTextContents();
    expect(tabs.length).toBeGreaterThan(5);
    for (const name of tabs) {
      await excel.getByRole("tab", { name, exact: true }).click();
      const panel = excel.getByRole("tabpanel", { name, exact: true });
      await panel.getByText(/\S/).first().waitFor();
      expect([name, await panel.getByText(/could not|is not available|is not supported/).allTextContents()]).toEqual([
        name,
        [],
      ]);
    }
  });
});

test("the help page shows the function that a help link points to", async () => {
  await page.goto(`${address}/help/functions.html#toe-check`);
  await page.waitForFunction(() => document.styleSheets.length === 1);
  const top = await page.locator("#toe-check").evaluate((entry) => entry.getBoundingClientRect().top);
  expect(top).toBeGreaterThanOrEqual(-1);
  expect(top).toBeLessThan(50);
});

const HELP_PAGES = ["index.html", "secretary.html", "adviser.html", "functions.html"];

test.each([
  ["light", 1200, true],
  ["light", 320, false],
  ["dark", 1200, false],
  ["dark", 320, true],
] as const)("every help page is open to all, in %s at %d px", async (colorScheme, width, looksAtAll) => {
  const options = { colorScheme, viewport: { width, height: 800 }, bypassCSP: true };
  const context = await browser.newContext(options);
  const help = await context.newPage();
  for (const name of HELP_PAGES) {
    await help.goto(`${address}/help/${name}`);
    await help.waitForFunction(() => document.styleSheets.length === 1);
    if (SHOTS !== undefined) await help.screenshot({ path: `${SHOTS}/help-${name}-${colorScheme}-${width}.png` });
    // All functions are drawn alike, and axe takes its time over them: two states look at all, the others at some.
    if (name === "functions.html" && !looksAtAll) {
      await help.getByRole("searchbox").fill("toe");
      await help.getByText(/^\d+ of \d+ functions$/).waitFor();
    }
    expect([name, await axeFindings(help)]).toEqual([name, []]);
    expect([name, await overhang(help)]).toEqual([name, 0]);
  }
  await context.close();
});

test("every link of the help leads to a page and to a place on it", async () => {
  for (const name of HELP_PAGES) {
    await page.goto(`${address}/help/${name}`);
    const links = await page
      .locator("a[href]")
      .evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href));
    const inside = [...new Set(links)].filter((link) => link.startsWith(address));
    for (const file of new Set(inside.map((link) => link.replace(/#.*/, ""))))
      expect([file, (await page.request.get(file)).status()]).toEqual([file, 200]);
    const places = inside.filter((link) => link.startsWith(`${address}/help/${name}#`)).map((link) => link.replace(/.*#/, "")); // oxfmt-ignore
    const missing = await page.evaluate((ids) => ids.filter((id) => document.getElementById(id) === null), places);
    expect([name, missing]).toEqual([name, []]);
  }
});

test("the search of the help finds by words in any order, says so, and says where nothing is found", async () => {
  await page.goto(`${address}/help/functions.html`);
  const field = page.getByRole("searchbox");
  await field.fill("wilson share");
  await page.getByText(/^\d+ of \d+ functions$/).waitFor();
  const shown = await page.locator("main article:visible").evaluateAll((all) => all.map(({ id }) => id));
  expect(shown).toContain("share-low");
  expect(shown.length).toBeLessThan(registry.length / 2);
  await field.press("Enter");
  expect(await page.evaluate(() => document.activeElement?.closest("nav") !== null)).toBe(true);
  await field.fill("xyzzy");
  await page.getByText("No function tells of that.").waitFor();
  expect(await page.locator("main article:visible").count()).toBe(0);
  await field.fill("");
  expect(await page.locator("main article:visible").count()).toBe(registry.length);
});

test("no page broke its own policy or asked anything of another server", () => {
  expect(trouble).toEqual([]);
  expect(outside).toEqual([]);
});
