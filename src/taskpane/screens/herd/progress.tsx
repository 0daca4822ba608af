import { useEffect, useState } from "preact/hooks";

/** What is done within this time needs no word. */
const SLOW_MS = 600;

/** Says that something is under way, once it takes long. */
export function SlowProgress({ text }: { readonly text: string }) {
  const [slow, setSlow] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setSlow(true), SLOW_MS);
    return () => clearTimeout(timer);
  }, []);
  if (!slow) return null;
  return (
    <p class="herd-progress">
      <progress aria-label={text} /> <span>{text}</span>
    </p>
  );
}
