import type { Worksheet } from "@cj-tech-master/excelts";
import type { NewChart, NewSeries } from "./write-model";

const INK = "404040";
const GRID = "D9D9D9";
/** Hundredths of a point. */
const TEXT_SIZE = 900;
const TITLE_SIZE = 1200;
/** Labels of the categories are tilted, so that months stand side by side. */
const LABEL_DEGREES = -45;

/** Adds a native chart that draws cells of the workbook. */
export function addChart(worksheet: Worksheet, chart: NewChart): void {
  const { type, title, over, categories, categoryFormat, labelEvery, valueTitle, valueFormat, series } = chart;
  const text = { size: TEXT_SIZE, color: { srgb: INK } };
  worksheet.addChart(
    {
      type: type === "lines" ? "line" : "bar",
      ...(type === "lines"
        ? { grouping: "standard", showMarker: true, smooth: false }
        : { barDir: "col", gapWidth: 60 }),
      ...(type === "stacked columns" ? { grouping: "stacked", overlap: 100 } : {}),
      title: {
        paragraphs: [{ runs: [{ text: title, properties: { size: TITLE_SIZE, bold: true, color: { srgb: INK } } }] }],
      },
      showLegend: series.length > 1,
      legendPosition: "b",
      displayBlanksAs: "gap",
      categoryAxis: {
        txPr: text,
        majorTickMark: "out",
        minorTickMark: "none",
        textRotation: LABEL_DEGREES,
        ...(labelEvery === undefined ? {} : { tickLblSkip: labelEvery, tickMarkSkip: labelEvery }),
        ...(categoryFormat === undefined ? {} : { numFmt: categoryFormat }),
      },
      valueAxis: {
        title: valueTitle,
        min: 0,
        majorGridlines: true,
        majorTickMark: "none",
        minorTickMark: "none",
        majorGridlinesStyle: { border: GRID, borderWidth: 0.75 },
        txPr: text,
        ...(valueFormat === undefined ? {} : { numFmt: valueFormat }),
      },
      series: series.map((one) => seriesOf(one, type, categories)),
    } as never,
    over,
  );
}

function seriesOf({ name, values, colour, dashed }: NewSeries, type: NewChart["type"], categories: string) {
  const base = { name: { formula: name }, categories, values };
  const plain = colour.slice(1);
  if (type !== "lines") return { ...base, fill: plain };
  return {
    ...base,
    smooth: false,
    line: plain,
    lineWidth: 2,
    ...(dashed === true ? { lineDash: "dash" } : {}),
    marker: { symbol: dashed === true ? "diamond" : "circle", size: 5, fill: plain, border: plain },
  };
}
