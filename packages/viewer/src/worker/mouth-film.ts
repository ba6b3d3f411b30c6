// The mouth film of a plane: shapes round the mouth, and its opening at every height that the sole may reach.
import { lifeDepth } from "@lamplane/bench";
import { cosDeg, cotDeg, distance, type Outline, type Point, point, ringTriples, sinDeg } from "@lamplane/geometry";
import { capIronOutline, type Elevation, mouthOpeningAt } from "@lamplane/parameters/elevation";
import type { MouthFilm } from "../protocol/mouth-film.ts";
import { outlineMark } from "./views/outline-mark.ts";
import { stagePlane } from "./views/stage-plane.ts";

/** What the film shows round the cutting edge, mm. */
const AROUND = { toe: 7, heel: 11, below: 0.8, above: 7 };
const STEPS = 120;
/** How far a shaving is drawn up the cap iron's front, or up an iron without one, mm. */
const UP_FRONT = 3.6;
const UP_FACE = 5.5;

export function makeMouthFilm(plane: Elevation): MouthFilm {
  const { edge } = plane.points;
  const { design, frame } = plane;
  const glued = -design.sole.allowance;
  const last = lifeDepth(plane);
  const at = stagePlane(plane, "dry-fit");
  const cap = capIronOutline(design, frame);
  return {
    box: {
      min: point(edge.x - AROUND.toe, glued - AROUND.below),
      max: point(edge.x + AROUND.heel, Math.max(last + 2, AROUND.above)),
    },
    wood: [outlineMark(at.front, { area: "wood" }), outlineMark(at.bed, { area: "wood" })],
    steel: [outlineMark(plane.iron, { area: "steel" }), ...(cap ? [outlineMark(cap, { area: "cap" })] : [])],
    along: point(cotDeg(frame.bedAngle), 1),
    shaving: shavingPath(plane, cap),
    soles: { first: glued, last },
    openings: Array.from({ length: STEPS + 1 }, (_, i) => {
      const sole = glued + ((last - glued) * i) / STEPS;
      return { sole, opening: mouthOpeningAt(plane, sole) };
    }),
    style: { units: design.units, shop: design.shop },
  };
}

/** From the edge to the cap iron's tip and up its front; without one up the iron's face. */
function shavingPath({ points: { edge }, frame }: Elevation, cap: Outline | undefined): Point[] {
  if (!cap) {
    const { faceAngle } = frame;
    return [edge, point(edge.x + UP_FACE * cosDeg(faceAngle), edge.y + UP_FACE * sinDeg(faceAngle))];
  }
  const corners = ringTriples(cap.map(({ from }) => from));
  const [before, lowest, after] = corners.reduce((a, b) => (b[1].y < a[1].y ? b : a));
  const front = before.x < after.x ? before : after;
  const share = Math.min(1, UP_FRONT / distance(lowest, front));
  return [edge, lowest, point(lowest.x + share * (front.x - lowest.x), lowest.y + share * (front.y - lowest.y))];
}
