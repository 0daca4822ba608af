import { LANDMARKS } from "../../../workbook/tables";
import { Choices, TextField } from "./controls";
import { isAsked } from "./field-order";
import { bound, type PartProps } from "./parts";

const LANDMARK_LABELS = { "hard horn": "where the horn turns hard", "skin-horn line": "skin-horn line" } as const;

/** What holds for every cow of the visit; folded away once it is filled in. */
export function VisitHeader(props: PartProps) {
  const { state, content } = props;
  const { visit } = state;
  const faulty = content.problemsAt("date").length > 0 || content.problemsAt("landmark").length > 0;
  const line = [
    visit.date,
    visit.place,
    visit.trimmer,
    visit.reason,
    visit.landmark === "" ? "toes not measured" : `toes from ${visit.landmark}`,
  ];
  return (
    <details class="visit" open={faulty || undefined}>
      <summary>
        <span>
          Visit
          <small>{line.filter((part) => part.trim() !== "").join(" · ")}</small>
        </span>
      </summary>
      <div class="fields">
        <TextField {...bound(props, "date", "Date")} type="date" value={visit.date} />
        {isAsked(state, "place") && <TextField {...bound(props, "place", "Place")} value={visit.place} />}
        {isAsked(state, "trimmer") && <TextField {...bound(props, "trimmer", "Trimmer")} value={visit.trimmer} />}
        {isAsked(state, "reason") && (
          <TextField {...bound(props, "reason", "Why")} value={visit.reason} hint="routine, lame, recheck ..." />
        )}
        <Choices
          {...bound(props, "landmark", "Toe lengths are measured from")}
          choose={(field, value) => props.send({ type: "typed", field, text: value })}
          value={visit.landmark}
          columns={1}
          choices={[
            { value: "", label: "not measured" },
            ...LANDMARKS.map((landmark) => ({ value: landmark, label: LANDMARK_LABELS[landmark] })),
          ]}
        />
      </div>
    </details>
  );
}
