// How deep the cutter is over the program's time: the passes at a glance; the pointer scrubs along it.
import { setAttributes, svg } from "../elements.ts";
import type { RouterPath } from "./router-paths.ts";

export interface DepthChart {
  readonly element: SVGSVGElement;
  show(path: RouterPath): void;
  moveTo(seconds: number): void;
}

/** In its own units: the style sheet stretches it. */
const [WIDE, HIGH] = [1000, 100];

export function createDepthChart(scrubTo: (seconds: number) => void): DepthChart {
  const element = svg("svg", {
    class: "router-depths",
    viewBox: `0 0 ${WIDE} ${HIGH}`,
    preserveAspectRatio: "none",
    "aria-hidden": "true",
  });
  const here = svg("path", { class: "depth-here" });
  let duration = 1;
  const scrub = (event: PointerEvent) => {
    const { left, width } = element.getBoundingClientRect();
    scrubTo(duration * Math.min(1, Math.max(0, (event.clientX - left) / width)));
  };
  element.addEventListener("pointerdown", (event) => {
    element.setPointerCapture(event.pointerId);
    scrub(event);
  });
  element.addEventListener("pointermove", (event) => {
    if (element.hasPointerCapture(event.pointerId)) scrub(event);
  });
  return {
    element,
    show(path) {
      duration = Math.max(1e-6, path.duration);
      element.replaceChildren(...chartMarks(path), here);
    },
    moveTo(seconds) {
      const x = (WIDE * seconds) / duration;
      setAttributes(here, { d: `M${x} 0V${HIGH}` });
    },
  };
}

function chartMarks({ steps, stock, duration }: RouterPath): SVGElement[] {
  const top = Math.max(0, ...steps.map(({ to }) => to.z));
  const bottom = Math.min(stock.min.z, ...steps.map(({ to }) => to.z));
  const y = (z: number) => (HIGH * (top - z)) / (top - bottom);
  const x = (seconds: number) => (WIDE * seconds) / duration;
  const mark = (seconds: number, z: number) => `${x(seconds).toFixed(2)} ${y(z).toFixed(2)}`;
  const pathOf = (isRapid: boolean) =>
    steps
      .filter(({ role }) => (role === "rapid") === isRapid)
      .map(({ from, to, begin, end }) => `M${mark(begin, from.z)}L${mark(end, to.z)}`)
      .join("");
  return [
    svg("rect", { class: "depth-wood", x: 0, y: y(0), width: WIDE, height: y(stock.min.z) - y(0) }),
    svg("path", { class: "depth-rapid", d: pathOf(true) }),
    svg("path", { class: "depth-cut", d: pathOf(false) }),
  ];
}
