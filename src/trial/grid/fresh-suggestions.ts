import { CanceledError, ICommandService, type Injector, IUniverInstanceService } from "@univerjs/core";
import {
  DeviceInputEventType,
  IEditorBridgeService,
  IEditorService,
  KeyCode,
  SetCellEditVisibleOperation,
} from "@univerjs/preset-sheets-core";

/** The grid renews its list of functions when nothing was typed for this long. */
const LIST_RENEWED_MS = 300;
/** A little longer, so that the new list is there. */
const LIST_IS_NEW_MS = LIST_RENEWED_MS + 50;
/** Beginning of the id of the operation that a key pressed in the list stands for. */
const KEY_IN_LIST = "sheet.formula-embedding-editor.search_function.";
/** What every key typed into a cell ends in. */
const TEXT_CHANGED = "doc.mutation.rich-text-editing";

/** The last letters before the caret are those of a name that may still be completed. */
const ENDS_IN_NAME = /[A-Z_\\][\w.]*$/i;

/**
 * While one types, the grid's list of functions belongs to what stood in the cell a moment ago; Enter would put its
 * first function in place of the one that was typed. Enter behind a finished formula is therefore just Enter, and
 * behind a name it waits for the list that belongs to it.
 */
export function keepSuggestionsFresh(injector: Injector): void {
  const commands = injector.get(ICommandService);
  let lastTyped = -Infinity;
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id === TEXT_CHANGED) lastTyped = performance.now();
    if (!id.startsWith(KEY_IN_LIST)) return;
    const { keyCode } = params as { readonly keyCode: KeyCode };
    if (keyCode !== KeyCode.ENTER && keyCode !== KeyCode.TAB) return;
    if (!ENDS_IN_NAME.test(textBeforeCaret(injector))) {
      endEditing(injector, keyCode);
      throw new CanceledError();
    }
    const age = performance.now() - lastTyped;
    if (age >= LIST_IS_NEW_MS) return;
    setTimeout(() => void commands.executeCommand(id, params), LIST_IS_NEW_MS - age);
    throw new CanceledError();
  });
}

function textBeforeCaret(injector: Injector): string {
  const editor = injector.get(IEditorService).getFocusEditor();
  const caret = editor?.getSelectionRanges()[0]?.startOffset;
  return editor?.getDocumentData().body?.dataStream.slice(0, caret) ?? "";
}

/** What the key does where no list is open. */
function endEditing(injector: Injector, keycode: KeyCode): void {
  injector.get(IEditorBridgeService).disableForceKeepVisible();
  injector.get(ICommandService).syncExecuteCommand(SetCellEditVisibleOperation.id, {
    visible: false,
    eventType: DeviceInputEventType.Keyboard,
    keycode,
    unitId: injector.get(IUniverInstanceService).getFocusedUnit()?.getUnitId(),
  });
}
