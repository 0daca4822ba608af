import { readFileSync } from "node:fs";
import { join } from "node:path";
import { startWithWorkbook, type StartingOffice } from "../../../src/entries/excel-start";

/** An Office that takes down what it is asked. */
function office(supported: readonly string[], refuses = false) {
  const asked: string[] = [];
  const actions = new Map<string, () => Promise<void>>();
  const fake: StartingOffice = {
    context: { requirements: { isSetSupported: (name, version) => supported.includes(`${name} ${version}`) } },
    actions: { associate: (id, action) => void actions.set(id, action) },
    addin: {
      setStartupBehavior: async (behavior) => {
        asked.push(`startup ${behavior}`);
        if (refuses) throw new Error("the workbook is read-only");
      },
      showAsTaskpane: async () => void asked.push("show"),
    },
    StartupBehavior: { load: "Load" as Office.StartupBehavior },
  };
  return { fake, asked, actions };
}

const ALL = ["SharedRuntime 1.1", "KeyboardShortcuts 1.1"];

test("the add-in loads with the workbook, and the keys of the file show the pane", async () => {
  const { fake, asked, actions } = office(ALL);
  await startWithWorkbook(fake);
  expect(asked).toEqual(["startup Load"]);
  const { actions: named, shortcuts } = JSON.parse(
    readFileSync(join(__dirname, "../../../manifest/shortcuts.json"), "utf8"),
  ) as {
    readonly actions: readonly { readonly id: string }[];
    readonly shortcuts: readonly { readonly action: string }[];
  };
  expect([...actions.keys()]).toEqual(named.map(({ id }) => id));
  expect(shortcuts.map(({ action }) => action)).toEqual(named.map(({ id }) => id));
  await actions.get("ShowPane")!();
  expect(asked).toEqual(["startup Load", "show"]);
});

test("an older Excel is asked for neither", async () => {
  const { fake, asked, actions } = office([]);
  await startWithWorkbook(fake);
  expect([asked, actions.size]).toEqual([[], 0]);
});

test("a workbook that may not be changed does not stop the pane", async () => {
  const { fake, asked } = office(ALL, true);
  await startWithWorkbook(fake);
  expect(asked).toEqual(["startup Load"]);
});
