// Every wooden part as a solid: in its place in the plane, and as it lies on the machine's table.
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import { type Place, placedPoint } from "@lamplane/geometry";
import type { Drawing } from "../drawings/drawing.ts";
import {
  bedBlockDrawing,
  cheekDrawing,
  crossPinDrawing,
  frontBlockDrawing,
  laidBed,
  laidCheek,
  laidFront,
  laidWedge,
  wedgeDrawing,
} from "../drawings/part-drawings.ts";
import { blocksAt, cheekShape, type Stage } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { bedBlock } from "./bed-block.ts";
import { bodyShell } from "./body-shell.ts";
import { closedSolid } from "./closed-solid.ts";
import { crossPin } from "./cross-pin.ts";
import type { Triangle, Vec3 } from "./faces.ts";
import type { Part } from "./part.ts";
import { plainShape, prism } from "./prism.ts";

interface Made {
  readonly triangles: readonly Triangle[];
  readonly volume: number;
}

/** Faces of one wooden part in its place: for pictures, which need no gate and no place on a table. */
export interface ShownPart {
  readonly name: Part["name"];
  readonly triangles: readonly Triangle[];
}

/** Every wooden part at a stage, in the order in which they are made: its faces in place and their volume. */
function madeParts(plane: Elevation, stage: Stage) {
  const c = plane.widths.core / 2;
  const [cheekIn, cheekOut] = [c, plane.widths.body / 2];
  const wedgeHalf = c - plane.design.wedge.clearance / 2;
  const cheek = cheekShape(plane, stage);
  return {
    "front-block": prism(plainShape(blocksAt(plane, stage).front), -c, c),
    "bed-block": bedBlock(plane, stage),
    "cheek-left": prism(cheek, cheekIn, cheekOut),
    "cheek-right": prism(cheek, -cheekOut, -cheekIn),
    wedge: prism(plainShape(plane.wedge), -wedgeHalf, wedgeHalf),
    "cross-pin": crossPin(plane),
  };
}

/** The same faces that `partsOf` makes its solids of, in place. */
export const shownParts = (plane: Elevation, stage: Stage): ShownPart[] =>
  Object.entries(madeParts(plane, stage)).map(([name, { triangles }]) => ({ name, triangles }));

/** All parts at a stage, in the order in which they are made. */
export function partsOf(plane: Elevation, stage: Stage): Part[] {
  const made = madeParts(plane, stage);
  return [
    part("front-block", made["front-block"], laidFront(plane, stage).place, frontBlockDrawing(plane, stage)),
    part("bed-block", made["bed-block"], laidBed(plane, stage).place, bedBlockDrawing(plane, stage)),
    part("cheek-left", made["cheek-left"], laidCheek(plane, stage, "left").place, cheekDrawing(plane, stage, "left")),
    part(
      "cheek-right",
      made["cheek-right"],
      laidCheek(plane, stage, "right").place,
      cheekDrawing(plane, stage, "right"),
    ),
    part("wedge", made.wedge, laidWedge(plane).place, wedgeDrawing(plane)),
    crossPinPart(plane, made["cross-pin"]),
  ];
}

export interface Body {
  /** In the plane's frame. */
  readonly solid: Geom3;
  /** As it stands on its sole, z up, its lowest corner at 0, 0, 0: as printers and the parts in their places have it. */
  readonly standing: Geom3;
  readonly volume: number;
}

/** The finished or glued body as one closed solid. */
export function bodyOf(plane: Elevation, stage: Exclude<Stage, "blank">): Body {
  const { triangles, volume } = bodyShell(plane, stage);
  const stood = onTable(moved(triangles, ([x, y, z]) => [x, -z, y]));
  return { solid: closedSolid("body", triangles, volume), standing: closedSolid("body", stood, volume), volume };
}

/** A mirrored place is a half turn over in space: x and z both change sign, so the solid stays right side out. */
function part(name: string, made: Made, place: Place, drawing: Drawing): Part {
  const inPlace = closedSolid(name, made.triangles, made.volume);
  const turned = moved(made.triangles, ([x, y, z]) => {
    const p = placedPoint({ x, y }, place);
    return [p.x, p.y, place.mirrored ? -z : z];
  });
  return { name, inPlace, lying: closedSolid(name, onTable(turned), made.volume), volume: made.volume, drawing };
}

/** The pin lies on its flat, its length along x. */
function crossPinPart(plane: Elevation, made: Made): Part {
  const turn = -(plane.frame.bedAngle + plane.design.wedge.angle);
  const turned = moved(made.triangles, ([x, y, z]) => {
    const p = placedPoint({ x, y }, { turn });
    return [z, p.x, p.y];
  });
  const lying = closedSolid("cross-pin", onTable(turned), made.volume);
  return {
    name: "cross-pin",
    inPlace: closedSolid("cross-pin", made.triangles, made.volume),
    lying,
    volume: made.volume,
    drawing: crossPinDrawing(plane),
  };
}

const moved = (triangles: readonly Triangle[], move: (p: Vec3) => Vec3): Triangle[] =>
  triangles.map(([a, b, c]) => [move(a), move(b), move(c)]);

/** Shifted so that the lowest corner of its box lies at 0, 0, 0. */
function onTable(triangles: readonly Triangle[]): Triangle[] {
  const low = ([0, 1, 2] as const).map((k) =>
    triangles.reduce((m, t) => Math.min(m, t[0][k], t[1][k], t[2][k]), Number.POSITIVE_INFINITY),
  );
  return moved(triangles, ([x, y, z]) => [x - low[0]!, y - low[1]!, z - low[2]!]);
}
