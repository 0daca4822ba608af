import type { ChangingPackage } from "../change-package";
import { partText } from "../package";
import { attributeOf, TagReader, withAttribute } from "../save/tags";
import { putPart } from "./parts";

/** Puts into a workbook the order to compute all formulas when it is next opened. */
export function calculateOnLoad({ parts, workbookPath }: ChangingPackage): void {
  putPart(parts, workbookPath, ordered(partText(parts, workbookPath)));
}

/** Elements that follow the calculation properties. Source: ECMA-376 Part 1, 18.2.27 (workbook). */
const LATER = new Set([
  "oleSize",
  "customWorkbookViews",
  "pivotCaches",
  "smartTagPr",
  "smartTagTypes",
  "webPublishing",
  "fileRecoveryPr",
  "webPublishObjects",
  "extLst",
]);

function ordered(workbook: string): string {
  const tags = new TagReader(workbook);
  for (let tag = tags.next(); tag !== undefined; tag = tags.next()) {
    const { name, prefix, attributes, start, end, isClosing, isEmpty } = tag;
    if (name === "calcPr") {
      if (attributeOf(attributes, "fullCalcOnLoad") === "1") return workbook;
      const opened = `<${prefix}calcPr${withAttribute(attributes, "fullCalcOnLoad", "1")}${isEmpty ? "/" : ""}>`;
      return workbook.slice(0, start) + opened + workbook.slice(end);
    }
    if (LATER.has(name) || (name === "workbook" && isClosing)) {
      return `${workbook.slice(0, start)}<${prefix}calcPr fullCalcOnLoad="1"/>${workbook.slice(start)}`;
    }
  }
  return workbook;
}
