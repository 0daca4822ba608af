import type { Outcome } from "../../../core/claws/next-look";
import type { DueEvent, DueState } from "./state";

/** What the views of the screen are given: the state, and how to change it. */
export interface DueViewProps {
  readonly state: DueState;
  dispatch(event: DueEvent): void;
  choose(key: string, outcome: Outcome): void;
}
