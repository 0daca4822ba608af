import type { Block, BlockScreen } from "../../../blocks/block";
import { gallery } from "../../../blocks/gallery";
import { ownReferences } from "../../../blocks/references/own";
import { registry } from "../../../functions/registry";
import type { WorkbookWith } from "../../pane-workbook";
import { PutInSheet } from "../../parts/put-in-sheet/put-in-sheet";
import { today as dayOfComputer } from "../../today";

export interface GalleryProps {
  readonly workbook: WorkbookWith<"tables" | "book">;
}

const SCREEN_NAMES: Readonly<Record<BlockScreen, string>> = {
  herd: "Claw health",
  cells: "Cell counts",
  costs: "Costs",
  due: "What is due",
  report: "Reports",
};

const specs = new Map(registry.map((spec) => [spec.id, spec]));
const specOf = (id: string) => specs.get(id);

/** All blocks, with what each is for. */
export function Gallery({ workbook }: GalleryProps) {
  const screens = [...new Set(gallery.map(({ screen }) => screen))];
  return (
    <>
      <p>
        Each block is a group of figures that the sheet itself works out, with its inputs and its sources. Put together,
        blocks make a template for other herds.
      </p>
      {screens.map((screen) => (
        <section key={screen} aria-label={SCREEN_NAMES[screen]}>
          <h3 class="set-up-kind">{SCREEN_NAMES[screen]}</h3>
          <ul class="set-up-columns">
            {gallery
              .filter((block) => block.screen === screen)
              .map((block) => (
                <Offer key={block.id} block={block} workbook={workbook} />
              ))}
          </ul>
        </section>
      ))}
    </>
  );
}

function Offer({ block, workbook }: GalleryProps & { readonly block: Block }) {
  // A workbook with a day of its own holds it in a cell; without one, formulas count from the computer's day.
  const references = async () =>
    ownReferences(await workbook.tables.listTables(), workbook.today() !== dayOfComputer());
  return (
    <li>
      <strong>{block.title}</strong>
      <p>{block.about}</p>
      <PutInSheet wanted={{ block, specOf, references }} workbook={workbook} />
    </li>
  );
}
