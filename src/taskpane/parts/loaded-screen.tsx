import type { FunctionComponent } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { PaneWorkbook } from "../pane-workbook";
import { Note } from "./blocks";

interface LoadedScreenProps {
  readonly title: string;
  readonly workbook: PaneWorkbook;
  load(): Promise<FunctionComponent<PaneWorkbook>>;
}

type Loading = { readonly Content: FunctionComponent<PaneWorkbook> } | "loading" | "failed";

/** A screen whose code is loaded first. What could not be loaded is tried again when the user says so. */
export function LoadedScreen({ title, workbook, load }: LoadedScreenProps) {
  const [state, setState] = useState<Loading>("loading");
  const place = useRef<HTMLDivElement>(null);
  const start = (): void => {
    setState("loading");
    load().then(
      (Content) => setState({ Content }),
      () => setState("failed"),
    );
  };
  useEffect(start, []);
  const tryAgain = (): void => {
    // The button goes, and the keyboard's place must not go with it.
    place.current?.focus();
    start();
  };

  if (typeof state === "object") return <state.Content {...workbook} />;
  return (
    <div ref={place} class="loading" tabIndex={-1}>
      <p role="status">{state === "loading" && `Loading ${title} ...`}</p>
      {state === "failed" && (
        <div role="alert">
          <Note kind="error" title={`${title} could not be loaded`}>
            <p>Nothing you typed is lost. Check the connection to where Evenfoot is kept, then try again.</p>
            <button type="button" class="try-again" onClick={tryAgain}>
              Try again
            </button>
          </Note>
        </div>
      )}
    </div>
  );
}
