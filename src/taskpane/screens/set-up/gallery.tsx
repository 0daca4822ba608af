import type { Block, BlockScreen } from "../../../blocks/block";
import { gallery } from "../../../blocks/gallery";
import { wholeRegistry } from "../../../functions/whole-registry";
import { PutInSheet } from "../../parts/put-in-sheet/put-in-sheet";
import { referencesOf } from "../../parts/put-in-sheet/workbook-references";
import type { SetUpViewProps } from "./view-props";

type GalleryProps = Pick<SetUpViewProps, "workbook">;

const SCREEN_NAMES: Readonly<Record<BlockScreen, string>> = {
  herd: "Claw health",
  cells: "Cell counts",
  costs: "Costs",
  report: "Reports",
};

const specs = new Map(wholeRegistry.map((spec) => [spec.id, spec]));
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
  return (
    <li>
      <strong>{block.title}</strong>
      <p>{block.about}</p>
      <PutInSheet wanted={{ block, specOf, references: () => referencesOf(workbook) }} workbook={workbook} />
    </li>
  );
}
