import type { ClawChoice } from "./fields";

/** A zone of the drawing: its outline, and the middle of its number. Units are those of the view box. */
export interface ZoneShape {
  readonly zone: number;
  readonly outline: string;
  readonly x: number;
  readonly y: number;
}

export const DRAWING = { width: 300, height: 296 } as const;

/**
 * One claw laid on its side, toe to the left, from the outside wall at the top to the inside wall at the bottom, each
 * zone at least 46 units high: a schematic of our own that keeps neighbours together, not a likeness.
 */
const OUTER_CLAW: readonly ZoneShape[] = [
  { zone: 7, outline: "M22 46Q34 6 112 0V46Z", x: 80, y: 28 },
  { zone: 8, outline: "M112 0H206V46H112Z", x: 159, y: 25 },
  { zone: 9, outline: "M206 0Q274 2 290 46H206Z", x: 242, y: 28 },
  { zone: 1, outline: "M66 46H22Q4 64 4 92T22 138H66Z", x: 37, y: 92 },
  { zone: 2, outline: "M66 46H148V92H66Z", x: 107, y: 69 },
  { zone: 3, outline: "M148 46H230V92H148Z", x: 189, y: 69 },
  { zone: 5, outline: "M66 92H148V138H66Z", x: 107, y: 115 },
  { zone: 4, outline: "M148 92H230V138H148Z", x: 189, y: 115 },
  { zone: 6, outline: "M230 46H290Q296 66 296 92T282 138H230Z", x: 263, y: 92 },
  { zone: 11, outline: "M22 138H148V184Q48 182 22 138Z", x: 98, y: 160 },
  { zone: 12, outline: "M148 138H282Q262 182 148 184Z", x: 206, y: 160 },
];

const BETWEEN: readonly ZoneShape[] = [
  { zone: 0, outline: "M30 192H178V238H30Q18 215 30 192Z", x: 102, y: 215 },
  { zone: 10, outline: "M178 192H284Q296 215 284 238H178Z", x: 234, y: 215 },
];

/** Outline of the other claw, which is chosen whole. */
const OTHER_CLAW = {
  outline: "M40 246H270Q293 250 294 270Q293 290 270 294H40Q7 290 6 270Q7 250 40 246Z",
  x: 150,
  y: 270,
};

export interface Drawing {
  readonly claw: "inner" | "outer";
  readonly zones: readonly ZoneShape[];
  readonly other: {
    readonly claw: "inner" | "outer";
    readonly outline: string;
    readonly x: number;
    readonly y: number;
  };
  /** Outlines of an inner claw are mirrored top to bottom. */
  readonly mirrored: boolean;
}

/** The foot with one claw in full: the outer claw on top, the inner one below, the skin between them in the middle. */
export function drawingOf(claw: ClawChoice | ""): Drawing {
  const mirrored = claw === "inner";
  const place = ({ y, ...shape }: ZoneShape): ZoneShape => ({ ...shape, y: mirrored ? DRAWING.height - y : y });
  return {
    claw: mirrored ? "inner" : "outer",
    zones: [...OUTER_CLAW, ...BETWEEN].map(place),
    other: {
      claw: mirrored ? "outer" : "inner",
      outline: OTHER_CLAW.outline,
      x: OTHER_CLAW.x,
      y: mirrored ? DRAWING.height - OTHER_CLAW.y : OTHER_CLAW.y,
    },
    mirrored,
  };
}
