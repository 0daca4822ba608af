import type { LiveEvent } from "../../parts/live-blocks/state";
import { ChosenField, TypedField } from "../../parts/typed-field";
import type { Choices, DaysProblem } from "./choices";

const PERIOD_NAMES = [
  ["last 12 months", "Last 12 months"],
  ["this year", "This year to date"],
  ["own dates", "Own dates"],
] as const satisfies readonly (readonly [Choices["period"], string])[];

const GROUP_NAMES = [
  ["all", "All cows"],
  ["heifers", "Heifers"],
  ["first", "First lactation"],
  ["later", "Second and later"],
] as const satisfies readonly (readonly [Choices["group"], string])[];

interface ChoicesViewProps {
  readonly choices: Choices;
  /** What is wrong with the days. */
  readonly wrong: DaysProblem | undefined;
  dispatch(event: LiveEvent): void;
}

/** Time and cows, chosen once for the whole screen. */
export function ChoicesView({ choices, wrong, dispatch }: ChoicesViewProps) {
  const set = (field: keyof Choices) => (text: string) => dispatch({ type: "typed", field, text });
  const problemOf = (field: DaysProblem["field"]) => (wrong?.field === field ? wrong.problem : undefined);
  return (
    <fieldset class="herd-choices">
      <legend class="readers-only">Time and cows</legend>
      <ChosenField label="Time" value={choices.period} options={PERIOD_NAMES} onValue={set("period")} />
      <ChosenField label="Cows" value={choices.group} options={GROUP_NAMES} onValue={set("group")} />
      {choices.period === "own dates" && (
        <>
          <TypedField
            label="First day"
            type="date"
            value={choices.from}
            problem={problemOf("from")}
            onText={set("from")}
          />
          <TypedField label="Last day" type="date" value={choices.to} problem={problemOf("to")} onText={set("to")} />
        </>
      )}
    </fieldset>
  );
}
