import { type Injector, type IWorkbookData, LocaleType, LogLevel, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { CallLog } from "../../engine/call-log";
import { computed } from "../../engine/computed";
import { functionDescriptions } from "../../engine/descriptions";
import { applyFixes, fixedFunctions } from "../../engine/fixes";
import { attachCallLog, herdFunctions } from "../../engine/register";
import { keepCellsWhileDrawing } from "./drawn-cells";
import { keepSuggestionsFresh } from "./fresh-suggestions";
import { keepKeyboard } from "./kept-keyboard";
import { keepStructure } from "./kept-structure";
import { closeWithWords } from "./late-words";
import { registerPlugins } from "./plugins";
import { stopChecking } from "./quiet-close";
import { growTablesBelow } from "./table-growth";
import { walnutTheme } from "./theme";
import { nameTablesInFormulas } from "./this-table";
import { locales } from "./words";

/** A workbook open in a grid. */
export interface Grid {
  readonly api: FUniver;
  readonly injector: Injector;
  /** What every worksheet function was last handed, and what it said. */
  readonly log: CallLog;
  /** Ends when all that was to be computed is computed. */
  computed(): Promise<void>;
  close(): void;
}

/** Opens a workbook in a grid that fills the container. Tells where a change is refused because it cannot be saved. */
export function openGrid(container: HTMLElement, snapshot: IWorkbookData, onRefused: () => void): Grid {
  applyFixes();
  keepCellsWhileDrawing();
  const log = new CallLog();
  const univer = new Univer({ theme: walnutTheme, locale: LocaleType.EN_US, locales, logLevel: LogLevel.ERROR });
  const descriptions = functionDescriptions();
  registerPlugins(univer, container, { functions: [...fixedFunctions, ...herdFunctions(log)], descriptions });
  const injector = univer.__getInjector();
  const api = FUniver.newAPI(univer);
  attachCallLog(injector, log);
  api.createWorkbook(snapshot);
  nameTablesInFormulas(injector);
  growTablesBelow(injector);
  keepSuggestionsFresh(injector);
  keepStructure(injector, onRefused);
  const letKeyboardGo = keepKeyboard(injector);
  return {
    api,
    injector,
    log,
    computed: () => computed(injector),
    close: () => {
      letKeyboardGo();
      stopChecking(injector);
      closeWithWords(univer, locales);
    },
  };
}
