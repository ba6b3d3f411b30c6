// A jig where it is used: seen square to its plate, with the wood that it lies against.

import {
  boundsOf,
  circleOutline,
  cosDeg,
  line,
  type Outline,
  type Point,
  point,
  polygon,
  sinDeg,
  tessellate,
  transformSegment,
} from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { blocksAt, cheekShape, planeToBed, recessEdge } from "@lamplane/parameters/elevation";
import { applyPose, type JigPlan, type Point3 } from "@lamplane/parameters/jigs";
import type { Picture } from "../../picture/picture.ts";
import { JIG_DRAWING } from "../../words/drawings.ts";
import { composeViews, type PictureRoom, view } from "../views.ts";
import { boxPolygon, clipToWindow } from "../window.ts";
import { WOOD_SHADE } from "./stack.ts";

const PLASTIC = 0.22;

/** Two directions on the page for a view: the plane's side, or the bed seen square to it. */
interface ViewDirection {
  readonly across: Point3;
  readonly up: Point3;
  readonly wood: readonly Outline[];
}

/** The fit test is tried on a drill's shank, not on the plane: it has no picture in use. */
export const jigPicture = (plane: Elevation, plan: JigPlan, room: PictureRoom): Picture | undefined =>
  plan.name === "fit-test" ? undefined : drawJig(plane, plan, room);

function drawJig(plane: Elevation, plan: JigPlan, room: PictureRoom): Picture {
  const { across, up, wood } = plan.name === "recess-template" ? bedView(plane) : sideView(plane, plan);
  const bodies = plan.bodies.map(({ boundary, holes, pose }) =>
    [boundary, ...holes.map((hole) => hole.outline)].map((outline) =>
      polygon(...tessellate(outline, CHORDS).map((p) => projectPoint(applyPose(pose, [p.x, p.y, 0]), { across, up }))),
    ),
  );
  const { min, max } = boundsOf(bodies.flat(2).map((s) => s.from));
  const window = { left: min.x - ROUND, right: max.x + ROUND, low: min.y - ROUND, high: max.y + ROUND };
  const near = wood.map((piece) => clipToWindow(piece, window)).filter((piece) => piece.length > 2);
  return composeViews({ name: `jig-${plan.name}`, title: JIG_DRAWING.inUse({ title: plan.title }) }, room, [
    view(plan.name.replaceAll("-", " "), (sketch) => {
      for (const piece of near) sketch.area(WOOD_SHADE, piece);
      for (const outlines of bodies) {
        sketch.area(PLASTIC, ...outlines);
        for (const outline of outlines) sketch.outline("outline", outline);
      }
      for (const piece of near) sketch.outline("hidden", piece);
    }),
  ]);
}

/** Wood shown round a jig, mm. */
const ROUND = 30;
/** How far a chord may lie off a rounded corner, mm: less than a line is wide. */
const CHORDS = 0.05;

const dot = (a: Point3, b: Point3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const projectPoint = (place: Point3, { across, up }: Pick<ViewDirection, "across" | "up">): Point =>
  point(dot(place, across), dot(place, up));

/** Square to the jig's plate, as it is held: a cradle and a sled as they stand on bench and saw, all else as the plane lies. */
function sideView(plane: Elevation, { name, bodies }: JigPlan): ViewDirection {
  const asHeld = name === "bed-cradle" || name === "wedge-sled";
  const { pose } = bodies[0]!;
  const looking = asHeld ? { across: pose.x, up: pose.y } : { across: [1, 0, 0] as const, up: [0, 1, 0] as const };
  const { front, bed } = blocksAt(plane, "blank");
  const pieces: Readonly<Record<string, readonly Outline[]>> = {
    "bed-gauge": [bed],
    "ramp-gauge": [front],
    "bed-cradle": [bed],
    "wedge-sled": [plane.wedge],
    "throat-spacer": [front, bed, plane.pinSection],
    "pin-guide": [cheekShape(plane, "blank").boundary, circleOutline(plane.pinHole)],
  };
  const seen = (outline: Outline) =>
    polygon(...tessellate(outline, CHORDS).map(({ x, y }) => projectPoint([x, y, 0], looking)));
  return { ...looking, wood: (pieces[name] ?? []).map(seen) };
}

/** Square to the bed, its tip below; the maker's left is on the right. */
function bedView(plane: Elevation): ViewDirection {
  const up: Point3 = [cosDeg(plane.frame.bedAngle), sinDeg(plane.frame.bedAngle), 0];
  const { mouthX } = plane.frame;
  const rise = mouthX * up[0]; // heights on the page count from here up the iron
  const low = planeToBed(plane.frame, plane.points.bedTip).s;
  const high = planeToBed(plane.frame, blocksAt(plane, "blank").bedChain.at(-1)!.to).s;
  const half = plane.widths.core / 2;
  const wood: Outline[] = [boxPolygon(-half, low + rise, half, high + rise)];
  if (plane.recess) {
    const edge = recessEdge(plane.recess, high).map((s) =>
      transformSegment(s, { turn: 90, mirrored: true, shift: point(0, rise) }),
    );
    wood.push([...edge, line(edge.at(-1)!.to, edge[0]!.from)]);
  }
  return { across: [0, 0, 1], up, wood };
}
