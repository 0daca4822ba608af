import { isoDate } from "../../../core/shared/days";
import { Section } from "../../parts/blocks";
import { Problems, Switch, TextField } from "./controls";
import type { Care } from "./fields";
import { isAsked } from "./field-order";
import { bound, type PartProps } from "./parts";
import { hints, placeHint } from "./places";
import { currentFinding } from "./state";
import { namesDrug, treatmentText } from "./care";
import { disorderOf } from "../../../core/claws/disorder-key";

type Ticked = "trim" | "painRelief" | "topical" | "bandage" | "vetCalled";

/** What is done, filled from the rules; each part can be changed. */
export function TreatmentPart(props: PartProps) {
  const { state, content, send } = props;
  const { care } = content;
  const finding = currentFinding(state.entry);
  if (disorderOf(finding.lesion) === undefined || !isAsked(state, "care.other")) return null;
  const disabled = state.phase.kind !== "typing";
  const tick = (key: Ticked) => ({
    on: care[key],
    disabled,
    turn: (on: boolean) => send({ type: "switched", field: `care.${key}`, on }),
  });
  const text = (key: keyof Care, label: string, numeric = false) => (
    <TextField {...bound(props, `care.${key}`, label)} value={care[key] as string} numeric={numeric} />
  );
  const other = finding.claw === "outer" ? "inner" : "outer";
  const setBlock = (claw: string) => send({ type: "typed", field: "care.block", text: claw });
  const drug = text("drug", "Drug, as on its label");
  const apart = [care.other, finding.note].some((typed) => typed.trim() !== "");
  return (
    <Section title="Treatment">
      <div class="switches">
        <Switch label="Trim" {...tick("trim")} />
        <Switch label="Block" on={care.block !== ""} disabled={disabled} turn={(on) => setBlock(on ? other : "")}>
          <label class="field">
            On the
            <select value={care.block} disabled={disabled} onChange={(event) => setBlock(event.currentTarget.value)}>
              <option value="inner">inner claw</option>
              <option value="outer">outer claw</option>
            </select>
          </label>
          {text("blockOffDays", "Off after, days", true)}
          <Problems
            id="record-care-block-problem"
            problems={content.problemsAt("care.block")}
            agree={bound(props, "care.block", "").agree}
          />
        </Switch>
        <Switch label="Pain relief" {...tick("painRelief")}>
          {text("painReliefDays", "Course, days", true)}
        </Switch>
        <Switch label="Topical" {...tick("topical")}>
          {text("topicalTreatments", "Times in all", true)}
          {text("topicalRepeatDays", "Every, days", true)}
        </Switch>
        <Switch label="Bandage" {...tick("bandage")}>
          {text("bandageOffHours", "Off after, hours", true)}
        </Switch>
        <Switch label="Veterinarian called" {...tick("vetCalled")} />
      </div>
      {namesDrug(care) && (
        <>
          {drug}
          <div class="pair">
            {text("milkHours", "Milk held, hours", true)}
            {text("meatDays", "Meat held, days", true)}
          </div>
          <Clear {...props} />
        </>
      )}
      <details class="more" open={apart || undefined}>
        <summary>{namesDrug(care) ? "Something else, note" : "Drug, something else, note"}</summary>
        <div class="fields">
          {!namesDrug(care) && drug}
          {text("other", "Something else done")}
          {isAsked(state, "note") && <TextField {...bound(props, "note", "Note")} value={finding.note} />}
        </div>
      </details>
      <p class="quiet">
        {treatmentText(care) === ""
          ? "No treatment is written."
          : hints(`Written: ${treatmentText(care)}`, placeHint(state, "care.other"))}
      </p>
      <Jobs {...props} />
    </Section>
  );
}

function Clear({ content: { clear } }: PartProps) {
  const absent = (["milk", "meat"] as const).filter((of) => !clear.some((day) => day.of === of));
  return (
    <p class="quiet">
      {clear.map(
        ({ of, period, clear: day }) => `${of} ${day === undefined ? "nil" : `${period}, clear ${isoDate(day)}`}. `,
      )}
      {absent.length > 0 && `${absent.join(" and ")}: from the label; without it the note says "not entered".`}
    </p>
  );
}

/** The dates that follow, before anything is saved. */
function Jobs({ state, content: { jobs } }: PartProps) {
  const { remark } = state.rules;
  return (
    <>
      <h3>Afterwards</h3>
      {jobs.length === 0 ? (
        <p class="quiet">No date: the rules have none for it.</p>
      ) : (
        <ul class="lines">
          {jobs.map(({ day, what }) => (
            <li key={`${day} ${what}`}>
              {isoDate(day)}: {what}
            </li>
          ))}
        </ul>
      )}
      {remark !== undefined && <p class="quiet">{remark}</p>}
    </>
  );
}
