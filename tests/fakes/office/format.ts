type SetFormat = (name: string, value: unknown) => void;

/** The format of a range: what is set goes to each of its cells. */
export class FakeFormat {
  constructor(
    private readonly put: SetFormat,
    private readonly width: () => unknown,
  ) {}

  get columnWidth(): unknown {
    return this.width();
  }
  set columnWidth(points: unknown) {
    this.put("columnWidth", points);
  }
  set horizontalAlignment(place: unknown) {
    this.put("horizontalAlignment", place);
  }
  set verticalAlignment(place: unknown) {
    this.put("verticalAlignment", place);
  }
  set wrapText(wraps: unknown) {
    this.put("wrapText", wraps);
  }

  get font(): object {
    return settable(this.put, "font", ["size", "bold", "italic", "color"]);
  }
  get fill(): object {
    return settable(this.put, "fill", ["color"]);
  }
  get borders(): { getItem(at: string): object } {
    return { getItem: (at) => settable(this.put, `borders/${at}`, ["style", "color"]) };
  }
}

/** An object that takes only these properties. */
function settable(put: SetFormat, path: string, names: readonly string[]): object {
  return Object.preventExtensions(
    Object.defineProperties(
      {},
      Object.fromEntries(names.map((name) => [name, { set: (value: unknown) => put(`${path}/${name}`, value) }])),
    ),
  );
}
