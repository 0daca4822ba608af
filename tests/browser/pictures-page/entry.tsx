import "../../../src/taskpane/pane.css";
import { render } from "preact";
import { IntervalBars } from "../../../src/taskpane/parts/pictures/interval-bars";
import { Lines } from "../../../src/taskpane/parts/pictures/lines";
import { StackedColumns } from "../../../src/taskpane/parts/pictures/stacked-columns";
import { TwoByTwo } from "../../../src/taskpane/parts/pictures/two-by-two";

const MONTHS = ["Sep", "Oct", "Nov", "Dec", "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug"];
const RATES = [
  { label: "Digital dermatitis", value: 34.1, low: 28.2, high: 41, target: 12, against: "above" },
  { label: "White line disease", value: 11.4, low: 7.9, high: 15.8, target: 12.7, against: "within chance" },
  {
    label: "Interdigital phlegmon",
    value: 1.2,
    low: 0.3,
    high: 3.1,
    target: 7.1,
    against: "below",
    remark: "few cases",
  },
  { label: "Toe ulcer", value: 2, low: 0.1, high: 90, remark: "few cases" },
  { label: "Heifers", value: undefined, remark: "no cow examined" },
];

/** Each picture with invented numbers. */
function Pictures() {
  return (
    <div class="screen">
      <h1>Pictures with invented numbers</h1>
      <IntervalBars
        title="Lesions against targets"
        rowsAre="Lesion"
        rows={RATES}
        unit="new cases per 100 cow-years"
        format="0.0"
      />
      <StackedColumns
        title="New cases by month"
        columnsAre="Month"
        names={MONTHS.map((month, at) => `${month} ${at < 4 ? 2025 : 2026}`)}
        shortNames={MONTHS}
        series={["Horn", "Infectious", "Shape", "Other"].map((name, series) => ({
          name,
          values: MONTHS.map((_, month) => (month * (series + 3) + 5) % (9 - 2 * series)),
        }))}
        unit="new cases"
      />
      <Lines
        title="Tank against cows"
        at={MONTHS.map((_, month) => 30 * month)}
        names={MONTHS}
        timeLabels={MONTHS.map((text, month) => ({ at: 30 * month, text })).filter((_, month) => month % 2 === 0)}
        series={[
          { name: "Tank", values: [210, 220, 190, undefined, 240, 260, 230, 215, 205, 198, 220, 240] },
          { name: "Cow average", values: [240, 260, 250, 255, 270, 290, 250, 240, 235, 230, 245, 260] },
        ]}
        unit="thousand cells/mL"
        format="0"
      />
      <Lines
        title="Share of lame cows"
        at={[0, 14, 28, 45]}
        names={["2026-06-01", "2026-06-15", "2026-06-29", "2026-07-16"]}
        timeLabels={[
          { at: 0, text: "Jun" },
          { at: 30, text: "Jul" },
        ]}
        series={[
          {
            name: "Share lame",
            values: [0.24, 0.21, 0.2, 0.18],
            lows: [0.17, 0.15, 0.14, 0.12],
            highs: [0.32, 0.29, 0.28, 0.26],
          },
        ]}
        unit="of the cows scored"
        format="0.0%"
      />
      <TwoByTwo
        title="Lame cows and high counts"
        rows={[
          { name: "lame cows", having: 12, not: 22 },
          { name: "cows not lame", having: 20, not: 96 },
        ]}
        having="high count"
        not="low count"
      />
    </div>
  );
}

render(
  <main>
    <Pictures />
  </main>,
  document.getElementById("pane")!,
);
