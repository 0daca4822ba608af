import type { Block } from "../../../blocks/block";
import { shelves } from "../../../blocks/shelves";
import { wholeRegistry } from "../../../functions/whole-registry";
import { PutInSheet } from "../../parts/put-in-sheet/put-in-sheet";
import { referencesOf } from "../../parts/put-in-sheet/workbook-references";
import type { SetUpViewProps } from "./view-props";

type GalleryProps = Pick<SetUpViewProps, "workbook">;

const specs = new Map(wholeRegistry.map((spec) => [spec.id, spec]));
const specOf = (id: string) => specs.get(id);

/** All blocks, with what each is for. */
export function Gallery({ workbook }: GalleryProps) {
  return (
    <>
      <p>
        Each block is a group of figures that the sheet itself works out, with its inputs and its sources. Put together,
        blocks make a template for other herds.
      </p>
      {shelves.map(({ title, blocks }) => (
        <section key={title} aria-label={title}>
          <h3 class="set-up-kind">{title}</h3>
          <ul class="set-up-columns">
            {blocks.map((block) => (
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
