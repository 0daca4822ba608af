import "./record.css";
import { useLayoutEffect, useRef } from "preact/hooks";
import { Note } from "../../parts/blocks";
import { SlowStatus } from "../../parts/slow-status";
import { contentOf } from "./content";
import { CowPart, Notices, ScorePart } from "./cow";
import type { RecordEvent } from "./events";
import { FindingList, FootPart, LesionPart, ZonePart } from "./finding";
import { Actions, Cleared, LastSaves, Offer, Saved, Trouble } from "./outcome";
import type { RecordState } from "./state";
import { TreatmentPart } from "./treatment";
import { VisitHeader } from "./visit";

interface RecordProps {
  readonly state: RecordState;
  send(event: RecordEvent): void;
  newId(): string;
  /** What the workbook is being asked for. */
  readonly doing: string | undefined;
}

/** A trimming day, cow by cow. */
export function RecordScreen({ state, send, newId, doing }: RecordProps) {
  const root = useRef<HTMLDivElement>(null);
  const { focus, entry, phase, readError, herd } = state;
  useLayoutEffect(() => {
    if (focus.count > 0) focusField(root.current, focus.field);
  }, [focus]);
  const props = { state, send, content: contentOf(state) };
  const busy = phase.kind !== "typing";
  return (
    <div class="record" ref={root}>
      <h1>Record a trimmed cow</h1>
      <p class="readers-only" role="status">
        {state.announced}
      </p>
      <SlowStatus doing={doing} />
      <Offer {...props} />
      {readError !== "" && (
        <Note kind="error" title="The workbook could not be read">
          <p>{readError}</p>
        </Note>
      )}
      {herd !== undefined && herd.missing.length > 0 && (
        <Note kind="caution" title="Tables missing">
          <p>The workbook has no table {herd.missing.join(", ")}. What belongs there cannot be saved.</p>
        </Note>
      )}
      <Saved {...props} />
      <VisitHeader {...props} />
      <CowPart {...props} />
      <ScorePart {...props} />
      <button type="button" class="wide" disabled={busy} onClick={() => send({ type: "nothing found" })}>
        Nothing found, save <kbd aria-hidden="true">N at Foot</kbd>
      </button>
      <fieldset class="finding">
        <legend>
          {entry.findings.length > 1 ? `Finding ${entry.current + 1} of ${entry.findings.length}` : "Finding"}
        </legend>
        <FootPart {...props} />
        <ZonePart {...props} />
        <LesionPart {...props} />
        <TreatmentPart {...props} />
      </fieldset>
      <FindingList {...props} />
      <Notices notices={props.content.now} />
      <div class="at-hand">
        <Trouble {...props} />
        <Actions {...props} newId={newId} />
      </div>
      <Cleared {...props} />
      <LastSaves {...props} />
    </div>
  );
}

/** Puts the keyboard into a field: a text, the chosen or first button of a group, the main button of an entry. */
function focusField(root: HTMLElement | null, field: string): void {
  const place = root?.querySelector<HTMLElement>(`[data-field="${field}"]`);
  const target = place?.querySelector<HTMLElement>('[data-first], [role="radio"][tabindex="0"]') ?? place;
  target?.closest("details")?.setAttribute("open", "");
  target?.focus();
  if (target instanceof HTMLInputElement && target.type === "text") target.select();
}
