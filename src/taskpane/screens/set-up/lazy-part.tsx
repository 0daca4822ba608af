import type { FunctionComponent } from "preact";
import { useEffect, useState } from "preact/hooks";
import { Note } from "../../parts/blocks";
import { Progress } from "./controls";
import type { SetUpViewProps } from "./view-props";

type Loading = { readonly Content: FunctionComponent<SetUpViewProps> } | "loading" | "failed";

/** A part of the screen whose code is asked for only when it is opened. */
function lazyPart(load: () => Promise<FunctionComponent<SetUpViewProps>>): FunctionComponent<SetUpViewProps> {
  return (props) => {
    const [loading, setLoading] = useState<Loading>("loading");
    useEffect(() => {
      load().then(
        (Content) => setLoading({ Content }),
        () => setLoading("failed"),
      );
    }, []);
    if (loading === "loading") return <Progress text="Loading …" />;
    if (loading === "failed") {
      return (
        <Note kind="error" title="This part could not be loaded">
          <p>Check the connection to where Evenfoot is kept, close this part and open it again.</p>
        </Note>
      );
    }
    return <loading.Content {...props} />;
  };
}

export const CopyPart = lazyPart(async () => (await import(/* webpackChunkName: "copy" */ "./copy-view")).CopySection);
export const BlocksPart = lazyPart(async () => (await import(/* webpackChunkName: "gallery" */ "./gallery")).Gallery);
