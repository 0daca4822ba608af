import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";
import { DayField } from "./day-field";
import { type GroupBy, placesOf } from "./grouping";
import { type Work, WORK_NAMES, WORKS } from "./line";
import { isBusy, linesOf } from "./model";
import type { DueEvent, DueState } from "./state";

interface ToolsProps {
  readonly state: DueState;
  dispatch(event: DueEvent): void;
}

const DAYS_AHEAD = [0, 7, 14, 28] as const;

/** What the list is for and what of it is shown; printing and writing it. */
export function Tools({ state, dispatch }: ToolsProps) {
  const { filter, groupBy } = state;
  return (
    <div class="due-tools">
      <Field label="Find a cow, lesion or word">
        {(id) => (
          <input
            id={id}
            type="search"
            value={filter.text}
            onInput={(event) => dispatch({ type: "filtered", filter: { text: event.currentTarget.value } })}
          />
        )}
      </Field>
      <details>
        <summary>Day, filter, grouping</summary>
        <div class="due-fields">
          <DayField
            label="List for"
            day={state.day}
            onDay={(day) => day !== undefined && dispatch({ type: "day chosen", day })}
          />
          <Select
            label="Days ahead"
            value={String(state.daysAhead)}
            options={DAYS_AHEAD.map((days) => [String(days), String(days)])}
            onChoice={(days) => dispatch({ type: "days ahead chosen", daysAhead: Number(days) })}
          />
          <Select
            label="Work"
            value={filter.work}
            options={[["", "all"], ...WORKS.map((work) => [work, WORK_NAMES[work]] as const)]}
            onChoice={(work) => dispatch({ type: "filtered", filter: { work: work as Work | "" } })}
          />
          <Select
            label="Group"
            value={filter.place}
            options={[["", "all"], ...placesOf(linesOf(state)).map((place) => [place, place] as const)]}
            onChoice={(place) => dispatch({ type: "filtered", filter: { place } })}
          />
          <Select
            label="Headings by"
            value={groupBy}
            options={[
              ["work", "what to do"],
              ["place", "where she is"],
            ]}
            onChoice={(choice) => dispatch({ type: "grouped", groupBy: choice as GroupBy })}
          />
          <DayField
            label="Looked at on"
            day={state.seenOn}
            max={state.today}
            onDay={(seenOn) => seenOn !== undefined && dispatch({ type: "look day chosen", seenOn })}
          />
        </div>
      </details>
      <p class="due-buttons">
        <button type="button" onClick={() => dispatch({ type: "print pressed" })}>
          Print
        </button>
        <button type="button" disabled={isBusy(state)} onClick={() => dispatch({ type: "write pressed" })}>
          Write as a sheet
        </button>
      </p>
    </div>
  );
}

interface FieldProps {
  readonly label: string;
  children(id: string): ComponentChildren;
}

function Field({ label, children }: FieldProps) {
  const id = useId();
  return (
    <p class="due-field">
      <label for={id}>{label}</label>
      {children(id)}
    </p>
  );
}

interface SelectProps {
  readonly label: string;
  readonly value: string;
  readonly options: readonly (readonly [value: string, text: string])[];
  onChoice(value: string): void;
}

function Select({ label, value, options, onChoice }: SelectProps) {
  return (
    <Field label={label}>
      {(id) => (
        <select id={id} value={value} onChange={(event) => onChoice(event.currentTarget.value)}>
          {options.map(([option, text]) => (
            <option key={option} value={option}>
              {text}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
