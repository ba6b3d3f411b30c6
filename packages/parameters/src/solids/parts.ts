// Every wooden part as a solid: in its place in the plane, and as it lies on the machine's table.
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import { type Transform2, transformPoint } from "@lamplane/geometry";
import type { Drawing } from "../drawings/drawing.ts";
import {
  bedBlockDrawing,
  cheekDrawing,
  crossPinDrawing,
  frontBlockDrawing,
  layBedBlock,
  layCheek,
  layFrontBlock,
  layWedge,
  wedgeDrawing,
} from "../drawings/part-drawings.ts";
import { blocksAt, cheekShape, type Stage } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { bedBlock } from "./bed-block.ts";
import { bodyShell } from "./body-shell.ts";
import { makeClosedSolid } from "./closed-solid.ts";
import { crossPin } from "./cross-pin.ts";
import type { Triangle, Vec3 } from "./faces.ts";
import type { Part } from "./part.ts";
import { plainShape, prism } from "./prism.ts";

interface MadePart {
  readonly triangles: readonly Triangle[];
  readonly volume: number;
}

/** Faces of one wooden part in its place: for pictures, which need no gate and no place on a table. */
export interface PartFaces {
  readonly name: Part["name"];
  readonly triangles: readonly Triangle[];
}

/** Every wooden part at a stage, in the order in which they are made: its faces in place and their volume. */
function makePartFaces(plane: Elevation, stage: Stage) {
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
export const partFaces = (plane: Elevation, stage: Stage): PartFaces[] =>
  Object.entries(makePartFaces(plane, stage)).map(([name, { triangles }]) => ({ name, triangles }));

/** All parts at a stage, in the order in which they are made. */
export function partsOf(plane: Elevation, stage: Stage): Part[] {
  const made = makePartFaces(plane, stage);
  return [
    makePart(
      "front-block",
      made["front-block"],
      layFrontBlock(plane, stage).transform,
      frontBlockDrawing(plane, stage),
    ),
    makePart("bed-block", made["bed-block"], layBedBlock(plane, stage).transform, bedBlockDrawing(plane, stage)),
    makePart(
      "cheek-left",
      made["cheek-left"],
      layCheek(plane, stage, "left").transform,
      cheekDrawing(plane, stage, "left"),
    ),
    makePart(
      "cheek-right",
      made["cheek-right"],
      layCheek(plane, stage, "right").transform,
      cheekDrawing(plane, stage, "right"),
    ),
    makePart("wedge", made.wedge, layWedge(plane).transform, wedgeDrawing(plane)),
    makeCrossPinPart(plane, made["cross-pin"]),
  ];
}

export interface BodySolid {
  /** In the plane's frame. */
  readonly solid: Geom3;
  /** As it stands on its sole, z up, its lowest corner at 0, 0, 0: as printers and the parts in their places have it. */
  readonly onSole: Geom3;
  readonly volume: number;
}

/** The finished or glued body as one closed solid. */
export function bodySolid(plane: Elevation, stage: Exclude<Stage, "blank">): BodySolid {
  const { triangles, volume } = bodyShell(plane, stage);
  const stood = moveToTable(mapTriangles(triangles, ([x, y, z]) => [x, -z, y]));
  return { solid: makeClosedSolid("body", triangles, volume), onSole: makeClosedSolid("body", stood, volume), volume };
}

/** A mirrored place is a half turn over in space: x and z both change sign, so the solid stays right side out. */
function makePart(name: string, made: MadePart, transform: Transform2, drawing: Drawing): Part {
  const inPlace = makeClosedSolid(name, made.triangles, made.volume);
  const turned = mapTriangles(made.triangles, ([x, y, z]) => {
    const p = transformPoint({ x, y }, transform);
    return [p.x, p.y, transform.mirrored ? -z : z];
  });
  return {
    name,
    inPlace,
    lying: makeClosedSolid(name, moveToTable(turned), made.volume),
    volume: made.volume,
    drawing,
  };
}

/** The pin lies on its flat, its length along x. */
function makeCrossPinPart(plane: Elevation, made: MadePart): Part {
  const turn = -(plane.frame.bedAngle + plane.design.wedge.angle);
  const turned = mapTriangles(made.triangles, ([x, y, z]) => {
    const p = transformPoint({ x, y }, { turn });
    return [z, p.x, p.y];
  });
  const lying = makeClosedSolid("cross-pin", moveToTable(turned), made.volume);
  return {
    name: "cross-pin",
    inPlace: makeClosedSolid("cross-pin", made.triangles, made.volume),
    lying,
    volume: made.volume,
    drawing: crossPinDrawing(plane),
  };
}

const mapTriangles = (triangles: readonly Triangle[], move: (p: Vec3) => Vec3): Triangle[] =>
  triangles.map(([a, b, c]) => [move(a), move(b), move(c)]);

/** Shifted so that the lowest corner of its box lies at 0, 0, 0. */
function moveToTable(triangles: readonly Triangle[]): Triangle[] {
  const low = ([0, 1, 2] as const).map((k) =>
    triangles.reduce((m, t) => Math.min(m, t[0][k], t[1][k], t[2][k]), Number.POSITIVE_INFINITY),
  );
  return mapTriangles(triangles, ([x, y, z]) => [x - low[0]!, y - low[1]!, z - low[2]!]);
}
