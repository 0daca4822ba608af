import { initialState, nextState } from "../../../../src/taskpane/screens/record/model";
import type { RecordEvent } from "../../../../src/taskpane/screens/record/events";
import type { Field } from "../../../../src/taskpane/screens/record/fields";
import { currentFinding, type RecordState } from "../../../../src/taskpane/screens/record/state";
import { rulesInForce } from "../../../../src/taskpane/rules";
import { type Book, herdOf, TODAY } from "./herd";

const TEXT_FIELDS: ReadonlySet<Field> = new Set<Field>(["cow", "toeInner", "toeOuter", "zone", "lesion"]);

/** Somebody at the keyboard: keys go to the field that the screen put the keyboard into. */
export class Typist {
  /** Keys pressed that are no digits. */
  keystrokes = 0;

  constructor(public state: RecordState) {}

  static async at(book: Book = {}): Promise<Typist> {
    const herd = await herdOf(book);
    const start = initialState(TODAY, "id-1");
    return new Typist(nextState(start, { type: "herd read", herd, rules: rulesInForce(herd.rules), past: [] }));
  }

  send(...events: RecordEvent[]): this {
    this.state = events.reduce(nextState, this.state);
    return this;
  }

  get field(): Field {
    return this.state.focus.field;
  }

  /** "12⏎" is the number 12 and Enter. */
  type(keys: string): this {
    for (const key of keys) {
      if (!/\d/.test(key)) this.keystrokes++;
      const { field } = this;
      if (key === "⏎") {
        this.send(field === "actions" ? { type: "save" } : { type: "key", field, key: "Enter" });
      } else if (TEXT_FIELDS.has(field)) this.send({ type: "typed", field, text: this.textOf(field) + key });
      else this.send({ type: "key", field, key });
    }
    return this;
  }

  private textOf(field: Field): string {
    const { entry } = this.state;
    const finding = currentFinding(entry);
    if (field === "cow") return entry.cowText;
    if (field === "zone" || field === "lesion") return finding[field];
    const toes = finding.foot === "" ? undefined : entry.toes[finding.foot];
    return toes?.[field === "toeInner" ? "inner" : "outer"] ?? "";
  }
}
