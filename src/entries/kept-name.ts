/** The name under which this computer keeps what belongs to the open workbook, and the one it had before it was saved. */
export interface KeptName {
  readonly name: string;
  readonly formerName?: string;
}

/** What a host tells of the open workbook. */
type OpenDocument = Pick<Office.Document, "url" | "settings">;

const ID_SETTING = "evenfoot unsaved workbook";

/**
 * A saved workbook goes by its address. One that was never saved has none, and all of them would share what is kept; so
 * it is given an id. The id stands in the add-in's own settings of the document, which travel with the workbook: unlike
 * a cell or a name they touch nothing of the farm's, and unlike the memory of the pane they are still there when the
 * pane is closed and opened again. Once the workbook has an address, the id only serves to find what was kept before,
 * and is taken out, so that copies of the file do not share it.
 */
export function keptName({ url, settings }: OpenDocument, newId: () => string): KeptName {
  const known: unknown = settings?.get(ID_SETTING);
  const id = typeof known === "string" && known !== "" ? known : undefined;
  if (url !== "") {
    if (id === undefined) return { name: url };
    settings.remove(ID_SETTING);
    settings.saveAsync();
    return { name: url, formerName: unsaved(id) };
  }
  if (id !== undefined) return { name: unsaved(id) };
  const given = newId();
  // A document that cannot store it, such as a read-only one, still has it as long as the pane is open.
  settings?.set(ID_SETTING, given);
  settings?.saveAsync();
  return { name: unsaved(given) };
}

function unsaved(id: string): string {
  return `unsaved ${id}`;
}
