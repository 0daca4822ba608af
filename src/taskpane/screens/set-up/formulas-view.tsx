import { useEffect } from "preact/hooks";
import { counted } from "../../format";
import { Note, TextList } from "../../parts/blocks";
import { Progress } from "./controls";
import type { SetUpViewProps } from "./view-props";
import { isBusy } from "./write-model";

/** Formulas that do not know their function, and what to do about it. */
export function FormulasSection(props: SetUpViewProps) {
  const { state, dispatch } = props;
  const { formulas } = state;
  useEffect(() => {
    if (formulas.kind === "not yet") dispatch({ type: "formulas asked" });
  }, [formulas.kind]);
  return (
    <>
      <p>A formula that was entered while Evenfoot was not there shows #NAME?. It only has to be entered again.</p>
      {formulas.kind === "looking" && <Progress text="Looking at the formulas …" />}
      {formulas.kind === "failed" && (
        <Note kind="error" title="Not looked at">
          <p>{formulas.message}</p>
        </Note>
      )}
      {formulas.kind === "looked" && <Looked {...props} />}
      <p class="set-up-buttons">
        <button
          type="button"
          disabled={formulas.kind === "looking"}
          onClick={() => dispatch({ type: "formulas asked" })}
        >
          Look again
        </button>
      </p>
    </>
  );
}

/** So many formulas are shown; the others are entered again with them. */
const FORMULAS_SHOWN = 40;

function Looked({ state, dispatch, newId, show }: SetUpViewProps) {
  const { formulas } = state;
  if (formulas.kind !== "looked") return null;
  const { broken, loaded } = formulas;
  const left = broken.length - FORMULAS_SHOWN;
  return (
    <>
      {loaded === "no" && <NotLoaded />}
      {broken.length === 0 && loaded !== "no" && <p>No formula shows #NAME?.</p>}
      {broken.length > 0 && (
        <>
          <p class="set-up-buttons" data-place>
            <button
              type="button"
              class="main"
              disabled={isBusy(state)}
              onClick={() => dispatch({ type: "reenter pressed", id: newId() })}
            >
              Enter {counted(broken.length, "formula")} again
            </button>
            <small>The formulas stay as they are, word for word.</small>
          </p>
          <ul class="set-up-lines">
            {broken.slice(0, FORMULAS_SHOWN).map(({ sheet, address, formula }) => (
              <li key={`${sheet} ${address}`} data-place>
                <p>
                  <strong>
                    {sheet}, {address}
                  </strong>
                </p>
                <code>{formula}</code>
                <p class="set-up-buttons">
                  <button
                    type="button"
                    aria-label={`Go to cell: ${sheet}, ${address}`}
                    onClick={() => show({ sheet, address })}
                  >
                    Go to cell
                  </button>
                </p>
              </li>
            ))}
          </ul>
          {left > 0 && <p class="quiet">And {counted(left, "formula")} more.</p>}
        </>
      )}
    </>
  );
}

function NotLoaded() {
  return (
    <Note kind="caution" title="The functions are not loaded here">
      <TextList
        texts={[
          "Excel for Windows and Mac: leave this pane open for a minute, then press Look again. If nothing changes, save, close Excel whole, open the workbook, and open Evenfoot from the Home tab.",
          "Excel on the web: load the page in the browser again, then open Evenfoot from the Home tab.",
          "An Excel that cannot take functions from add-ins, such as one bought once some years ago, shows #NAME? for good. The pane still works there.",
        ]}
      />
    </Note>
  );
}
