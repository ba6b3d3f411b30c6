// Results read off whole elevations of the plane as made, and their derivatives by differences: a second way to both.
import {
  type ErrorKey,
  type Errors,
  NO_ERRORS,
  type ResultKey,
  type Results,
  type TolerancePlan,
} from "@lamplane/bench";
import { withValue } from "@lamplane/parameters/design";
import {
  type Elevation,
  elevation,
  figureValue,
  ironTaper,
  thicknessAt,
  topFromEdge,
} from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";

type Changes = Readonly<Record<string, number | string>>;
const changed = (design: Design, changes: Changes): Design =>
  Object.entries(changes).reduce((d, [path, value]) => withValue(d, path, value), design);

/**
 * Results off the elevation of a design that is this plane as made: its mouth, its place and its wedge's are sought until
 * blocks and pin stand where the errors put them.
 */
export function resultsThroughElevation(plan: TolerancePlan, errors: Readonly<Errors>): Results {
  const made = designAsMade(plan, errors);
  const e = elevation(made);
  return {
    mouthOpening: e.design.mouth.opening,
    glueGap: figureValue(e, "glueGap")!,
    pinToRamp: figureValue(e, "pinToRamp")! - errors.rampForm,
    wedgeAtPin: figureValue(e, "wedgeAtPin")!,
    wedgeTipFromEdge: e.design.wedge.tipFromEdge,
  };
}

function designAsMade(plan: TolerancePlan, errors: Readonly<Errors>): Design {
  const cut = changed(plan.design, partsAsMade(plan, errors));
  const bedTipX = plan.bedTipX + errors.bedPlace;
  const rampTipX =
    errors.creep +
    (plan.placing === "marks" ? plan.rampTipX + errors.frontPlace : tipAtContact(plan, cut, errors, bedTipX));
  const placed = sought(cut, "mouth.fromToe", (e) => e.points.bedTip.x, bedTipX);
  const opened = sought(placed, "mouth.opening", (e) => e.points.rampTip.x, rampTipX);
  return sought(opened, "wedge.tipFromEdge", (e) => e.pin.centre.x, plan.pinX + errors.pinHoleAlong);
}

function partsAsMade({ design, rampAngle, curve, ...plan }: TolerancePlan, errors: Readonly<Errors>): Changes {
  const { soleTaken } = errors;
  return {
    ...ironAsMade(design, errors),
    "capIron.thickness": plan.capIron + errors.capIronThickness,
    "bed.angle": plan.bedAngle + errors.bedAngle,
    [design.ramp.shape === "curved" ? "ramp.wearAngle" : "ramp.angle"]: rampAngle + errors.rampAngle,
    ...(curve ? { "ramp.wearHeight": curve.wearHeight - soleTaken } : {}),
    "sole.allowance": plan.allowance + soleTaken,
    "pin.height": plan.pinY + errors.pinHoleUp - soleTaken,
    "pin.diameter": plan.pinDepth + errors.pinDepth,
    "wedge.angle": plan.wedgeAngle + errors.wedgeTaper,
    "wedge.tip": plan.wedgeTip + errors.wedgeThickness,
  };
}

/** The iron as it is where it was misread; a taper entered as an angle is read at its two places like any other. */
function ironAsMade(design: Design, { ironThickness, ironTopThickness }: Readonly<Errors>): Changes {
  const thickness = { "iron.thickness": design.iron.thickness + ironThickness };
  if (ironTaper(design) === 0) return thickness;
  const high = topFromEdge(design);
  const atTop = thicknessAt(design, high) + ironTopThickness;
  return { ...thickness, "iron.taper": "auto", "iron.topFromEdge": high, "iron.thicknessAtTop": atTop };
}

/** At contact the plane looks as if its sole were trued up to the edge and its mouth shut. */
function tipAtContact(plan: TolerancePlan, cut: Design, errors: Readonly<Errors>, bedTipX: number): number {
  const shut = changed(cut, { "sole.allowance": plan.edgeHeight + errors.edgeHeight, "mouth.opening": 0 });
  return elevation(sought(shut, "mouth.fromToe", (e) => e.points.bedTip.x, bedTipX)).points.rampTip.x;
}

/** The design in which a place stands where it should; every place sought is linear in what is changed for it. */
function sought(design: Design, path: string, place: (e: Elevation) => number, wanted: number): Design {
  const at = (value: number) => place(elevation(withValue(design, path, value)));
  const [at0, at1] = [at(0), at(1)];
  return withValue(design, path, (wanted - at0) / (at1 - at0));
}

/** mm or degrees: small beside a plane, large beside the noise of its numbers. */
const STEP = 1e-3;

/** Derivatives of all results by one error, by central differences over whole elevations. mm for each mm or degree. */
export function derivativesThroughElevation(plan: TolerancePlan, key: ErrorKey): Results {
  const at = (error: number) => resultsThroughElevation(plan, { ...NO_ERRORS, [key]: error });
  const [above, below] = [at(STEP), at(-STEP)];
  const keys = Object.keys(above) as ResultKey[];
  return Object.fromEntries(keys.map((k) => [k, (above[k] - below[k]) / (2 * STEP)])) as unknown as Results;
}
