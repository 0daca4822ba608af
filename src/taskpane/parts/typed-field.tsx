import "./typed-field.css";
import { useId } from "preact/hooks";

interface TypedFieldProps {
  readonly label: string;
  readonly value: string;
  /** What is wrong with what was typed. */
  readonly problem?: string | undefined;
  readonly hint?: string | undefined;
  /** A number is typed: phones and tablets offer their figures. */
  readonly numeric?: boolean;
  readonly type?: "text" | "date";
  onText(text: string): void;
}

/** A field with its label, and beside it what is wrong with what was typed. */
export function TypedField({ label, value, problem, hint, numeric = false, type = "text", onText }: TypedFieldProps) {
  const id = useId();
  const described = [hint === undefined ? "" : `${id}-hint`, problem === undefined ? "" : `${id}-problem`];
  return (
    <div class="typed-field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type={type}
        inputMode={numeric ? "decimal" : undefined}
        autocomplete="off"
        value={value}
        aria-invalid={problem !== undefined}
        aria-describedby={described.filter(Boolean).join(" ") || undefined}
        onInput={(event) => onText(event.currentTarget.value)}
      />
      {hint !== undefined && <small id={`${id}-hint`}>{hint}</small>}
      {problem !== undefined && (
        <p id={`${id}-problem`} class="typed-problem" role="alert">
          ✕ {problem}
        </p>
      )}
    </div>
  );
}

interface ChosenFieldProps {
  readonly label: string;
  readonly value: string;
  readonly options: readonly (readonly [value: string, text: string])[];
  onValue(value: string): void;
}

/** A choice of a few from a list. */
export function ChosenField({ label, value, options, onValue }: ChosenFieldProps) {
  const id = useId();
  return (
    <div class="typed-field">
      <label for={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onValue(event.currentTarget.value)}>
        {options.map(([option, text]) => (
          <option key={option} value={option}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}
