import "./slow-status.css";
import { useEffect, useMemo, useState } from "preact/hooks";
import { tellIfSlow } from "./tell-if-slow";

/** Says what is under way, to the eye and to a screen reader, once it takes long. It stays in view. */
export function SlowStatus({ doing }: { readonly doing: string | undefined }) {
  const [text, setText] = useState("");
  const hear = useMemo(() => tellIfSlow(setText), []);
  useEffect(() => hear(doing), [hear, doing]);
  useEffect(() => () => hear(undefined), [hear]);
  // Only what changes inside a place that is there already is read out.
  return (
    <div class="slow-status" role="status">
      {text !== "" && (
        <p>
          <progress aria-hidden="true" /> <span>{text}</span>
        </p>
      )}
    </div>
  );
}
