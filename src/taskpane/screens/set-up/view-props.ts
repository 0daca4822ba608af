import type { CellPlace } from "../../../workbook/port";
import type { WorkbookWith } from "../../pane-workbook";
import type { SetUpEvent, SetUpState } from "./state";

/** What the views of the screen are given: the state, and how to change it. */
export interface SetUpViewProps {
  readonly state: SetUpState;
  readonly workbook: WorkbookWith<"tables" | "book">;
  dispatch(event: SetUpEvent): void;
  /** Ids of what is written; each call gives another. */
  newId(): string;
  /** Numbers of what is asked for; each call gives another. */
  newTurn(): number;
  /** Opens an old book. */
  chooseFile(file: File): void;
  /** Brings a cell of the workbook into sight. */
  show(place: CellPlace): void;
}
