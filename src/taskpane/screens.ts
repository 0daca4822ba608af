import type { FunctionComponent } from "preact";
import type { PaneWorkbook, WorkbookWith } from "./pane-workbook";

/** A screen of the pane. Its code is asked for when it is first opened. */
export interface Screen {
  readonly id: string;
  readonly title: string;
  /** It is left out where the host lacks one of these. */
  readonly needs: readonly (keyof PaneWorkbook)[];
  load(): Promise<FunctionComponent<PaneWorkbook>>;
}

/** Every screen, in the order of the tabs. The first comes together with the pane, so that it opens at once. */
const screens: readonly Screen[] = [
  screen("record", "Record", ["tables", "recordDrafts"], async () => {
    return (await import(/* webpackMode: "eager" */ "./screens/record/screen")).Record;
  }),
  screen("due", "Due", ["tables"], async () => {
    return (await import(/* webpackChunkName: "due" */ "./screens/due/screen")).Due;
  }),
  screen("herd", "Herd", ["tables"], async () => {
    return (await import(/* webpackChunkName: "herd" */ "./screens/herd/screen")).Herd;
  }),
  screen("cells", "Cells", ["tables"], async () => {
    return (await import(/* webpackChunkName: "cells" */ "./screens/cells/screen")).Cells;
  }),
  screen("costs", "Costs", ["tables"], async () => {
    return (await import(/* webpackChunkName: "costs" */ "./screens/costs/screen")).Costs;
  }),
  screen("report", "Report", ["tables"], async () => {
    return (await import(/* webpackChunkName: "report" */ "./screens/report/screen")).VisitReport;
  }),
  screen("set-up", "Set up", ["tables", "book"], async () => {
    return (await import(/* webpackChunkName: "set-up" */ "./screens/set-up/screen")).SetUp;
  }),
  screen("explain", "Explain", ["port"], async () => {
    return (await import(/* webpackChunkName: "explain" */ "./screens/explain/screen")).Explain;
  }),
];

/** The screens that a workbook can have. */
export function screensFor(workbook: PaneWorkbook): readonly Screen[] {
  return screens.filter(({ needs }) => needs.every((port) => workbook[port] !== undefined));
}

/** The screen is drawn only where the ports it needs are there. */
function screen<Port extends keyof PaneWorkbook>(
  id: string,
  title: string,
  needs: readonly Port[],
  load: () => Promise<FunctionComponent<WorkbookWith<Port>>>,
): Screen {
  return { id, title, needs, load: load as Screen["load"] };
}
