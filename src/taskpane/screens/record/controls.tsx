import "./controls.css";
import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";
import type { Field } from "./fields";
import type { Problem } from "./problems";

/** What every control of the screen is handed. */
export interface ControlProps {
  readonly field: Field;
  readonly label: string;
  readonly problems: readonly Problem[];
  readonly disabled?: boolean;
}

interface TextFieldProps extends ControlProps {
  readonly value: string;
  readonly hint?: string | undefined;
  readonly type?: "text" | "date";
  readonly numeric?: boolean;
  /** Ids of what else describes it. */
  readonly extra?: Readonly<Record<string, string | boolean | undefined>>;
  typed(field: Field, text: string): void;
  left(field: Field): void;
  /** Whether the key was used up. */
  pressed?(field: Field, key: string): void;
  agree(problem: Problem): void;
}

export const fieldId = (field: Field) => `record-${field.replace(".", "-")}`;

/** Keys that mean something in a text field beside typing. */
const TEXT_KEYS = new Set(["Enter", "ArrowDown", "ArrowUp"]);

export function TextField(props: TextFieldProps) {
  const { field, label, value, hint, type = "text", numeric = false, problems, disabled = false } = props;
  const id = fieldId(field);
  const described = [hint === undefined ? "" : `${id}-hint`, problems.length > 0 ? `${id}-problem` : ""].filter(
    Boolean,
  );
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        data-field={field}
        type={type}
        inputMode={numeric ? "decimal" : undefined}
        autocomplete="off"
        spellcheck={false}
        value={value}
        disabled={disabled}
        aria-invalid={problems.some(({ kind }) => kind === "stop")}
        aria-describedby={described.length === 0 ? undefined : described.join(" ")}
        {...props.extra}
        onInput={(event) => props.typed(field, event.currentTarget.value)}
        onBlur={() => props.left(field)}
        onKeyDown={(event) => {
          if (props.pressed === undefined || !TEXT_KEYS.has(event.key) || event.isComposing) return;
          if (type === "date" && event.key !== "Enter") return;
          event.preventDefault();
          props.pressed(field, event.key);
        }}
      />
      {hint !== undefined && (
        <small class="hint" id={`${id}-hint`}>
          {hint}
        </small>
      )}
      <Problems id={`${id}-problem`} problems={problems} agree={props.agree} />
    </div>
  );
}

const MARKS = { stop: "✕", ask: "?", tell: "i" } as const;

/** What is wrong with a field, beside it. */
export function Problems({
  id,
  problems,
  agree,
}: {
  readonly id: string;
  readonly problems: readonly Problem[];
  agree(problem: Problem): void;
}) {
  if (problems.length === 0) return null;
  return (
    <div id={id} class="problems">
      {problems.map((problem) => (
        <p key={problem.text} class={`problem ${problem.kind}`}>
          <span class="mark" aria-hidden="true">
            {MARKS[problem.kind]}
          </span>
          <span>{problem.text}</span>
          {problem.kind === "ask" && (
            <button type="button" onClick={() => agree(problem)}>
              Yes
            </button>
          )}
        </p>
      ))}
    </div>
  );
}

export interface Choice {
  readonly value: string;
  readonly label: string;
  /** The key that chooses it. */
  readonly key?: string;
  readonly about?: string;
}

interface ChoicesProps extends ControlProps {
  readonly value: string;
  readonly choices: readonly Choice[];
  readonly columns?: 1 | 2 | 3 | 4;
  readonly hint?: string | undefined;
  choose(field: Field, value: string): void;
  pressed(field: Field, key: string): void;
  left(field: Field): void;
  agree(problem: Problem): void;
  readonly children?: ComponentChildren;
}

/** One of several, each a target of its own; its keys choose it wherever the keyboard is in the group. */
export function Choices(props: ChoicesProps) {
  const { field, label, value, choices, columns = 2, hint, problems, disabled = false, children } = props;
  const group = useRef<HTMLDivElement>(null);
  const walked = useRef(false);
  const id = fieldId(field);
  const stop = choices.some((choice) => choice.value === value) ? value : choices[0]?.value;
  const walk = (step: number) => {
    const radios = [...(group.current?.querySelectorAll<HTMLElement>('[role="radio"]') ?? [])];
    const at = radios.indexOf(document.activeElement as HTMLElement);
    radios[(at + step + radios.length) % radios.length]?.focus();
    walked.current = true;
  };
  return (
    <div class="field">
      <span id={`${id}-label`} class="label">
        {label}
      </span>
      <div
        ref={group}
        id={id}
        data-field={field}
        class={`choices columns-${columns}`}
        role="radiogroup"
        aria-labelledby={`${id}-label`}
        aria-describedby={
          [hint === undefined ? "" : `${id}-hint`, problems.length > 0 ? `${id}-problem` : ""].join(" ").trim() ||
          undefined
        }
        onFocusOut={(event) => {
          if (group.current?.contains(event.relatedTarget as Node | null) === true) return;
          walked.current = false;
          props.left(field);
        }}
        onKeyDown={(event) => {
          if (event.ctrlKey || event.altKey || event.metaKey || disabled) return;
          if (event.key === "ArrowRight" || event.key === "ArrowDown") walk(1);
          else if (event.key === "ArrowLeft" || event.key === "ArrowUp") walk(-1);
          else if (event.key === "Enter" && !walked.current) props.pressed(field, "Enter");
          else if (event.key.length === 1 && event.key !== " ") props.pressed(field, event.key);
          else return;
          event.preventDefault();
        }}
      >
        {choices.map((choice) => (
          <button
            key={choice.value}
            type="button"
            role="radio"
            aria-checked={choice.value === value}
            tabIndex={choice.value === stop ? 0 : -1}
            disabled={disabled}
            class={choice.value === value ? "chosen" : undefined}
            onClick={() => props.choose(field, choice.value)}
          >
            <span>
              {choice.label}
              {choice.about !== undefined && <small>{choice.about}</small>}
            </span>
            {choice.key !== undefined && <kbd aria-hidden="true">{choice.key}</kbd>}
          </button>
        ))}
      </div>
      {hint !== undefined && (
        <small class="hint" id={`${id}-hint`}>
          {hint}
        </small>
      )}
      <Problems id={`${id}-problem`} problems={problems} agree={props.agree} />
      {children}
    </div>
  );
}

interface SwitchProps {
  readonly label: string;
  readonly on: boolean;
  readonly disabled: boolean;
  turn(on: boolean): void;
  readonly children?: ComponentChildren;
}

/** A tick with what belongs to it once it is set. */
export function Switch({ label, on, disabled, turn, children }: SwitchProps) {
  return (
    <div class={on ? "switch on" : "switch"}>
      <label>
        <input
          type="checkbox"
          checked={on}
          disabled={disabled}
          onChange={(event) => turn(event.currentTarget.checked)}
        />
        {label}
      </label>
      {on && children !== undefined && <div class="lengths">{children}</div>}
    </div>
  );
}
