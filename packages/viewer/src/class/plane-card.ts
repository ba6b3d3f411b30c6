// One plane of a class: its drawing, how far its build is, what it is stuck on. A click opens it.
import { html, svg } from "../elements.ts";
import { FIRST_SHOWN } from "../protocol/build-steps.ts";
import type { PlaneCard, PlaneProgress } from "../protocol/class-view.ts";
import { designAddress, followedPlaneAddress } from "../state/address.ts";
import { CLASS } from "../words/class.ts";

const ROUND = 4; // mm round a drawing

/** @param isFollowed whether its files are those that `lamplane view` follows: what is changed is written there */
export function planeCard({ number, name, plane, notes }: PlaneCard, isFollowed: boolean): HTMLElement {
  const head = [html("span", { class: "plane-number" }, String(number)), " ", html("span", {}, name)];
  const lines = notes.map((note) => html("p", { class: "plane-note" }, note));
  if (!plane) return html("li", { class: "plane is-faulty" }, html("h3", {}, ...head), ...lines);
  const address = isFollowed ? followedPlaneAddress(plane.file.name) : designAddress(plane.file, FIRST_SHOWN);
  const link = html("a", { href: address, title: CLASS.openPlane(name) }, ...head);
  return html(
    "li",
    { class: plane.isStuck ? "plane is-stuck" : "plane" },
    html("h3", {}, link),
    planeDrawing(plane),
    html("p", { class: "plane-size" }, plane.size),
    html(
      "p",
      { class: "plane-step" },
      html("span", {}, plane.step),
      ...(plane.hurdle === "" ? [] : [html("strong", {}, plane.hurdle)]),
    ),
    html("progress", {
      max: plane.steps,
      value: plane.stepsDone,
      "aria-label": CLASS.progress({ done: plane.stepsDone, steps: plane.steps }),
    }),
    html("p", { class: "plane-measured" }, CLASS.measured(plane.measured)),
    ...lines,
  );
}

function planeDrawing({ drawing }: PlaneProgress): Element {
  if (!drawing) return html("div", { class: "plane-drawing" });
  const { min, max } = drawing.box;
  const [width, height] = [max.x - min.x + 2 * ROUND, max.y - min.y + 2 * ROUND];
  return svg(
    "svg",
    {
      class: "plane-drawing strip-drawing",
      viewBox: `${min.x - ROUND} ${-max.y - ROUND} ${width} ${height}`,
      "aria-hidden": "true",
    },
    ...drawing.marks.map(({ d, area }) => svg("path", { d, class: `area-${area}` })),
  );
}
