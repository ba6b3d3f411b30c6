// All jigs of a plane: their plans, and those that cannot be made, with the reason.

import { segmentBounds } from "@lamplane/geometry";
import type { Elevation } from "../elevation/elevation.ts";
import { memoizeByPlane } from "../elevation/memoize.ts";
import { bedCradle } from "./bed-cradle.ts";
import { fitTest } from "./fit-test.ts";
import { bedGauge, rampGauge } from "./gauges.ts";
import type { JigForm, JigPlan, JigResult, NoJig } from "./jig.ts";
import { pinGuide } from "./pin-guide.ts";
import { withPlate } from "./plate.ts";
import { recessTemplate } from "./recess-template.ts";
import { throatSpacer } from "./throat-spacer.ts";
import { wedgeSled } from "./wedge-sled.ts";

/** In the order in which they are used. */
const JIGS: readonly ((plane: Elevation) => JigResult)[] = [
  fitTest,
  bedGauge,
  rampGauge,
  bedCradle,
  recessTemplate,
  pinGuide,
  wedgeSled,
  throatSpacer,
];

/** Every jig that this plane asks for: where no recess is routed, no template for one. */
const jigsOf = memoizeByPlane((plane): readonly JigResult[] =>
  JIGS.filter((jig) => plane.recess?.madeBy === "router" || jig !== recessTemplate).map((jig) => jig(plane)),
);

/** Forms of all jigs that this plane can have. The plane must be one that the checks let pass. */
export const jigForms = (plane: Elevation): JigForm[] =>
  jigsOf(plane).flatMap((made) => ("form" in made ? [made.form] : []));

/** Plans of the same jigs. */
export const jigPlans: (plane: Elevation) => readonly JigPlan[] = memoizeByPlane((plane) =>
  jigsOf(plane).flatMap((made) => ("plan" in made ? [withPlate(made.plan(), plane.design)] : [])),
);

/** Jigs that this plane cannot have, and why. */
export const omittedJigs = (plane: Elevation): NoJig[] =>
  jigsOf(plane).flatMap((made) => ("none" in made ? [made.none] : []));

/** Length, depth and height, mm. */
export interface PrintedSize {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** What a jig takes up as it is printed. */
export function printedSize({ bodies }: JigForm): PrintedSize {
  const { min, max } = segmentBounds(bodies.flatMap(({ boundary }) => boundary));
  const heights = bodies.map((body) => body.thickness + Math.max(0, ...body.risers.map((riser) => riser.height)));
  return { x: max.x - min.x, y: max.y - min.y, z: Math.max(...heights) };
}

/** How far a jig of a size stands out of the printer, at its best quarter turn: above 0 it does not fit. mm */
export function printerOverhang({ x, y, z }: PrintedSize, { shop }: Elevation["design"]): number {
  const { width, depth, height } = shop.printer;
  const flat = Math.min(Math.max(x - width, y - depth), Math.max(y - width, x - depth));
  return Math.max(flat, z - height);
}
