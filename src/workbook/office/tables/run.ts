/** Runs work in Excel. A test runs it in another Excel. */
export type RunExcel = <T>(work: (context: Excel.RequestContext) => Promise<T>) => Promise<T>;

/** Waits while a cell is being edited, and makes one step of undo of each save where Excel can. */
export const runExcel: RunExcel = (work) => Excel.run(options(), work);

function options(): Excel.RunOptions {
  const merges = Office.context.requirements.isSetSupported("ExcelApi", "1.20");
  return merges ? { delayForCellEdit: true, mergeUndoGroup: true } : { delayForCellEdit: true };
}
