// A jig where it is used: seen square to its plate, with the wood that it lies against.
import { blocksAt, cheekShape } from "../../../elevation/blocks.ts";
import type { Elevation } from "../../../elevation/elevation.ts";
import { toIron } from "../../../elevation/frame.ts";
import { facetted, line, type Outline, type Point, point, polygon } from "../../../elevation/outline.ts";
import { placedSegment } from "../../../elevation/place.ts";
import { recessEdge } from "../../../elevation/recess.ts";
import { type JigPlan, type Place3, type Standing, stood } from "../../../jigs/jig.ts";
import { cosDeg, sinDeg } from "../../../trig.ts";
import type { Picture } from "../../picture.ts";
import { box, composed, type Sketch, view } from "../sketch.ts";
import { WOOD } from "./stack.ts";

const PLASTIC = 0.22;

/** Two directions on the page for a view: the plane's side, or the bed seen square to it. */
interface Looking {
  readonly across: Place3;
  readonly up: Place3;
  readonly wood: (sketch: Sketch, plane: Elevation) => void;
}

/** The fit test is tried on a drill's shank, not on the plane: it has no picture in use. */
export const jigPicture = (plane: Elevation, plan: JigPlan): Picture | undefined =>
  plan.name === "fit-test" ? undefined : drawn(plane, plan);

function drawn(plane: Elevation, plan: JigPlan): Picture {
  const looking = plan.name === "recess-template" ? ontoBed(plane) : fromSide(plan);
  return composed({ name: `jig-${plan.name}`, title: `${plan.title}, where it is used` }, [
    view(plan.name.replaceAll("-", " "), { width: 92, height: 76, most: 1 }, (sketch) => {
      looking.wood(sketch, plane);
      for (const { boundary, holes, standing } of plan.bodies) {
        const seen = (outline: Outline) => polygon(...facetted(outline, 0.05).map((p) => onPage(p, standing, looking)));
        const outlines = [boundary, ...holes.map((hole) => hole.outline)].map(seen);
        sketch.area(PLASTIC, ...outlines);
        for (const outline of outlines) sketch.outline("outline", outline);
      }
    }),
  ]);
}

const dot = (a: Place3, b: Place3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

function onPage(p: Point, standing: Standing, { across, up }: Looking): Point {
  const place = stood(standing, [p.x, p.y, 0]);
  return point(dot(place, across), dot(place, up));
}

/** The plane from its left, toe to the left; which pieces are there depends on the step. */
function fromSide({ name }: JigPlan): Looking {
  const wood = (sketch: Sketch, plane: Elevation) => {
    const { front, bed } = blocksAt(plane, "blank");
    const pieces: Record<string, readonly Outline[]> = {
      "bed-gauge": [bed],
      "ramp-gauge": [front],
      "bed-cradle": [bed],
      "wedge-sled": [plane.wedge],
      "throat-spacer": [front, bed],
      "pin-guide": [cheekShape(plane, "blank").boundary],
    };
    for (const piece of pieces[name] ?? []) sketch.area(WOOD, piece).outline("hidden", piece);
    if (name === "throat-spacer") sketch.outline("outline", plane.pinSection);
    if (name === "pin-guide") sketch.circle("outline", plane.pinHole).cross(plane.pinHole);
  };
  return { across: [1, 0, 0], up: [0, 1, 0], wood };
}

/** Square to the bed, its tip below; the maker's left is on the right. */
function ontoBed(plane: Elevation): Looking {
  const [c, s] = [cosDeg(plane.frame.bedAngle), sinDeg(plane.frame.bedAngle)];
  const away = -plane.frame.mouthX * c; // so that heights count up the iron from the edge
  const up: Place3 = [c, s, 0];
  const wood = (sketch: Sketch) => {
    const { x, y } = plane.points.bedTip;
    const low = toIron(plane.frame, point(x, y)).s - away;
    const high = toIron(plane.frame, blocksAt(plane, "blank").bedChain.at(-1)!.to).s - away;
    const half = plane.widths.core / 2;
    sketch.area(WOOD, box(-half, low, half, high)).outline("hidden", box(-half, low, half, high));
    if (plane.recess) {
      const edge = recessEdge(plane.recess, high + away).map((seg) =>
        placedSegment(seg, { turn: 90, mirrored: true, shift: point(0, -away) }),
      );
      sketch.line("cut", ...edge);
    }
    sketch.line("axis", line(point(0, low - 3), point(0, high + 3)));
  };
  return { across: [0, 0, 1], up, wood };
}
