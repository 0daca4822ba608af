/** The action of manifest/shortcuts.json. */
const SHOW_PANE = "ShowPane";

/** What is asked of Office as the page has loaded; a part of Office itself, so that it can be tried without it. */
export interface StartingOffice {
  readonly context: { readonly requirements: { isSetSupported(name: string, version: string): boolean } };
  readonly actions: { associate(id: string, action: () => Promise<void>): void };
  readonly addin: {
    setStartupBehavior(behavior: Office.StartupBehavior): Promise<void>;
    showAsTaskpane(): Promise<void>;
  };
  readonly StartupBehavior: { readonly load: Office.StartupBehavior };
}

/**
 * Lets the functions load with the workbook the next time it is opened, before anyone asks for the pane, and the keys
 * of the shortcuts show the pane. An Excel without one of these does without it.
 */
export async function startWithWorkbook(office: StartingOffice): Promise<void> {
  const { requirements } = office.context;
  if (requirements.isSetSupported("KeyboardShortcuts", "1.1")) {
    office.actions.associate(SHOW_PANE, () => office.addin.showAsTaskpane());
  }
  if (!requirements.isSetSupported("SharedRuntime", "1.1")) return;
  // A workbook that may not be changed refuses; the functions then load when first computed.
  await office.addin.setStartupBehavior(office.StartupBehavior.load).catch(() => undefined);
}
