import type { FunctionComponent } from "preact";
import { useEffect, useState } from "preact/hooks";
import { Note } from "../../parts/blocks";
import { Progress } from "./controls";
import type { GalleryProps } from "./gallery";
import type { SetUpViewProps } from "./view-props";

type Loading = { readonly Gallery: FunctionComponent<GalleryProps> } | "loading" | "failed";

/** What can be put into the workbook. Its code is large, and asked for only when the part is opened. */
export function BlocksSection({ workbook }: SetUpViewProps) {
  const [loading, setLoading] = useState<Loading>("loading");
  useEffect(() => {
    import(/* webpackChunkName: "gallery" */ "./gallery").then(
      ({ Gallery }) => setLoading({ Gallery }),
      () => setLoading("failed"),
    );
  }, []);
  if (loading === "loading") return <Progress text="Loading the blocks …" />;
  if (loading === "failed") {
    return (
      <Note kind="error" title="The blocks could not be loaded">
        <p>Close this part and open it again.</p>
      </Note>
    );
  }
  return <loading.Gallery workbook={workbook} />;
}
