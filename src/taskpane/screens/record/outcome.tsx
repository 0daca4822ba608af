import { Note, Section } from "../../parts/blocks";
import type { PartProps } from "./parts";
import { isBlankEntry, isBlankFinding } from "./state";

/** The entry's buttons. */
export function Actions({ state, send, newId }: PartProps & { newId(): string }) {
  const { entry, phase } = state;
  const busy = phase.kind !== "typing";
  const blank = entry.findings.every(isBlankFinding);
  const label =
    phase.kind === "saving"
      ? "Saving ..."
      : phase.kind === "uncertain"
        ? "Save again"
        : blank && entry.score !== ""
          ? "Save the score alone"
          : "Save";
  return (
    <div
      class="actions"
      data-field="actions"
      role="group"
      aria-label="Entry"
      onKeyDown={(event) => {
        if (event.ctrlKey || event.altKey || event.metaKey || !/^[as]$/i.test(event.key)) return;
        event.preventDefault();
        send({ type: "key", field: "actions", key: event.key });
      }}
    >
      <button
        type="button"
        class="main"
        data-first
        disabled={phase.kind === "saving"}
        onClick={() => send({ type: "save" })}
      >
        {label} <kbd aria-hidden="true">S</kbd>
      </button>
      <button type="button" disabled={busy} onClick={() => send({ type: "another finding" })}>
        Add finding <kbd aria-hidden="true">A</kbd>
      </button>
      <button
        type="button"
        disabled={busy || isBlankEntry(entry)}
        onClick={() => send({ type: "clear", nextId: newId() })}
      >
        Clear
      </button>
    </div>
  );
}

/** The way back from Clear. */
export function Cleared({ state, send }: PartProps) {
  if (state.cleared === undefined || !isBlankEntry(state.entry)) return null;
  return (
    <p class="actions">
      <button type="button" disabled={state.phase.kind !== "typing"} onClick={() => send({ type: "bring back" })}>
        Bring back what was cleared
      </button>
    </p>
  );
}
/** What went wrong with the workbook. What was typed is still there. */
export function Trouble({ state }: PartProps) {
  const { phase, error } = state;
  return (
    <>
      {phase.kind === "uncertain" && (
        <Note kind="error" title="Not known whether it was saved">
          <p>{phase.message}</p>
          <p>Until then nothing here can be changed.</p>
        </Note>
      )}
      {error !== "" && (
        <Note kind="error" title="Not done">
          <p>{error}</p>
        </Note>
      )}
    </>
  );
}

/** What was written last. */
export function Saved({ state, send }: PartProps) {
  const { saved, takingBack } = state;
  if (saved === undefined) return null;
  return (
    <Note kind="remark" title={`Saved. ${saved.title}`}>
      <ul>
        {saved.written.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p class="actions">
        <button type="button" disabled={takingBack !== ""} onClick={() => send({ type: "take back", id: saved.id })}>
          Take it back
        </button>
      </p>
    </Note>
  );
}

/** As many as the user can tell apart. */
const MOST_PAST = 5;

/** The saves that can be taken back. */
export function LastSaves({ state, send }: PartProps) {
  const { past, takingBack } = state;
  if (past.length === 0) return null;
  return (
    <Section title="Last saves">
      <ul class="found">
        {past.slice(0, MOST_PAST).map(({ id, title }) => (
          <li key={id}>
            <span>{title}</span>
            <button
              type="button"
              disabled={takingBack !== ""}
              onClick={() => send({ type: "take back", id })}
              aria-label={`Take back: ${title}`}
            >
              {takingBack === id ? "Taking back ..." : "Take back"}
            </button>
          </li>
        ))}
      </ul>
    </Section>
  );
}

/** An entry from before a closed pane or a crash. */
export function Offer({ state, send }: PartProps) {
  const { offered } = state;
  if (offered === undefined) return null;
  const { entry, begun } = offered;
  const cow = entry.cowText.trim() === "" ? "a cow" : `cow ${entry.cowText.trim()}`;
  return (
    <Note kind="caution" title="Not saved yet">
      <p>
        You were entering {cow} on {offered.visit.date}.
        {begun !== undefined && " Saving had begun: it may stand in the workbook already."}
      </p>
      <p class="actions">
        <button type="button" class="main" onClick={() => send({ type: "resume draft" })}>
          Go on with it
        </button>
        <button type="button" onClick={() => send({ type: "drop draft" })}>
          Throw it away
        </button>
      </p>
    </Note>
  );
}
