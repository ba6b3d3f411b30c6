// The jigs as solids: as they lie on the printer's table, and standing where they are used.
import modeling from "@jscad/modeling";
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import type { Drawing } from "../../drawings/drawing.ts";
import type { Elevation } from "../../elevation/elevation.ts";
import { applyPose, type JigName, type JigPlan } from "../../jigs/jig.ts";
import { jigPlans } from "../../jigs/jigs.ts";
import { makeClosedSolid } from "../closed-solid.ts";
import type { Triangle, Vec3 } from "../faces.ts";
import { meshPrintedBody } from "./printed-body.ts";

const { geom3, poly3 } = modeling.geometries;

export interface Jig {
  /** Kebab-case, which is also its file's name: "bed-gauge". */
  readonly name: JigName;
  readonly title: string;
  /** In print orientation, the lowest corner of its box at 0, 0, 0. */
  readonly lying: Geom3;
  /** Where it is used, in the plane's frame. */
  readonly inUse: Geom3;
  /** mm³, from the outlines its mesh was made from. */
  readonly volume: number;
  /** Closed shells that it is made of: more than one where parts are screwed together. */
  readonly shells: number;
  /** What can be read on it. */
  readonly reads: readonly string[];
  /** Absent for a jig that only a printer makes. */
  readonly drawing?: Drawing;
  readonly registersAgainst: string;
  readonly use: string;
  readonly printed: string;
}

/** Every jig that the plane can have, in the order of the work. The plane must be one that the checks let pass. */
export const planeJigs = (plane: Elevation): Jig[] => jigPlans(plane).map(makeJig);

/** One jig from its plan. */
export function makeJig(plan: JigPlan): Jig {
  const { name, title, bodies, drawing, registersAgainst, use, printed } = plan;
  const made = bodies.map((body) => ({ body, ...meshPrintedBody(body) }));
  const volume = made.reduce((sum, { volume }) => sum + volume, 0);
  const triangles = made.flatMap((m) => m.triangles);
  const standing = made.flatMap(({ body, triangles }) => mapTriangles(triangles, (p) => applyPose(body.pose, p)));
  return {
    name,
    title,
    lying: makeClosedSolid(name, moveToTable(triangles), volume),
    // The same corners moved by the same sums: what closes lying closes standing.
    inUse: geom3.create(standing.map((t) => poly3.create(t as never))),
    volume,
    shells: bodies.length,
    reads: made.flatMap((m) => m.reads),
    ...(drawing ? { drawing } : {}),
    registersAgainst,
    use,
    printed,
  };
}

const mapTriangles = (triangles: readonly Triangle[], move: (p: Vec3) => Vec3): Triangle[] =>
  triangles.map(([a, b, c]) => [move(a), move(b), move(c)]);

/** Shifted along the table so that the lowest corner of its box lies at 0, 0, 0. */
function moveToTable(triangles: readonly Triangle[]): Triangle[] {
  const low = ([0, 1] as const).map((k) =>
    triangles.reduce((m, t) => Math.min(m, t[0][k], t[1][k], t[2][k]), Number.POSITIVE_INFINITY),
  );
  return mapTriangles(triangles, ([x, y, z]) => [x - low[0]!, y - low[1]!, z]);
}
