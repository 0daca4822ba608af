import type { InputValues } from "../../../../blocks/compute";
import type { WorkbookWith } from "../../../pane-workbook";
import type { BlockFigures } from "../../../parts/live-blocks/block-figures";
import type { Field, ReadFields } from "../given";
import type { MilkPrice } from "../milk-price";

/** What a section of the screen is drawn from. */
export interface SectionProps {
  readonly figures: BlockFigures;
  /** What was put into the inputs of its block. */
  readonly given: InputValues;
  readonly read: ReadFields;
  readonly milkPrice: MilkPrice;
  /** What a field shows: as typed, else what is usual. */
  readonly shown: Readonly<Record<Field, string>>;
  readonly workbook: WorkbookWith<"tables">;
  type(field: Field, text: string): void;
}
