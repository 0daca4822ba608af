import type { RecordContent } from "./content";
import type { RecordEvent } from "./events";
import type { Field } from "./fields";
import type { Problem } from "./problems";
import type { RecordState } from "./state";

/** What every part of the view is handed. */
export interface PartProps {
  readonly state: RecordState;
  readonly content: RecordContent;
  send(event: RecordEvent): void;
}

/** What the control of a field is handed. */
export function bound({ state, content, send }: PartProps, field: Field, label: string) {
  return {
    field,
    label,
    problems: content.problemsAt(field),
    disabled: state.phase.kind !== "typing",
    typed: (at: Field, text: string) => send({ type: "typed", field: at, text }),
    choose: (at: Field, value: string) => send({ type: "chose", field: at, value }),
    left: (at: Field) => send({ type: "left", field: at }),
    pressed: (at: Field, key: string) => send({ type: "key", field: at, key }),
    agree: ({ question }: Problem) => {
      if (question !== undefined) send({ type: "agreed", question, field });
    },
  };
}
