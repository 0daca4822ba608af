import "./claw-map.css";
import { useRef } from "preact/hooks";
import { clawZones } from "../../../core/claws/claw-zones";
import { type Drawing, DRAWING, drawingOf, type ZoneShape } from "./claw-shapes";
import type { ClawChoice } from "./fields";

interface ClawMapProps {
  readonly claw: ClawChoice | "";
  /** The zone chosen; undefined for none. */
  readonly zone: number | undefined;
  readonly disabled: boolean;
  pointed(claw: ClawChoice, zone: number): void;
  chooseClaw(claw: ClawChoice): void;
}

const PLACES = new Map(clawZones.map(({ zone, place }) => [zone, place]));
const FLIP = `translate(0 ${DRAWING.height}) scale(1 -1)`;
const STEPS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/** The zones of a foot to point at, or to walk through with the arrow keys. */
export function ClawMap({ claw, zone, disabled, pointed, chooseClaw }: ClawMapProps) {
  const svg = useRef<SVGSVGElement>(null);
  const drawing = drawingOf(claw);
  const order = drawing.zones.map((shape) => shape.zone).sort((a, b) => a - b);
  const stop = zone !== undefined && order.includes(zone) ? zone : 0;
  const onKeyDown = (event: KeyboardEvent, at: number) => {
    const step = STEPS[event.key];
    if (step !== undefined) {
      const next = order[(order.indexOf(at) + step + order.length) % order.length];
      svg.current?.querySelector<SVGElement>(`[data-zone="${next}"]`)?.focus();
    } else if (event.key === " " || event.key === "Enter") {
      if (!disabled) pointed(drawing.claw, at);
    } else if (/^\d$/.test(event.key)) {
      const typed = ONE_THEN[event.key] !== undefined && zone === 1 ? ONE_THEN[event.key]! : Number(event.key);
      if (!disabled) pointed(drawing.claw, typed);
    } else return;
    event.preventDefault();
  };
  return (
    <svg
      ref={svg}
      class="claw-map"
      viewBox={`0 0 ${DRAWING.width} ${DRAWING.height}`}
      role="group"
      aria-label={`Zones of the ${drawing.claw} claw and between the claws, toe to the left`}
    >
      <g role="radiogroup" aria-label="Zone">
        {drawing.zones.map((shape) => (
          <Zone
            key={shape.zone}
            shape={shape}
            drawing={drawing}
            chosen={shape.zone === zone}
            tabindex={shape.zone === stop && !disabled ? 0 : -1}
            choose={() => !disabled && pointed(drawing.claw, shape.zone)}
            onKeyDown={(event) => onKeyDown(event, shape.zone)}
          />
        ))}
      </g>
      <g
        class="other-claw"
        role="button"
        tabindex={disabled ? -1 : 0}
        aria-label={`Show the ${drawing.other.claw} claw`}
        onClick={() => !disabled && chooseClaw(drawing.other.claw)}
        onKeyDown={(event) => {
          if (event.key !== "Enter" && event.key !== " ") return;
          event.preventDefault();
          if (!disabled) chooseClaw(drawing.other.claw);
        }}
      >
        <path d={drawing.other.outline} transform={drawing.mirrored ? FLIP : undefined} />
        <text x={drawing.other.x} y={drawing.other.y}>
          {drawing.other.claw} claw
        </text>
      </g>
    </svg>
  );
}

/** A second digit after zone 1 makes 10, 11 or 12. */
const ONE_THEN: Readonly<Record<string, number>> = { 0: 10, 1: 11, 2: 12 };

/** Which way the claw lies. */
const ENDS: Readonly<Record<number, string>> = { 1: "toe", 6: "heel" };

interface ZoneProps {
  readonly shape: ZoneShape;
  readonly drawing: Drawing;
  readonly chosen: boolean;
  readonly tabindex: number;
  choose(): void;
  onKeyDown(event: KeyboardEvent): void;
}

function Zone({ shape, drawing, chosen, tabindex, choose, onKeyDown }: ZoneProps) {
  const { zone, outline, x, y } = shape;
  return (
    <g
      class={chosen ? "zone chosen" : "zone"}
      role="radio"
      aria-checked={chosen}
      aria-label={`Zone ${zone}, ${PLACES.get(zone)}`}
      tabindex={tabindex}
      data-zone={zone}
      onClick={choose}
      onKeyDown={onKeyDown}
    >
      <path d={outline} transform={drawing.mirrored ? FLIP : undefined} />
      {chosen && <circle cx={x} cy={y} r="17" />}
      <text x={x} y={y}>
        {zone}
      </text>
      {ENDS[zone] !== undefined && (
        <text class="end" x={x} y={y + 26}>
          {ENDS[zone]}
        </text>
      )}
    </g>
  );
}

/** "Zone 4: sole, ulcer site". */
export function zoneName(zone: number | undefined): string {
  const place = zone === undefined ? undefined : PLACES.get(zone);
  return place === undefined ? "" : `Zone ${zone}: ${place}`;
}
