// Measuring between two points of the elevation: named places or corners under the pointer; by keyboard from two lists.
import { atan2Deg } from "@lamplane/geometry";
import { formatAngle, formatValue, type LengthStyle } from "@lamplane/parameters/units";
import { html, reconcileChildren, setAttributes, svg } from "../elements.ts";
import type { SheetPlane } from "../protocol/sheet-data.ts";
import type { SheetPoint } from "../protocol/view.ts";
import { keyInWords } from "../state/format.ts";
import { MEASURING } from "../words/page.ts";
import type { Field } from "./field.ts";

export interface MeasureTool {
  readonly element: HTMLElement;
  show(plane: SheetPlane): void;
  toggle(): boolean;
}

const NEAR = 14; // px: a press this near to a named place means the place

type End = { readonly name: string } | { readonly spot: SheetPoint };

export function createMeasureTool(field: Field): MeasureTool {
  const lists = createEndLists((end, name) => {
    ends[end] = { name };
    draw();
  });
  const result = html("output", { "aria-live": "polite" });
  const help = html("span", { class: "measure-help" }, MEASURING.help);
  const [from, to] = lists.elements;
  const element = html("p", { class: "measure", hidden: true }, "from ", from, " to ", to, " ", result, help);
  const ends: [End, End] = [{ name: "edge" }, { name: "pinCentre" }];
  let next: 0 | 1 = 0;
  let plane: SheetPlane | undefined;
  const overlay = createMeasureOverlay(field);

  const spotOf = (end: End): SheetPoint | undefined => ("spot" in end ? end.spot : plane?.points[end.name]);
  function draw() {
    if (!plane || element.hidden) return;
    const [a, b] = ends.map(spotOf);
    if (!a || !b) return;
    overlay.draw(a, b, Object.values(plane.points));
    result.textContent = resultText(a, b, plane.design);
    lists.choose(ends);
  }
  field.element.addEventListener("pointerdown", (event) => {
    if (element.hidden || !plane || (event.target as Element).closest(".number")) return;
    const frame = field.overlay.ownerSVGElement!.getBoundingClientRect();
    const at = { x: event.clientX - frame.left, y: event.clientY - frame.top };
    ends[next] = nearestPoint(plane, field, at) ?? { spot: field.spotAt(at) };
    next = next === 0 ? 1 : 0;
    draw();
  });

  return {
    element,
    show(now) {
      if (!plane) lists.fill(Object.keys(now.points));
      plane = now;
      draw();
    },
    toggle() {
      element.hidden = !element.hidden;
      overlay.show(!element.hidden);
      field.element.classList.toggle("is-measuring", !element.hidden);
      draw();
      return !element.hidden;
    },
  };
}

/** Two lists of the named points, for the keyboard: where measuring begins and where it ends. */
function createEndLists(chosen: (end: 0 | 1, name: string) => void) {
  const elements = [
    html("select", { "aria-label": MEASURING.from }),
    html("select", { "aria-label": MEASURING.to }),
  ] as const;
  elements.forEach((select, k) => {
    select.addEventListener("change", () => chosen(k as 0 | 1, select.value));
  });
  return {
    elements,
    fill(names: readonly string[]) {
      for (const select of elements)
        select.append(
          html("option", { value: "" }, "a point"),
          ...names.map((name) => html("option", { value: name }, keyInWords(name))),
        );
    },
    choose(ends: readonly [End, End]) {
      elements.forEach((select, k) => {
        const end = ends[k as 0 | 1];
        select.value = "name" in end ? end.name : "";
      });
    },
  };
}

/** Over the view: a line between the two ends, and a dot at each named point. */
function createMeasureOverlay(field: Field) {
  const line = svg("path", { class: "measure-line" });
  const dots = svg("g", { class: "measure-places" });
  const group = svg("g", { class: "measuring", visibility: "hidden" }, dots, line);
  field.overlay.append(group);
  return {
    show: (isVisible: boolean) => setAttributes(group, { visibility: isVisible ? "visible" : "hidden" }),
    draw(a: SheetPoint, b: SheetPoint, spots: readonly SheetPoint[]) {
      const [p, q] = [field.pixelsOf(a), field.pixelsOf(b)];
      setAttributes(line, { d: `M${p.x} ${p.y}L${q.x} ${q.y}` });
      reconcileChildren(
        dots,
        spots,
        () => svg("circle", { r: 3.2 }),
        (dot, spot) => {
          const { x, y } = field.pixelsOf(spot);
          setAttributes(dot, { cx: x, cy: y });
        },
      );
    },
  };
}

function nearestPoint({ points }: SheetPlane, field: Field, at: SheetPoint): End | undefined {
  const distances = Object.entries(points).map(([name, spot]) => {
    const p = field.pixelsOf(spot);
    return { name, away: Math.hypot(p.x - at.x, p.y - at.y) };
  });
  const [first] = distances.sort((a, b) => a.away - b.away);
  return first && first.away <= NEAR ? { name: first.name } : undefined;
}

function resultText(a: SheetPoint, b: SheetPoint, style: LengthStyle): string {
  const [across, up] = [b.x - a.x, b.y - a.y];
  const length = (mm: number) => formatValue(mm, "mm", style);
  const slope = atan2Deg(Math.abs(up), Math.abs(across));
  return MEASURING.result({
    length: length(Math.hypot(across, up)),
    along: length(Math.abs(across)),
    up: length(Math.abs(up)),
    angle: formatAngle(slope, { decimals: 2, fixed: true, halves: "binary" }),
  });
}
