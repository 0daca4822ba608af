import "./report.css";
import "../../parts/pictures/pictures.css";
import "../../parts/typed-field.css";
import { useEffect, useMemo, useReducer, useRef, useState } from "preact/hooks";
import { legalLimit } from "../../../blocks/cells/legal-limit";
import { visitReport } from "../../../blocks/report/visit-report";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import { DAYS_AHEAD } from "../../days-ahead";
import type { WorkbookWith } from "../../pane-workbook";
import { inSlices } from "../../parts/in-slices";
import { BlockFigures } from "../../parts/live-blocks/block-figures";
import { isBusy } from "../../parts/live-blocks/live-status";
import type { LiveState } from "../../parts/live-blocks/state";
import { useLiveBlocks } from "../../parts/live-blocks/use-live-blocks";
import type { Listing } from "../due/listing";
import { listingInSteps } from "../due/listing";
import { sourcesOf, takeReportBack, writeReport } from "./effects";
import { givenIn, givenTo } from "./given";
import { draftOf, startWith } from "./kept-draft";
import { ReportPrint } from "./print";
import { dayOf, namedThings, reportOf } from "./report";
import { nextReportState } from "./state";
import { ReportView } from "./view";
import { writtenAmong } from "./written";

/** The tables behind the report. */
const TABLES = ["Findings", "Cows", "Scores", "Tests", "Prices", "Targets", "Rules", "TrimRules"] as const;
const blocks = [visitReport, legalLimit];

/** The visit report, fed by the workbook. */
export function VisitReport(workbook: WorkbookWith<"tables">) {
  const asOf = workbook.today();
  const [live, onLive] = useLiveBlocks(workbook, {
    tables: TABLES,
    blocks,
    given: givenTo,
  });
  const { reportDrafts: drafts } = workbook;
  const start = useMemo(() => startWith(drafts?.read(), isoDate(asOf)), [drafts]);
  const [state, dispatch] = useReducer(nextReportState, start);
  const { heading, notes } = state;
  useEffect(() => drafts?.keep(draftOf(state, isoDate(asOf))), [drafts, heading, notes]);
  const block = live.computed.get(visitReport.id);
  const limit = live.computed.get(legalLimit.id);
  const visit = block === undefined ? undefined : dayOf(block, "visit");
  const { listing, isLatest } = useListing(live, visit);
  const [sources, setSources] = useState<readonly string[]>([]);
  useEffect(() => void sourcesOf(visitReport).then(setSources), []);
  const report = useMemo(() => {
    const { reading } = live;
    if (reading.kind !== "read" || block === undefined || (listing === undefined && visit !== undefined)) return;
    const rolling = limit === undefined ? undefined : new BlockFigures(limit).number("rolling");
    return reportOf({ block, listing, rolling, tables: reading.herd.tables });
  }, [block, listing, limit, live.reading]);
  const latest = useRef({ report, state, live });
  latest.current = { report, state, live };

  useEffect(() => {
    if (!state.printing) return;
    const done = (): void => dispatch({ type: "printed" });
    window.addEventListener("afterprint", done);
    window.print();
    return () => window.removeEventListener("afterprint", done);
  }, [state.printing]);

  useEffect(() => {
    const { report, state, live } = latest.current;
    if (state.writing === undefined) return;
    const computed = live.computed.get(visitReport.id);
    const given = computed === undefined ? {} : givenIn(computed, live.typed);
    void writeReport(workbook, { report, state, computed, given }).then(dispatch);
  }, [state.writing]);

  useEffect(() => {
    const { takingBack } = latest.current.state;
    if (takingBack !== undefined) void takeReportBack(workbook, takingBack.id).then(dispatch);
  }, [state.takingBack]);

  const days = {
    visit: live.typed["visit"] ?? isoDate(asOf),
    since: live.typed["since"] ?? (block === undefined ? "" : dayText(dayOf(block, "since"))),
  };
  return (
    <>
      <ReportView
        live={live}
        state={state}
        report={report}
        written={writtenAmong(workbook.tables.pastSaves())[0]}
        isReady={!isBusy(live) && isLatest}
        days={days}
        onLive={onLive}
        dispatch={dispatch}
      />
      {state.printing && report !== undefined && "title" in report && (
        <ReportPrint
          report={report}
          things={namedThings(report, state.chosen)}
          heading={heading}
          notes={notes}
          sources={sources}
        />
      )}
    </>
  );
}

function dayText(day: DaySerial | undefined): string {
  return day === undefined ? "" : isoDate(day);
}

interface DrawnListing {
  readonly listing: Listing;
  /** What it was drawn up from. */
  readonly reading: LiveState["reading"];
  readonly visit: DaySerial;
}

/** What is due on the day of the visit, drawn up after the figures, when the page has answered the keys that wait. */
function useListing({ reading }: LiveState, visit: DaySerial | undefined) {
  const [drawn, setDrawn] = useState<DrawnListing>();
  useEffect(() => {
    if (reading.kind !== "read" || visit === undefined) return;
    const { tables, scale } = reading.herd;
    const book = {
      cows: tables.get("Cows"),
      findings: tables.get("Findings"),
      scores: tables.get("Scores"),
      rules: tables.get("Rules"),
      trimRules: tables.get("TrimRules"),
      scale,
    };
    let isWanted = true;
    void inSlices(listingInSteps(book, visit, DAYS_AHEAD), () => isWanted).then((listing) => {
      if (listing !== undefined && isWanted) setDrawn({ listing, reading, visit });
    });
    return () => {
      isWanted = false;
    };
  }, [reading, visit]);
  return { listing: drawn?.listing, isLatest: drawn?.reading === reading && drawn.visit === visit };
}
