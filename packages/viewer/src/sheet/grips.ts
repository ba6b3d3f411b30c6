// What can be taken hold of on the elevation: the iron's length, the bed's angle, the mouth, the body's length.
import { atan2Deg, cosDeg, sinDeg } from "@lamplane/geometry";
import { rowAt } from "@lamplane/parameters/design";
import type { NumberRow } from "@lamplane/parameters/table";
import type { LengthStyle } from "@lamplane/parameters/units";
import { setAttributes, svg } from "../elements.ts";
import type { SheetPlane } from "../protocol/sheet-data.ts";
import type { SheetPoint, View } from "../protocol/view.ts";
import { stepSize, stepValue } from "../state/format.ts";
import { GRIPS } from "../words/page.ts";
import { type Scale, toPixels, toSheet } from "./layout.ts";
import type { ControlHandlers } from "./number-control.ts";
import type { NumberBox } from "./obstacles.ts";

type GripName = keyof typeof GRIPS;

/** Where a grip stands (px from its place on the drawing), which way it is drawn, and what a drag makes of its number. */
interface GripShape {
  readonly path: string;
  /** Place on the view, and px from there. */
  readonly at: SheetPoint;
  readonly off: SheetPoint;
  /** Degrees, counter-clockwise from the right. */
  readonly turn: number;
  /** Steps of the number between two places on the view. */
  steps(from: SheetPoint, to: SheetPoint, step: number, perMm: number): number;
}

const PER_STEP = 6; // px for a step of a number too small to be followed by the pointer
const ARROW = "M-9 0L9 0M-9 0l5 -3.5M-9 0l5 3.5M9 0l-5 -3.5M9 0l-5 3.5";

export interface Grips {
  readonly element: SVGGElement;
  draw(view: View, plane: SheetPlane, scale: Scale): void;
}

export function createGrips(handlers: ControlHandlers): Grips {
  const element = svg("g", { class: "grips", "aria-hidden": "true" });
  let drawn: Drawn | undefined;
  const made = new Map<GripName, SVGGElement>();
  for (const name of Object.keys(GRIPS) as GripName[]) {
    const grip = svg("g", { class: "grip", "data-grip": name, "data-part": name });
    grip.append(svg("circle", { class: "grip-reach", r: 17 }), svg("path", { d: ARROW }), svg("title"));
    grip.lastElementChild!.textContent = GRIPS[name];
    attachDrag(grip, name, () => drawn, handlers);
    made.set(name, grip);
    element.append(grip);
  }
  return {
    element,
    draw(view, plane, scale) {
      drawn = { view, plane, scale };
      for (const [name, grip] of made) {
        const shape = gripShape(name, plane, view);
        const isHidden = !isHeldIn(view, shape) || plane.locked.includes(shape.path);
        const { x, y } = toPixels(scale, shape.at);
        const transform = `translate(${x + shape.off.x} ${y + shape.off.y}) rotate(${-shape.turn})`;
        setAttributes(grip, { transform, visibility: isHidden ? "hidden" : undefined });
      }
    },
  };
}

const REACH = 13; // px from a grip's middle to its ends

/** Whether there is a grip for a number: only what the view shows can be taken hold of. */
const isHeldIn = (view: View, { path }: GripShape): boolean =>
  view.dimensions.some(({ id, isHeld }) => isHeld && id === path);

/** What the grips cover on the field. */
export function gripBoxes(view: View, plane: SheetPlane, scale: Scale): NumberBox[] {
  const shapes = (Object.keys(GRIPS) as GripName[]).map((name) => gripShape(name, plane, view));
  return shapes
    .filter((shape) => isHeldIn(view, shape))
    .map(({ at, off }) => {
      const { x, y } = toPixels(scale, at);
      const [left, top] = [x + off.x - REACH, y + off.y - REACH];
      return { left, top, right: left + 2 * REACH, bottom: top + 2 * REACH };
    });
}

function gripShape(name: GripName, { points, figures, design }: SheetPlane, view: View): GripShape {
  const bed = figures.bedAngle ?? design.bed.angle;
  const edge = points.edge!;
  const along = (s: number): SheetPoint => ({ x: edge.x + s * cosDeg(bed), y: edge.y + s * sinDeg(bed) });
  const level = ({ x }: SheetPoint, to: SheetPoint) => to.x - x;
  if (name === "iron")
    return {
      path: "iron.length",
      at: along(design.iron.length),
      off: { x: 16 * cosDeg(bed), y: -16 * sinDeg(bed) },
      turn: bed,
      steps: (from, to, step) => ((to.x - from.x) * cosDeg(bed) + (to.y - from.y) * sinDeg(bed)) / step,
    };
  if (name === "bed") {
    const angle = ({ x, y }: SheetPoint) => atan2Deg(y - edge.y, x - edge.x);
    const at = along(0.86 * Math.hypot(points.bedTop!.x - edge.x, points.bedTop!.y));
    const off = { x: 20 * sinDeg(bed), y: 20 * cosDeg(bed) };
    return { path: "bed.angle", at, off, turn: bed + 90, steps: (from, to, step) => (angle(to) - angle(from)) / step };
  }
  if (name === "mouth")
    return {
      path: "mouth.opening",
      at: edge,
      off: { x: 0, y: 11 },
      turn: 0,
      steps: (from, to, _, perMm) => (-level(from, to) * perMm) / PER_STEP,
    };
  const at = { x: points.heel!.x, y: view.box.min.y };
  return { path: "body.length", at, off: { x: 18, y: 13 }, turn: 0, steps: (a, b, step) => level(a, b) / step };
}

interface Drawn {
  readonly view: View;
  readonly plane: SheetPlane;
  readonly scale: Scale;
}

interface GripDrag {
  readonly from: SheetPoint;
  readonly value: number;
  readonly shape: GripShape;
  readonly style: LengthStyle;
}

function attachDrag(grip: SVGGElement, name: GripName, drawn: () => Drawn | undefined, handlers: ControlHandlers) {
  let drag: GripDrag | undefined;
  let last = 0; // steps
  /** Of the drawing in the window when the drag began: what is said meanwhile may move it. */
  let frame = new DOMRect();
  const placeOf = (event: PointerEvent, scale: Scale): SheetPoint => {
    return toSheet(scale, { x: event.clientX - frame.left, y: event.clientY - frame.top });
  };
  grip.addEventListener("pointerdown", (event) => {
    const now = drawn();
    if (!now || event.button !== 0) return;
    event.preventDefault();
    const shape = gripShape(name, now.plane, now.view);
    const value = numberAt(now.plane, shape.path);
    if (value === undefined) return;
    frame = grip.ownerSVGElement!.getBoundingClientRect();
    drag = { from: placeOf(event, now.scale), value, shape, style: now.plane.design };
    last = 0;
    grip.setPointerCapture(event.pointerId);
    grip.classList.add("is-held");
  });
  grip.addEventListener("pointermove", (event) => {
    const now = drawn();
    if (!drag || !now) return;
    const row = rowAt(drag.shape.path) as NumberRow;
    const size = stepSize(row, drag.style);
    const steps = Math.round(drag.shape.steps(drag.from, placeOf(event, now.scale), size, now.scale.perMm));
    if (steps === last) return;
    last = steps;
    handlers.change([[drag.shape.path, stepValue(drag.value, steps, row, drag.style)]], true);
  });
  const end = () => {
    if (!drag) return;
    drag = undefined;
    grip.classList.remove("is-held");
    handlers.commit();
  };
  grip.addEventListener("pointerup", end);
  grip.addEventListener("pointercancel", end);
}

function numberAt({ views }: SheetPlane, path: string): number | undefined {
  return views.flatMap(({ dimensions }) => dimensions).find(({ parameter }) => parameter === path)?.value;
}
