// The recess in the bed for the cap iron's screw: centred, open at the top of the bed. Its lower end is rounded by the cutter, or
// square where the core's middle layers are set back.

import { arc, line, type Point, point, type Segment } from "@lamplane/geometry";
import type { Design } from "../table/index.ts";
import { coreLayers, recessLayers } from "./layers.ts";

/** Common practice, no published source: 1/16 in under the screw's head. */
const UNDER_HEAD = 1.6;

export interface Recess {
  readonly width: number;
  readonly depth: number;
  /** s of its lower end. */
  readonly low: number;
  readonly cornerRadius: number;
  /** Routed into the bed, or the bed line of the middle layers set back by its depth. */
  readonly madeBy: "router" | "layers";
  /** Radius that clears the corner between its floor and its lower end; 0 where the router makes it, or for a square one. */
  readonly relief: number;
}

/** The recess a design needs; none without a cap iron or a screw's head. mm. */
export function recessOf(design: Design): Recess | undefined {
  const { capIron, recess, core } = design;
  const { diameter, height, fromEdge } = capIron.screwHead;
  if (capIron.thickness === 0 || diameter === 0 || height === 0) return undefined;
  const wanted = recess.width === "auto" ? diameter + recess.clearance : recess.width;
  const layers = coreLayers(design, wanted);
  const setBack = layers && recessLayers(layers, wanted);
  return {
    width: setBack ? setBack.to - setBack.from : wanted,
    depth: recess.depth === "auto" ? height + UNDER_HEAD : recess.depth,
    low: fromEdge - diameter / 2 - recess.travel,
    cornerRadius: setBack ? 0 : recess.cutter / 2,
    madeBy: setBack ? "layers" : "router",
    relief: setBack ? core.cornerCutter / 2 : 0,
  };
}

/**
 * The recess's edge on the bed as an open chain, seen square to the bed from above: x is s up the bed, y is z across.
 * From the top on the right (z < 0) down, around the lower end, and up on the left. `topS` is where the bed ends.
 */
export function recessEdge({ width, low, cornerRadius: r }: Recess, topS: number): Segment[] {
  const half = width / 2;
  const corners: Point[] = [point(low + r, -half), point(low, r - half), point(low, half - r), point(low + r, half)];
  const chain: Segment[] = [
    line(point(topS, -half), corners[0]!),
    arc(corners[0]!, corners[1]!, point(low + r, r - half), -90),
    line(corners[1]!, corners[2]!),
    arc(corners[2]!, corners[3]!, point(low + r, half - r), -90),
    line(corners[3]!, point(topS, half)),
  ];
  return chain.filter((s) => s.from.x !== s.to.x || s.from.y !== s.to.y);
}
