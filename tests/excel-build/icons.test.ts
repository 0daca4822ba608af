import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";

const ICONS = join(__dirname, "../../manifest/icons");

test("the icons were drawn from the present drawing: run npm run icons after changing it", () => {
  const drawing = readFileSync(join(ICONS, "icon.svg"), "utf8");
  const drawnFrom = readFileSync(join(ICONS, "drawn-from.sha256"), "utf8").trim();
  expect(createHash("sha256").update(drawing).digest("hex")).toBe(drawnFrom);
});
