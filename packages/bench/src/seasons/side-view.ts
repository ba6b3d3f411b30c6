// The plane from the side at another moisture: wood moves up and down, along its grain it keeps its length, steel stays.
import { atanDeg, cosDeg, cotDeg, type Point, point, sinDeg, tanDeg } from "@lamplane/geometry";
import {
  bedToIron,
  bedToPlane,
  bedXAt,
  type Elevation,
  ironTaper,
  ironToBed,
  memoizeByPlane,
  rampXAt,
} from "@lamplane/parameters/elevation";

/** Relative changes since the plane was cut. */
export interface Strains {
  /** Body, up its height. */
  readonly height: number;
  /** Wedge, across its thickness. */
  readonly wedge: number;
  /** Cross pin, across its length. */
  readonly pin: number;
}

const AS_CUT: Strains = { height: 0, wedge: 0, pin: 0 };

/** Degrees and mm. */
export interface MovedAngles {
  readonly bed: number;
  /** At the sole. */
  readonly ramp: number;
  /** Mouth opening, the edge set to the sole anew. */
  readonly mouth: number;
  /** How far the edge stands out of the sole when nothing was touched; below 0 it has drawn in. */
  readonly edgeOut: number;
}

const stretched = (p: Point, height: number): Point => point(p.x, p.y * (1 + height));
const movedAngle = (angle: number, height: number): number => atanDeg(tanDeg(angle) * (1 + height));

/** The pin's axis along the bed from the cutting edge: s up the bed, v square off it. */
const pinOnBed = memoizeByPlane(({ frame, pin }) => ironToBed(frame, pin));

/** Where the pin's axis stands over the bed, square to it: there the stack is gripped and goes with the bed. */
const gripOnBed = memoizeByPlane((plane): Point => bedToPlane(plane.frame, pinOnBed(plane).s, -plane.frame.thickness));

/** Slopes turn, for height and length move differently; the mouth's two edges on the sole keep their distance. */
export function movedAngles(plane: Elevation, height: number): MovedAngles {
  const { frame, ramp } = plane;
  const { thickness } = frame;
  const bed = movedAngle(frame.bedAngle, height);
  const grip = stretched(gripOnBed(plane), height);
  return {
    bed,
    ramp: movedAngle(ramp.angle, height),
    mouth: bedXAt(frame, 0) - thickness / sinDeg(bed) - rampXAt(ramp, 0),
    edgeOut: pinOnBed(plane).s * sinDeg(bed) - thickness * cosDeg(bed) - grip.y,
  };
}

/**
 * How much thicker than as cut an untouched wedge would have to be where the pin bears, mm; below 0 it is pressed by so much.
 * Bed, pin hole and body go with the body's height, the wedge and the pin with their own woods; iron and cap iron stay.
 * The pin's tenons bear in their holes, on the side away from the wedge.
 */
export const wedgeSlack = (plane: Elevation, strains: Strains): number =>
  (roomOverWedge(plane, strains) - roomAsCut(plane)) / cosDeg(plane.design.wedge.angle);

const roomAsCut = memoizeByPlane((plane) => roomOverWedge(plane, AS_CUT));

/** From the wedge's upper side, square to it, to the seated pin's flat. mm. */
function roomOverWedge(plane: Elevation, { height, wedge, pin: across }: Strains): number {
  const { frame, design, pin } = plane;
  const bed = movedAngle(frame.bedAngle, height);
  const taper = atanDeg(tanDeg(design.wedge.angle) * (1 + wedge));
  const [grip, axis] = [gripOnBed(plane), pin.centre].map((p) => stretched(p, height)) as [Point, Point];
  const [dx, dy] = [axis.x - grip.x, axis.y - grip.y];
  const [upBed, offBed] = [dx * cosDeg(bed) + dy * sinDeg(bed), dy * cosDeg(bed) - dx * sinDeg(bed)];
  const [was, leans] = [pinOnBed(plane), ironTaper(design)];
  // Along the face by how far the axis moves, off it from under the edge, where the back lies on the bed.
  const upFace = bedToIron(frame, { s: upBed, v: offBed - (was.v + frame.thickness) }).s;
  const offFace = bedToIron(frame, { s: was.s + upBed, v: offBed }).v;
  const wedgeThere = (pin.wedgeThere + upFace * tanDeg(design.wedge.angle)) * (1 + wedge);
  const stack = frame.thickness * cosDeg(leans) + design.capIron.thickness + wedgeThere;
  const seat = pinSeat(plane, bed - leans + taper, height, across);
  return (offFace - stack) * cosDeg(taper) + seat - pinDepth(plane) * (1 + across);
}

/** How far the tenon goes from the middle of its hole, stretched to an ellipse, along the thrust. mm. */
function pinSeat({ pinHole, pinSize }: Elevation, slope: number, height: number, across: number): number {
  const { radius } = pinHole;
  const reach = Math.hypot(radius * sinDeg(slope), radius * (1 + height) * cosDeg(slope));
  return reach - (pinSize.tenon / 2) * (1 + across);
}

/** Pin's axis to its flat, or to its round. mm. */
const pinDepth = ({ pinSize }: Elevation): number => pinSize.diameter / 2;

/** What a wedge must travel to take up a slack, mm. */
export const travelFor = ({ design }: Pick<Elevation, "design">, slack: number): number =>
  slack * cotDeg(design.wedge.angle);
