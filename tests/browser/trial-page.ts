import { join } from "node:path";
import type { BrowserContextOptions, Frame, Page } from "playwright-core";
import type { Session } from "../../src/trial/session";
import "./test-worker";

declare global {
  interface Window {
    trialSession?: Session;
  }
}

/** On a small machine at work the page may need some seconds for each step; the runner's 5 s a test are too few. */
const PATIENCE_MS = 120_000;
jest.setTimeout(PATIENCE_MS);

/** The trial page as a test has it open. */
export interface TrialPage {
  readonly page: Page;
  /** The pane in its frame. */
  readonly pane: Frame;
  /** Addresses outside this computer's server that the page asked for. */
  readonly outside: readonly string[];
  /** Errors that the page threw or its policy refused. */
  readonly errors: readonly string[];
  close(): Promise<void>;
}

/** Opens the trial page, waits until the workbook is computed, and turns the pane to Explain. */
export async function openTrial(options: BrowserContextOptions = {}): Promise<TrialPage> {
  const browser = await testWorker.browser();
  const context = await browser.newContext({ viewport: { width: 1280, height: 600 }, ...options });
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE_MS);
  const { outside, errors } = watched(page);
  await page.goto(address());
  await computed(page);
  const pane = paneOf(page);
  await pane.getByRole("tab", { name: "Explain" }).click();
  return { page, pane, outside, errors, close: () => context.close() };
}

function address(): string {
  return process.env["TRIAL_ADDRESS"]!;
}

/** The pane stands in the one frame of the page, whatever that shows. */
function paneOf(page: Page): Frame {
  const pane = page.frames()[1];
  if (!pane) throw new Error("the page has no pane");
  return pane;
}

/** What the page asks for outside this computer's server, and what it complains of, from now on. */
function watched(page: Page): Pick<TrialPage, "outside" | "errors"> {
  for (const event of ["request", "pageerror", "console"]) page.removeAllListeners(event);
  const outside: string[] = [];
  const errors: string[] = [];
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(address()) && !/^(data|blob):/.test(url)) outside.push(url);
  });
  page.on("pageerror", ({ message }) => errors.push(message));
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  return { outside, errors };
}

/** The workbook that the page opens first. */
const SAMPLE: WorkbookFile = join(__dirname, "../../sample-workbooks/herd-workbook.xlsx");

/** A workbook as the page's button to open one takes it: where it lies, or its bytes. */
export type WorkbookFile = string | { readonly name: string; readonly mimeType: string; readonly buffer: Buffer };

/** The trial page of a file of tests, which the file before may have left open. */
export interface SharedTrial extends Omit<TrialPage, "close"> {
  /** Opens the workbook, or another, in place of what a test left behind, and loads the pane as a new user has it. */
  startAnew(other?: WorkbookFile): Promise<void>;
  /** Leaves the workbook as it is, and loads the pane as a new user has it. */
  startPaneAnew(): Promise<void>;
}

/**
 * The trial page with the workbook as it was opened first and a pane that was never used, for each test of a file. A
 * page that asked for something outside this computer, or complained, fails its test.
 */
export function trialForEachTest(file?: WorkbookFile): SharedTrial {
  const trial = trialForAllTests(file);
  beforeEach(() => trial.startAnew());
  return trial;
}

/**
 * The trial page for tests that leave the workbook as it was, or change what no other looks at; the file says why that
 * is so. It starts anew where one asks for it. Complaints of the page fail the test that they come in, as above.
 */
export function trialForAllTests(file = SAMPLE): SharedTrial {
  let trial: TrialPage | undefined;
  // Nothing is opened anew that was not used.
  let isNew = true;
  beforeAll(async () => {
    const kept = testWorker.trialPage;
    trial = kept === undefined ? await openTrial() : takenOver(kept);
    testWorker.trialPage = trial.page;
    if (kept !== undefined || file !== SAMPLE) await startAnew(trial, file);
  });
  afterEach(() => {
    isNew = false;
    expect(trial!.outside).toEqual([]);
    expect(trial!.errors).toEqual([]);
  });
  return {
    get page() {
      return trial!.page;
    },
    get pane() {
      return trial!.pane;
    },
    get outside() {
      return trial!.outside;
    },
    get errors() {
      return trial!.errors;
    },
    async startAnew(other) {
      if (!isNew || other !== undefined) await startAnew(trial!, other ?? file);
      isNew = other === undefined;
    },
    async startPaneAnew() {
      await leavePane(trial!);
      await loadPane(trial!);
    },
  };
}

/** The page as a file of tests has left it. */
function takenOver(page: Page): TrialPage {
  return { page, pane: paneOf(page), ...watched(page), close: () => page.context().close() };
}

async function startAnew(trial: TrialPage, file: WorkbookFile): Promise<void> {
  const { page } = trial;
  await leavePane(trial);
  // It is named again when the workbook is computed.
  await page.evaluate(() => (document.getElementById("file-name")!.textContent = ""));
  await page.setInputFiles("#file-input", file);
  await computed(page);
  await loadPane(trial);
}

async function leavePane({ page, pane }: TrialPage): Promise<void> {
  await page.context().clearPermissions();
  await page.evaluate(() => {
    (document.getElementById("pane") as HTMLIFrameElement).src = "about:blank";
  });
  await pane.waitForURL("about:blank");
  await page.evaluate(() => localStorage.clear());
}

async function loadPane({ page, pane }: TrialPage): Promise<void> {
  await page.evaluate(() => {
    (document.getElementById("pane") as HTMLIFrameElement).src = "pane.html";
  });
  await pane.waitForURL(/pane\.html$/);
  await pane.getByRole("tab", { name: "Explain" }).click();
}

/** Waits until the workbook named above the grid is computed. */
export async function computed(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const text = (id: string) => document.getElementById(id)?.textContent;
    return text("file-name") !== "" && text("message") === "";
  });
}

/** Waits until what was changed is computed. */
export async function recomputed(page: Page): Promise<void> {
  await page.evaluate(() => window.trialSession!.grid!.computed());
}

/** A place on the page that is always over the cells of the grid. */
const AMONG_CELLS = { x: 300, y: 300 };

/** Selects a cell and gives the grid the keyboard. */
export async function select(page: Page, sheet: string, address: string): Promise<void> {
  const isInPane = await page.evaluate(() => document.activeElement instanceof HTMLIFrameElement);
  if (isInPane) await page.mouse.click(AMONG_CELLS.x, AMONG_CELLS.y);
  await page.evaluate(
    ([sheetName, cell]) => {
      const workbook = window.trialSession!.grid!.api.getActiveWorkbook()!;
      const worksheet = workbook.getSheetByName(sheetName)!;
      workbook.setActiveSheet(worksheet);
      worksheet.scrollToCell(Math.max(0, worksheet.getRange(cell).getRow() - 5), 0);
      worksheet.getRange(cell).activate();
    },
    [sheet, address] as const,
  );
}

/** The address of the cell that is selected. */
export async function selected(page: Page): Promise<string | undefined> {
  return page.evaluate(() => window.trialSession!.grid!.api.getActiveWorkbook()!.getActiveRange()?.getA1Notation());
}

/** What a cell shows. */
export async function shown(page: Page, sheet: string, address: string): Promise<string> {
  return page.evaluate(
    ([sheetName, cell]) =>
      window.trialSession!.grid!.api.getActiveWorkbook()!.getSheetByName(sheetName)!.getRange(cell).getDisplayValue(),
    [sheet, address] as const,
  );
}

/** Waits until a cell shows a text. */
export async function waitUntilShown(page: Page, sheet: string, address: string, text: string): Promise<void> {
  await page.waitForFunction(
    ([sheetName, cell, wanted]) =>
      window
        .trialSession!.grid!.api.getActiveWorkbook()!
        .getSheetByName(sheetName)!
        .getRange(cell)
        .getDisplayValue() === wanted,
    [sheet, address, text] as const,
  );
}

/** Types into a cell and goes on to the one below. */
export async function typeInto(page: Page, sheet: string, address: string, text: string): Promise<void> {
  await select(page, sheet, address);
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
}
