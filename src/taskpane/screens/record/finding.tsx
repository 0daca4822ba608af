import { disorderOf } from "../../../core/claws/disorder-key";
import { referenceClaw } from "../../../core/claws/reference-claw";
import { Note, Section } from "../../parts/blocks";
import { ClawMap, zoneName } from "./claw-map";
import { Choices, fieldId, TextField } from "./controls";
import { FOOT_NAMES, limbOf } from "./feet";
import { isAsked } from "./field-order";
import { bound, type PartProps } from "./parts";
import { hints, placeHint } from "./places";
import { currentFinding } from "./state";
import { disorderToTake, offeredDisorders } from "./suggestions";
import { typedNumber } from "./typed-text";

/** The feet as the cow stands, seen from behind: left and right, front above hind. */
const FEET = [
  { value: "LF", label: "Left front", key: "L F" },
  { value: "RF", label: "Right front", key: "R F" },
  { value: "LH", label: "Left hind", key: "L H" },
  { value: "RH", label: "Right hind", key: "R H" },
];
const CLAWS = [
  { value: "outer", label: "Outer", key: "O" },
  { value: "inner", label: "Inner", key: "I" },
  { value: "between", label: "Between", key: "B" },
];

export function FootPart(props: PartProps) {
  const { state } = props;
  const { foot } = currentFinding(state.entry);
  return (
    <>
      <Choices {...bound(props, "foot", "Foot")} value={foot} choices={FEET} hint={hints(placeHint(state, "foot"))} />
      {isAsked(state, "toeInner") && <Toes {...props} />}
    </>
  );
}

function Toes(props: PartProps) {
  const { entry, visit } = props.state;
  const { foot } = currentFinding(entry);
  const toes = foot === "" ? undefined : entry.toes[foot];
  const note = (claw: "inner" | "outer") =>
    foot === "" ? "Choose the foot first" : referenceClaw(limbOf(foot)) === claw ? "sets the length" : "follows it";
  const field = (name: "toeInner" | "toeOuter", claw: "inner" | "outer") => {
    const control = bound(props, name, `${claw === "inner" ? "Inner" : "Outer"} toe, mm`);
    return (
      <TextField
        {...control}
        disabled={control.disabled || foot === ""}
        value={toes?.[claw] ?? ""}
        numeric
        hint={hints(note(claw), placeHint(props.state, name))}
      />
    );
  };
  return (
    <>
      <div class="pair">
        {field("toeInner", "inner")}
        {field("toeOuter", "outer")}
      </div>
      <p class="quiet">
        Before trimming, from {visit.landmark === "hard horn" ? "where the horn turns hard" : "the skin-horn line"}.
      </p>
      <div aria-live="polite">
        <Advice {...props} />
      </div>
    </>
  );
}

/** The trim, live; the line to cut by first. */
function Advice({ state, content: { advice } }: PartProps) {
  const { foot } = currentFinding(state.entry);
  if (advice === undefined || foot === "") return null;
  return (
    <Note kind="remark" title={advice.headline}>
      <p>{advice.reason}.</p>
      <dl class="trim">
        {advice.steps.map(({ step, advice: what, caution }) => (
          <div key={step}>
            <dt>{step}</dt>
            <dd>
              {what}
              <small>{caution}</small>
            </dd>
          </div>
        ))}
      </dl>
      <p class="quiet">
        Lengths of {FOOT_NAMES[foot]} claws as measured by hand. Trained people trim; pain or doubt is for the
        veterinarian.
      </p>
    </Note>
  );
}

export function ZonePart(props: PartProps) {
  const { state, send } = props;
  const finding = currentFinding(state.entry);
  const zone = typedNumber(finding.zone);
  const disabled = state.phase.kind !== "typing";
  return (
    <>
      <Choices
        {...bound(props, "claw", "Claw")}
        value={finding.claw}
        choices={CLAWS}
        columns={3}
        hint={hints(placeHint(state, "claw"))}
      />
      <TextField
        {...bound(props, "zone", "Zone")}
        value={finding.zone}
        numeric
        hint={hints(zoneName(zone) || "0 to 12, or point below", placeHint(state, "zone"))}
      />
      <ClawMap
        claw={finding.claw}
        zone={zone}
        disabled={disabled}
        pointed={(claw, at) => send({ type: "pointed", claw, zone: at })}
        chooseClaw={(claw) => send({ type: "typed", field: "claw", text: claw })}
      />
    </>
  );
}

const LIST = `${fieldId("lesion")}-list`;

export function LesionPart(props: PartProps) {
  const { state, send } = props;
  const finding = currentFinding(state.entry);
  const offered = offeredDisorders(state);
  const taken = disorderToTake(state);
  const disabled = state.phase.kind !== "typing";
  const reached = offered.findIndex(({ code }) => code === taken?.code);
  const open = offered.length > 0 && disorderOf(finding.lesion)?.code !== finding.lesion;
  return (
    <>
      <TextField
        {...bound(props, "lesion", "Disorder")}
        value={finding.lesion}
        hint={
          zoneName(typedNumber(finding.zone)) === ""
            ? "Code or name, then Enter"
            : `Those of zone ${finding.zone} first; code or name, then Enter`
        }
        extra={{
          role: "combobox",
          "aria-expanded": open,
          "aria-controls": LIST,
          "aria-autocomplete": "list",
          "aria-activedescendant": !open || reached < 0 ? undefined : `${LIST}-${reached}`,
        }}
      />
      <ul id={LIST} class="suggestions disorders" role="listbox" aria-label="Disorders" hidden={!open}>
        {offered.map(({ code, name }, index) => (
          <li
            key={code}
            id={`${LIST}-${index}`}
            role="option"
            aria-selected={index === reached}
            onPointerDown={(event) => event.preventDefault()}
            onClick={() => !disabled && send({ type: "chose", field: "lesion", value: code })}
          >
            <strong>{code}</strong>
            <small>{name}</small>
          </li>
        ))}
      </ul>
      {isAsked(state, "stage") && (
        <Choices
          {...bound(props, "stage", "Stage")}
          value={finding.stage}
          choices={STAGE_CHOICES}
          columns={2}
          hint={hints(placeHint(state, "stage"))}
        />
      )}
      {isAsked(state, "severity") && (
        <Choices
          {...bound(props, "severity", "Severity")}
          value={finding.severity}
          choices={SEVERITIES}
          columns={3}
          hint={hints(placeHint(state, "severity"))}
        />
      )}
    </>
  );
}

const STAGE_CHOICES = [
  { value: "M1", label: "M1", about: "small, active", key: "1" },
  { value: "M2", label: "M2", about: "ulcer, active", key: "2" },
  { value: "M3", label: "M3", about: "healing, scab", key: "3" },
  { value: "M4", label: "M4", about: "chronic", key: "4" },
  { value: "M4.1", label: "M4.1", about: "chronic, active spot", key: "5" },
];
const SEVERITIES = [
  { value: "1", label: "1", about: "mild" },
  { value: "2", label: "2", about: "moderate" },
  { value: "3", label: "3", about: "severe" },
];

/** The findings typed so far, to open or remove. */
export function FindingList({ state, content, send }: PartProps) {
  const { findings } = content;
  const others = findings.filter(({ place }) => place !== state.entry.current);
  if (others.length === 0) return null;
  const disabled = state.phase.kind !== "typing";
  return (
    <Section title="Also found">
      <ul class="found">
        {others.map(({ place, text, faulty }) => (
          <li key={place}>
            <span>
              {faulty && <strong>To mend: </strong>}
              {text}
            </span>
            <button
              type="button"
              disabled={disabled}
              onClick={() => send({ type: "open finding", place })}
              aria-label={`Change: ${text}`}
            >
              Change
            </button>
            <button
              type="button"
              disabled={disabled}
              onClick={() => send({ type: "remove finding", place })}
              aria-label={`Remove: ${text}`}
            >
              Remove
            </button>
          </li>
        ))}
      </ul>
    </Section>
  );
}
