// The lines of one view in SVG: its strokes and areas, part names, dimension lines; over them what a tool draws.
import { reconcileChildren, setAttributes, svg } from "../elements.ts";
import type { View, ViewMark } from "../protocol/view.ts";
import { type LaidDimension, type Scale, toPixels } from "./layout.ts";
import type { LaidView } from "./view-layout.ts";
import { createGrainPatterns, grainId, lightGradients, type WoodGrain } from "./wood-grain.ts";

export interface ViewDrawing {
  readonly element: SVGSVGElement;
  readonly overlay: SVGGElement;
  readonly marks: SVGGElement;
  /** What is drawn over the marks: names, lines and arrows of dimensions. */
  readonly others: readonly SVGElement[];
  /** @param names what each name on the parts covers; undefined for one that has no room */
  drawView(view: View, scale: Scale, grain: WoodGrain, names: LaidView["names"]): void;
  drawDimensionLines(places: readonly LaidDimension[]): void;
}

/** @param isClipped whether the view is cut at a frame round its box */
export function createViewDrawing(name: View["name"], isClipped: boolean): ViewDrawing {
  const marks = svg("g", { class: "marks" });
  const names = svg("g", { class: "names" });
  const lines = svg("g", { class: "dimension-lines" });
  const arrows = svg("g", { class: "dimension-arrows" });
  const overlay = svg("g", { class: "overlay" });
  const patterns = createGrainPatterns(name);
  const window = svg("rect");
  const frame = svg("rect", { class: "window" });
  const element = svg(
    "svg",
    { role: "img", "aria-labelledby": `view-${name}` },
    svg(
      "defs",
      {},
      svg("clipPath", { id: `window-${name}` }, window),
      patterns.element,
      ...(name === "elevation" ? lightGradients() : []),
    ),
    svg("g", isClipped ? { "clip-path": `url(#window-${name})` } : {}, marks),
    ...(isClipped ? [frame] : []),
    names,
    lines,
    arrows,
    overlay,
  );
  return {
    element,
    overlay,
    marks,
    others: [names, lines, arrows],
    drawView(view, scale, grain, nameBoxes) {
      const { perMm, origin, width, height } = scale;
      setAttributes(element, { width, height, viewBox: `0 0 ${width} ${height}` });
      setAttributes(marks, { transform: `translate(${origin.x} ${origin.y}) scale(${perMm})` });
      patterns.draw(grain);
      reconcileChildren(marks, view.marks, () => svg("path"), markStyle(name));
      if (isClipped) for (const rect of [window, frame]) setAttributes(rect, boxInPixels(view, scale));
      drawNames(names, view, scale, nameBoxes);
    },
    drawDimensionLines(places) {
      drawPaths(
        lines,
        places.map((place) => place.lines()),
      );
      drawPaths(
        arrows,
        places.map((place) => place.arrows()),
      );
    },
  };
}

function boxInPixels({ box }: View, scale: Scale) {
  const [a, b] = [toPixels(scale, box.min), toPixels(scale, box.max)];
  return { x: a.x, y: b.y, width: b.x - a.x, height: a.y - b.y };
}

function drawNames(group: SVGGElement, { labels }: View, scale: Scale, boxes: LaidView["names"]) {
  reconcileChildren(
    group,
    labels.filter((_, i) => boxes[i] !== undefined),
    () => svg("text"),
    (element, { text, at }) => {
      setAttributes(element, { ...toPixels(scale, at) });
      element.textContent = text;
    },
  );
}

function drawPaths(group: SVGGElement, paths: readonly string[]) {
  reconcileChildren(
    group,
    paths,
    () => svg("path"),
    (path, d) => setAttributes(path, { d }),
  );
}

const markStyle =
  (view: string) =>
  (path: SVGPathElement, { d, line, area, isGrained, part, within }: ViewMark): void => {
    setAttributes(path, {
      d,
      class: `${line ? `line-${line}` : "line-none"} ${area ? `area-${area}` : "area-none"}`,
      "data-part": part,
    });
    // Set one by one: a page that is served allows no style in an attribute.
    const fill = isGrained ? `url(#${grainId(view, area!)})` : "";
    const clip = within ? `path("${within}")` : "";
    if (path.style.fill !== fill) path.style.fill = fill;
    if (path.style.clipPath !== clip) path.style.clipPath = clip;
  };
