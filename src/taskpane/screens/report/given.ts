import type { Block } from "../../../blocks/block";
import { legalLimit } from "../../../blocks/cells/legal-limit";
import type { ComputedBlock, InputValues } from "../../../blocks/compute";
import type { DaySerial } from "../../../core/shared/days";
import type { LiveState } from "../../parts/live-blocks/state";
import { testDays } from "../cells/test-days";
import { typedDay } from "../../typed-day";

/** The days of the report, by the names of its fields and of its block's inputs. */
const DAYS = ["visit", "since"] as const;

/** What was typed as the blocks of the report take it; undefined where a block cannot be computed with it. */
export function givenTo({ id }: Block, { typed, reading }: LiveState): InputValues | undefined {
  if (id !== legalLimit.id) return daysGiven(typed);
  // Left to itself the block looks at the latest test up to today.
  if (typed["visit"] === undefined) return {};
  const visit = typedDay(typed["visit"]);
  if (visit === undefined || reading.kind !== "read") return undefined;
  const [test] = testDays(reading.herd.tables.get("Tests"), visit);
  return test === undefined ? undefined : { test };
}

/** Days as typed; one that is half typed is a blank. */
function daysGiven(typed: LiveState["typed"]): InputValues {
  const given: Record<string, DaySerial | null> = {};
  for (const field of DAYS) if (typed[field] !== undefined) given[field] = typedDay(typed[field]) ?? null;
  return given;
}

/** The days that a computed report stands on and that were typed: what is typed by now may be other days. */
export function givenIn({ inputs }: ComputedBlock, typed: LiveState["typed"]): InputValues {
  const days = inputs.filter(({ name }) => typed[name] !== undefined);
  return Object.fromEntries(days.map(({ name, value }) => [name, value]));
}
