/** Copying findings from an old book into this one. */
export function CopySection() {
  return <p class="quiet">Nothing yet.</p>;
}
