import { type ComponentChildren, isValidElement, type VNode } from "preact";
import { initialLiveState, type LiveState } from "../../../../src/taskpane/parts/live-blocks/state";
import { type DrawnUp } from "../../../../src/taskpane/screens/report/report";
import { initialReportState, type ReportState } from "../../../../src/taskpane/screens/report/state";
import { ReportView, type ReportViewProps } from "../../../../src/taskpane/screens/report/view";

// Looks are no part of what is said.
jest.mock("../../../../src/taskpane/parts/slow-status.css", () => ({}));
jest.mock("../../../../src/taskpane/parts/typed-field.css", () => ({}));

type Element = VNode<Record<string, unknown>>;

/** All that a view draws; what remembers or waits stays as it is. */
function drawn(children: ComponentChildren): readonly Element[] {
  if (Array.isArray(children)) return children.flatMap(drawn);
  if (!isValidElement(children)) return [];
  const element = children as Element;
  return [element, ...drawn(typeof element.type === "function" ? inside(element) : element.props.children)];
}

function inside({ type, props }: Element): ComponentChildren {
  try {
    return (type as (props: unknown) => ComponentChildren)(props);
  } catch {
    // A part with a memory cannot be drawn outside of a page.
    return [];
  }
}

function textOf(children: ComponentChildren): string {
  if (Array.isArray(children)) return children.map(textOf).join("");
  return isValidElement(children) ? textOf((children as Element).props.children) : String(children ?? "");
}

const report: DrawnUp = {
  title: "Visit report 2024-03-20",
  period: "",
  found: [],
  lesions: [],
  things: [],
  noThings: "",
  due: undefined,
  nothingDue: "",
  missing: [],
  cautions: [],
};

function view(changes: Partial<ReportViewProps>): readonly Element[] {
  const live: LiveState = initialLiveState();
  const nothing = (): void => undefined;
  const props = { live, state: initialReportState, report, written: undefined, isReady: true, days: { visit: "", since: "" } }; // oxfmt-ignore
  return drawn(ReportView({ ...props, onLive: nothing, dispatch: nothing, ...changes }));
}

function disabled(elements: readonly Element[]): Record<string, unknown> {
  const buttons = elements.filter(({ type }) => type === "button");
  return Object.fromEntries(buttons.map(({ props }) => [textOf(props.children), props["disabled"] ?? false]));
}

test("nothing is written or printed while figures of other days are computed", () => {
  expect(disabled(view({}))).toEqual({ Print: false, "Write as a sheet": false });
  expect(disabled(view({ isReady: false }))).toEqual({ Print: true, "Write as a sheet": true });
});

test("writing and taking back are said", () => {
  // Above it stands what is said of reading the workbook.
  const doing = (state: Partial<ReportState>) =>
    view({ state: { ...initialReportState, ...state } })
      .filter(({ props }) => "doing" in props)
      .at(-1)?.props["doing"];
  const written = { id: "1", sheet: "Visit" };
  expect(doing({})).toBeUndefined();
  expect(doing({ writing: { attempt: 0 } })).toBe("Writing the report …");
  expect(doing({ takingBack: written })).toBe("Taking the report back …");
});

test("what is wrong with a day is said at its field", () => {
  const problems = (problem: DrawnUp) =>
    view({ report: problem })
      .filter(({ props }) => props["type"] === "date")
      .map(({ props }) => [props["label"], props["problem"]]);
  expect(problems({ field: "since", problem: "too late" })).toEqual([
    ["Day of the visit", undefined],
    ["Visit before", "too late"],
  ]);
  expect(problems({ field: "visit", problem: "none" })).toEqual([
    ["Day of the visit", "none"],
    ["Visit before", undefined],
  ]);
});

test("the report written last can be taken back, but not while it is", () => {
  const written = { id: "1", sheet: "Visit 2024-03-20" };
  const button = "Take back the report on sheet Visit 2024-03-20";
  expect(disabled(view({ written }))).toMatchObject({ [button]: false });
  const state = { ...initialReportState, takingBack: written };
  expect(disabled(view({ written, state }))).toMatchObject({ [button]: true, "Write as a sheet": true });
});
