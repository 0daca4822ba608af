import "../../parts/typed-field.css";
import { useId } from "preact/hooks";

interface SelectFieldProps {
  readonly label: string;
  /** What the label is about, where the eye sees it beside it. */
  readonly about?: string;
  readonly value: string;
  readonly options: readonly (readonly [value: string, text: string])[];
  /** Says more about the choice; read out together with it. */
  readonly hint?: string | undefined;
  readonly disabled?: boolean;
  /** Nothing is chosen yet, and something has to be. */
  readonly isOpen?: boolean;
  onChoice(value: string): void;
}

/** One of several, from a list that opens. */
export function SelectField({
  label,
  about,
  value,
  options,
  hint,
  disabled,
  isOpen = false,
  onChoice,
}: SelectFieldProps) {
  const id = useId();
  return (
    <div class={isOpen ? "typed-field set-up-field open" : "typed-field set-up-field"}>
      <label for={id}>
        {about !== undefined && <span class="readers-only">{about}: </span>}
        {label}
      </label>
      <select
        id={id}
        value={value}
        disabled={disabled}
        aria-describedby={hint === undefined ? undefined : `${id}-hint`}
        onChange={(event) => onChoice(event.currentTarget.value)}
      >
        {options.map(([option, text]) => (
          <option key={option} value={option}>
            {text}
          </option>
        ))}
      </select>
      {hint !== undefined && <small id={`${id}-hint`}>{hint}</small>}
    </div>
  );
}

/** Something that takes a while. */
export function Progress({ text }: { readonly text: string }) {
  return (
    <p class="set-up-progress">
      <progress aria-label={text} /> <span>{text}</span>
    </p>
  );
}
