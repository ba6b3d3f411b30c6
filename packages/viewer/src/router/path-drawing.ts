// A set-up from above: stock, outline, every move of the cutter; what has been run stands out, with the wood that it took.
import { setAttributes, svg } from "../elements.ts";
import { linePath } from "../path-data.ts";
import { ROUTER } from "../words/router.ts";
import { pointAt } from "./place-on-path.ts";
import type { PathStep, RouterPath } from "./router-paths.ts";

export interface PathDrawing {
  readonly element: SVGSVGElement;
  show(path: RouterPath): void;
  /** @param step that runs at the time, in seconds */
  moveTo(step: number, seconds: number): void;
}

const AROUND = 6; // mm beside the stock
const TAB = 2.2; // mm: half a cross

export function createPathDrawing(): PathDrawing {
  const element = svg("svg", { class: "router-drawing", role: "img", preserveAspectRatio: "xMidYMid meet" });
  let shown: Shown | undefined;
  return {
    element,
    show(path) {
      shown = draw(element, path);
    },
    moveTo(step, seconds) {
      if (shown) moveCutter(shown, step, seconds);
    },
  };
}

interface Shown {
  readonly path: RouterPath;
  /** A line for each step, and the wood that it takes; none for a move over the wood. */
  readonly lines: readonly SVGPathElement[];
  readonly cuts: readonly (SVGPathElement | undefined)[];
  readonly now: SVGPathElement;
  readonly nowCut: SVGPathElement;
  readonly cutter: SVGCircleElement;
  done: number;
}

function draw(element: SVGSVGElement, path: RouterPath): Shown {
  const { min, max } = path.stock;
  const [width, height] = [max.x - min.x, max.y - min.y];
  const box = [min.x - AROUND, -max.y - AROUND, width + 2 * AROUND, height + 2 * AROUND];
  setAttributes(element, {
    viewBox: box.join(" "),
    "aria-label": ROUTER.drawing({ title: path.title, tabs: path.tabs.length }),
  });
  element.style.aspectRatio = `${box[2]} / ${box[3]}`;
  const lines = path.steps.map(({ d, role, to }) => {
    const line = svg("path", { d, class: `move move-${role}` });
    line.style.setProperty("--depth", String(Math.min(1, Math.max(0, to.z / min.z))));
    return line;
  });
  const cuts = path.steps.map((step) =>
    isInWood(step) ? svg("path", { d: step.d, ...widthOf(path, step) }) : undefined,
  );
  const now = svg("path", { class: "move is-done" });
  const nowCut = svg("path", {});
  const cutter = svg("circle", { class: "router-cutter" });
  element.replaceChildren(
    svg("rect", { class: "router-stock", x: min.x, y: -max.y, width, height }),
    svg("g", { class: "router-cuts" }, ...cuts.filter((cut) => cut !== undefined), nowCut),
    svg("g", { class: "router-outlines" }, ...path.outlines.map((d) => svg("path", { d }))),
    svg("g", {}, ...lines, now),
    svg("g", { class: "router-tabs" }, ...path.tabs.map(tabCross)),
    zeroMark(),
    cutter,
  );
  return { path, lines, cuts, now, nowCut, cutter, done: 0 };
}

const isInWood = ({ role, from, to }: PathStep): boolean => role !== "rapid" && Math.min(from.z, to.z) < 0;
const widthOf = ({ cutters }: RouterPath, { cutter }: PathStep) => ({ "stroke-width": cutters[cutter]!.diameter });

const tabCross = ({ x, y }: { readonly x: number; readonly y: number }): SVGPathElement =>
  svg("path", {
    d:
      linePath({ x: x - TAB, y: y - TAB }, { x: x + TAB, y: y + TAB }) +
      linePath({ x: x - TAB, y: y + TAB }, { x: x + TAB, y: y - TAB }),
  });

const zeroMark = (): SVGPathElement =>
  svg("path", { class: "router-zero", d: "M-3 0H10M0 3V-10M-1.6 0A1.6 1.6 0 1 0 1.6 0A1.6 1.6 0 1 0 -1.6 0" });

function moveCutter(shown: Shown, step: number, seconds: number): void {
  const { path, lines, cuts, now, nowCut, cutter } = shown;
  const [low, high] = [Math.min(shown.done, step), Math.max(shown.done, step)];
  for (let i = low; i < high; i++) {
    lines[i]!.classList.toggle("is-done", i < step);
    cuts[i]?.classList.toggle("is-done", i < step);
  }
  shown.done = step;
  const running = path.steps[step];
  if (!running) return;
  const at = pointAt(running, seconds);
  const d = partPath(running, at);
  setAttributes(now, { d, class: `move move-${running.role} is-done` });
  setAttributes(nowCut, { d: isInWood(running) ? d : "", class: "is-done", ...widthOf(path, running) });
  setAttributes(cutter, { cx: at.x, cy: -at.y, r: path.cutters[running.cutter]!.diameter / 2 });
  cutter.classList.toggle("is-up", at.z >= 0);
}

/** A step up to a point of it. */
function partPath({ from, centre, sweep }: PathStep, at: { readonly x: number; readonly y: number }): string {
  if (!centre || sweep === undefined) return linePath(from, at);
  const radius = Math.hypot(from.x - centre.x, from.y - centre.y);
  return `M${from.x} ${-from.y}A${radius} ${radius} 0 0 ${sweep > 0 ? 0 : 1} ${at.x} ${-at.y}`;
}
