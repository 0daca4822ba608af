import { useId } from "preact/hooks";
import { day, type DaySerial, isoDate } from "../../../core/shared/days";

interface DayFieldProps {
  readonly label: string;
  readonly day: DaySerial | undefined;
  readonly min?: DaySerial;
  readonly max?: DaySerial;
  onDay(day: DaySerial | undefined): void;
}

/** A field for a day. A half-typed one counts as blank. */
export function DayField({ label, day: value, min, max, onDay }: DayFieldProps) {
  const id = useId();
  return (
    <p class="due-field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="date"
        value={value === undefined ? "" : isoDate(value)}
        min={min === undefined ? undefined : isoDate(min)}
        max={max === undefined ? undefined : isoDate(max)}
        onChange={(event) => onDay(typed(event.currentTarget.value))}
      />
    </p>
  );
}

function typed(text: string): DaySerial | undefined {
  return /^[1-9]\d{3}-\d\d-\d\d$/.test(text) ? day(text) : undefined;
}
