import type { FakeChart, FakePlace, FakeSheet } from "./document";
import { HostError } from "./entry";
import type { FakeRange } from "./range";
import { Proxy } from "./strict";

type FakeSeries = FakeChart["series"][number];

function placeOf({ host: { row, column, rows, columns } }: FakeRange): FakePlace {
  return { row, column, rows, columns };
}

export class FakeCharts extends Proxy<FakeSheet> {
  protected readonly readers = {};

  add(type: string, source: FakeRange, seriesBy: string): FakeChartProxy {
    if (seriesBy !== "Columns") this.context.document.misuse("Excel guesses where the series lie");
    const { context } = this;
    return new FakeChartProxy(context, () => {
      context.document.refuseProtected(this.host);
      const first: FakeSeries = { name: "", values: placeOf(source), categories: undefined };
      const chart: FakeChart = {
        name: "Chart " + (this.host.charts.length + 1),
        type,
        title: "",
        over: [],
        series: [first],
      };
      this.host.charts.push(chart);
      return chart;
    });
  }

  getItemOrNullObject(name: string): FakeChartProxy {
    const find = (): FakeChart | undefined => this.host.charts.find((chart) => chart.name === name);
    return new FakeChartProxy(this.context, find, "orNull", () => this.host);
  }

  getCount(): { readonly value: number } {
    const count: { value?: number } = {};
    this.context.add({ run: () => (count.value = this.host.charts.length) });
    return count as { value: number };
  }
}

class FakeChartProxy extends Proxy<FakeChart> {
  protected readonly readers = { name: ({ name }: FakeChart) => name };

  constructor(
    context: FakeCharts["context"],
    find: () => FakeChart | undefined,
    how: "must" | "orNull" = "must",
    private readonly sheet?: () => FakeSheet,
  ) {
    super(context, find, how);
  }

  get name(): unknown {
    return this.read("name");
  }
  set name(name: unknown) {
    this.do((chart) => {
      chart.name = String(name);
    });
  }

  readonly title = {
    owner: () => this,
    set text(title: string) {
      this.owner().do((chart) => {
        chart.title = title;
      });
    },
  };

  get series() {
    const { context } = this;
    return {
      getItemAt: (index: number) => new FakeSeriesProxy(context, () => this.host.series[index]),
      add: (name: string) =>
        new FakeSeriesProxy(context, () => {
          this.host.series.push({ name, values: undefined, categories: undefined });
          return this.host.series.at(-1);
        }),
    };
  }

  setPosition(start: FakeRange, end: FakeRange): void {
    this.do((chart) => {
      chart.over = [placeOf(start), placeOf(end)];
    });
  }

  delete(): void {
    this.do((chart) => {
      if (this.sheet === undefined) throw new HostError("InvalidOperation");
      const { charts } = this.sheet();
      charts.splice(charts.indexOf(chart), 1);
    });
  }
}

class FakeSeriesProxy extends Proxy<FakeSeries> {
  protected readonly readers = {};

  set name(name: string) {
    this.do((series) => {
      series.name = name;
    });
  }

  setValues(range: FakeRange): void {
    this.do((series) => {
      series.values = placeOf(range);
    });
  }

  setXAxisValues(range: FakeRange): void {
    this.do((series) => {
      series.categories = placeOf(range);
    });
  }
}
