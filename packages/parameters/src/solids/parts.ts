// Every wooden part as a solid: in its place in the plane, and as it lies on the machine's table.
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import { type Transform2, transformPoint } from "@lamplane/geometry";
import {
  assertSolid,
  type Face,
  type Mesh,
  mapVertices,
  meshBounds,
  subtract,
  tessellateFaces,
  type Vec3,
} from "@lamplane/geometry/mesh";
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
import { blocksAt, cheekShape } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import type { Stage } from "../table/index.ts";
import { bedBlock } from "./bed-block.ts";
import { bodyShell } from "./body-shell.ts";
import { crossPin } from "./cross-pin.ts";
import { toGeom3 } from "./geom3.ts";
import { layPart, type Part, type PlacedSolid } from "./part.ts";
import { type PartFaces, plainShape, prism } from "./part-faces.ts";

/** Exact faces of one part, in place. */
export interface NamedFaces {
  readonly name: string;
  readonly faces: readonly Face[];
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
export const partFaces = (plane: Elevation, stage: Stage): NamedFaces[] =>
  Object.entries(makePartFaces(plane, stage)).map(([name, { faces }]) => ({ name, faces }));

/** The faces that `bodySolid` makes its solid of, in place. */
export const bodyFaces = (plane: Elevation, stage: Exclude<Stage, "blank">): Face[] => [
  ...bodyShell(plane, stage).faces,
];

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
  readonly mesh: Mesh;
  /** As it stands on its sole, z up, its lowest corner at 0, 0, 0: as printers and the parts in their places have it. */
  readonly onSole: Geom3;
  readonly onSoleMesh: Mesh;
  readonly volume: number;
}

/** The finished or glued body as one closed solid. */
export function bodySolid(plane: Elevation, stage: Exclude<Stage, "blank">): BodySolid {
  const made = bodyShell(plane, stage);
  const mesh = makeMesh("body", made);
  const onSoleMesh = moveToTable(mapVertices(mesh, ([x, y, z]) => [x, -z, y]));
  return {
    mesh,
    get solid() {
      return toGeom3(mesh);
    },
    onSoleMesh,
    get onSole() {
      return toGeom3(onSoleMesh);
    },
    volume: made.volume,
  };
}

/** A mirrored place is a half turn over in space: x and z both change sign, so the solid stays right side out. */
export function makePart(name: string, made: PartFaces, transform: Transform2, drawing: Drawing): Part {
  const turn =
    (place: Transform2) =>
    ([x, y, z]: Vec3): Vec3 => {
      const p = transformPoint({ x, y }, place);
      return [p.x, p.y, place.mirrored ? -z : z];
    };
  const { shift: _, ...turnOnly } = transform;
  return layPart(placedSolid(name, made, drawing), { point: turn(transform), direction: turn(turnOnly) });
}

/** The pin lies on its flat, its length along x. */
function makeCrossPinPart(plane: Elevation, made: PartFaces): Part {
  const turn = -(plane.frame.faceAngle + plane.design.wedge.angle);
  const turned = ([x, y, z]: Vec3): Vec3 => {
    const p = transformPoint({ x, y }, { turn });
    return [z, p.x, p.y];
  };
  return layPart(placedSolid("cross-pin", made, crossPinDrawing(plane)), { point: turned, direction: turned });
}

const placedSolid = (name: string, made: PartFaces, drawing: Drawing): PlacedSolid => ({
  name,
  ...made,
  mesh: makeMesh(name, made),
  drawing,
});

/** The part's mesh, through the gate. */
function makeMesh(name: string, { faces, volume }: PartFaces): Mesh {
  const mesh = tessellateFaces(faces);
  assertSolid(name, mesh, volume);
  return mesh;
}

/** Shifted so that the lowest corner of its box lies at 0, 0, 0. */
function moveToTable(mesh: Mesh): Mesh {
  const { min } = meshBounds(mesh);
  return mapVertices(mesh, (p) => subtract(p, min));
}
