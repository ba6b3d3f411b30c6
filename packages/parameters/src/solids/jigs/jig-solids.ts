// The jigs as solids: as they lie on the printer's table, and standing where they are used.
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import { line, pointsEqual, type Segment } from "@lamplane/geometry";
import {
  assertSolid,
  type Face,
  joinMeshes,
  type Mesh,
  mapFaces,
  mapVertices,
  meshBounds,
  tessellateFaces,
  type Vec3,
} from "@lamplane/geometry/mesh";
import type { Drawing, DrawingEntry } from "../../drawings/drawing.ts";
import { moveToOrigin } from "../../drawings/drawing-transform.ts";
import type { Elevation } from "../../elevation/elevation.ts";
import { applyPose, type JigName, type JigPlan } from "../../jigs/jig.ts";
import { jigPlans } from "../../jigs/jigs.ts";
import { toGeom3 } from "../geom3.ts";
import type { Stroke } from "./level-lines.ts";
import { printedBody } from "./printed-body.ts";

export interface Jig {
  /** Kebab-case, which is also its file's name: "bed-gauge". */
  readonly name: JigName;
  readonly title: string;
  /** In print orientation, the lowest corner of its box at 0, 0, 0. */
  readonly lying: Geom3;
  readonly lyingMesh: Mesh;
  /** Where it is used, in the plane's frame. */
  readonly inUse: Geom3;
  readonly inUseMesh: Mesh;
  /** mm³, from the outlines its mesh was made from. */
  readonly volume: number;
  /** Exact faces as it lies, without letters, a list for each shell. */
  readonly plainFaces: readonly (readonly Face[])[];
  /** Closed shells that it is made of: more than one where parts are screwed together. */
  readonly shells: number;
  /** What can be read on it. */
  readonly reads: readonly string[];
  /** Its lower left corner at 0, 0, its letters as single lines; absent for a jig that only a printer makes. */
  readonly drawing?: Drawing;
  readonly registersAgainst: string;
  readonly use: string;
  readonly printed: string;
}

/** Every jig that the plane can have, or those wanted, in the order of the work. The plane must be one that the checks let pass. */
export const planeJigs = (plane: Elevation, isWanted: (plan: JigPlan) => boolean = () => true): Jig[] =>
  jigPlans(plane).filter(isWanted).map(makeJigOnce);

/** Jigs kept for planes that have one alike: a class's planes share most of theirs. */
const MOST_KEPT = 64;
const kept = new Map<string, Jig>();

/** The jig of a plan, made once for all plans alike. */
function makeJigOnce(plan: JigPlan): Jig {
  const key = JSON.stringify(plan);
  const jig = kept.get(key) ?? makeJig(plan);
  kept.delete(key); // so that the jig asked for last is the last to go
  kept.set(key, jig);
  if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value!);
  return jig;
}

/** One jig from its plan. */
export function makeJig(plan: JigPlan): Jig {
  const { name, title, bodies, drawing, registersAgainst, use, printed } = plan;
  const made = bodies.map((body) => {
    const { faces, ...rest } = printedBody(body);
    return { body, mesh: tessellateFaces(faces), ...rest };
  });
  const volume = made.reduce((sum, { volume }) => sum + volume, 0);
  const mesh = joinMeshes(made.map((m) => m.mesh));
  assertSolid(name, mesh, volume);
  const toTable = shiftToTable(mesh);
  const lyingMesh = mapVertices(mesh, toTable);
  const inUseMesh = joinMeshes(made.map((m) => mapVertices(m.mesh, (p) => applyPose(m.body.pose, p))));
  return {
    name,
    title,
    lyingMesh,
    get lying() {
      return toGeom3(lyingMesh);
    },
    inUseMesh,
    get inUse() {
      return toGeom3(inUseMesh);
    },
    volume,
    plainFaces: made.map((m) => mapFaces(m.plainFaces, { point: toTable, direction: (d) => d })),
    shells: bodies.length,
    reads: made.flatMap((m) => m.reads),
    ...(drawing ? { drawing: engravedDrawing(drawing, bodies[0]!.thickness, made[0]!.strokes) } : {}),
    registersAgainst,
    use,
    printed,
  };
}

/** A flat jig's drawing with the letters of its print as single lines, at the place a machine starts from. */
const engravedDrawing = (drawing: Drawing, thickness: number, strokes: readonly Stroke[]): Drawing =>
  moveToOrigin({
    ...drawing,
    thickness: drawing.thickness ?? thickness,
    entries: [
      ...drawing.entries,
      ...strokes.map((stroke): DrawingEntry => ({ kind: "path", work: "ENGRAVE", segments: strokeLines(stroke) })),
    ],
  });

const strokeLines = (stroke: Stroke): Segment[] =>
  stroke.slice(1).flatMap((to, i) => (pointsEqual(stroke[i]!, to) ? [] : [line(stroke[i]!, to)]));

/** Shift along the table that lays the lowest corner of a mesh's box at 0, 0. */
function shiftToTable(mesh: Mesh): (p: Vec3) => Vec3 {
  const [x0, y0] = meshBounds(mesh).min;
  return ([x, y, z]) => [x - x0, y - y0, z];
}
