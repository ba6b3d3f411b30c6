// Outlines: areas, cuts, distances and triangles, against Clipper2, polyclip, earcut and a path library.

import { offsetPolygon } from "@lamplane/bench";
import {
  circleOutline,
  type Outline,
  outlineArea,
  type Point,
  segmentLength,
  shapeArea,
  tessellate,
} from "@lamplane/geometry";
import { frontBlockDrawing } from "@lamplane/parameters/drawings";
import { blocksAt, cheekShape, type Elevation, elevation, figureValue } from "@lamplane/parameters/elevation";
import { partsOf } from "@lamplane/parameters/solids";
import { drawingPicture, pictureSvg } from "@lamplane/sheets";
import { svgPathProperties } from "svg-path-properties";
import { isBuildable } from "../support/buildable.ts";
import { designWith, randomDesigns, WORKED } from "../support/designs.ts";
import { areaOf as manifoldArea, areaGrown as manifoldGrown, areaShared as manifoldShared } from "../support/flat.ts";
import { solidTriangles } from "../support/meshes.ts";
import type { OutsideCheck } from "./check.ts";
import {
  clipperArea,
  clipperDistance,
  clipperGrown,
  clipperShared,
  earcutArea,
  polyclipRest,
  polyclipShared,
  polyclipUnion,
} from "./libraries.ts";

const CLIPPER = "Clipper2 (clipper2-ts 2.0)";
const POLYCLIP = "polyclip-ts 0.16 (Martinez, Rueda and Feito)";
const EARCUT = "earcut 3.2";
const MANIFOLD = "manifold-3d 3.5, cross sections";

/** Chords for the libraries, mm off the arc: so fine that the tolerance is theirs, not the chords'. */
const FINE = 1e-5;
const fine = (outline: Outline): Point[] => tessellate(outline, FINE);
const CHORDS = 0.01; // mm²: FINE along a metre of arc

const worked = elevation(designWith(WORKED));
const arched = elevation(designWith({ ...WORKED, "body.outline": "arched", "bed.angle": 55, "pin.height": "auto" }));
const PLANES: readonly (readonly [string, Elevation])[] = [
  ["Worked plane", worked],
  ["Arched plane with a bed of 55°", arched],
];
const planes = randomDesigns(61, 40, isBuildable).map(({ design }) => elevation(design));

interface Measured {
  readonly unit: string;
  readonly ours: () => number;
  readonly theirs: () => number;
  readonly within: number;
}
const against = (from: string, what: string, measured: Measured): OutsideCheck => ({
  what,
  from,
  told: "library",
  ...measured,
});

/** The largest difference over the random planes, where both should be the same. */
const worstOf = (from: string, what: string, unit: string, within: number, difference: (plane: Elevation) => number) =>
  against(from, `${planes.length} random planes: ${what}, largest difference`, {
    unit,
    theirs: () => 0,
    ours: () => Math.max(...planes.map((plane) => Math.abs(difference(plane)))),
    within,
  });

const areas = PLANES.flatMap(([name, plane]) => {
  const { front, bed, throat } = blocksAt(plane, "trued");
  const named: Record<string, Outline> = {
    "front block": front,
    "bed block": bed,
    throat,
    wedge: plane.wedge,
    pin: plane.pinSection,
  };
  return Object.entries(named).map(([part, outline], i) =>
    against(i % 2 ? MANIFOLD : CLIPPER, `${name}: area of the ${part} from the side`, {
      unit: "mm²",
      ours: () => outlineArea(outline),
      theirs: () => (i % 2 ? manifoldArea : clipperArea)(fine(outline)),
      within: CHORDS,
    }),
  );
});

const cheekHoles = (plane: Elevation) =>
  cheekShape(plane, "blank").circles.map((circle) => fine(circleOutline(circle)));

const cuts: readonly OutsideCheck[] = [
  ...PLANES.flatMap(([name, plane]) => [
    against(POLYCLIP, `${name}: throat, as the cheek's outline without both blocks`, {
      unit: "mm²",
      ours: () => outlineArea(blocksAt(plane, "trued").throat),
      theirs: () => {
        const { front, bed } = blocksAt(plane, "trued");
        return polyclipRest(fine(cheekShape(plane, "trued").boundary), fine(front), fine(bed));
      },
      within: CHORDS,
    }),
    against(POLYCLIP, `${name}: a cheek without its holes`, {
      unit: "mm²",
      ours: () => shapeArea(cheekShape(plane, "blank")),
      theirs: () => polyclipRest(fine(cheekShape(plane, "blank").boundary), ...cheekHoles(plane)),
      within: CHORDS,
    }),
    against(EARCUT, `${name}: triangles of a cheek with its holes`, {
      unit: "mm²",
      ours: () => shapeArea(cheekShape(plane, "blank")),
      theirs: () => earcutArea(fine(cheekShape(plane, "blank").boundary), cheekHoles(plane)),
      within: CHORDS,
    }),
  ]),
  worstOf(POLYCLIP, "front block, bed block and throat as one, against the cheek", "mm²", 0.02, (plane) => {
    const { front, bed, throat } = blocksAt(plane, "trued");
    return polyclipUnion(fine(front), fine(bed), fine(throat)) - outlineArea(cheekShape(plane, "trued").boundary);
  }),
  worstOf(POLYCLIP, "what front and bed block share at glue-up, against nothing", "mm²", 1e-6, (plane) => {
    const { front, bed } = blocksAt(plane, "glued");
    return polyclipShared(tessellate(front), tessellate(bed));
  }),
  worstOf(CLIPPER, "what iron and front block share, against nothing", "mm²", 1e-6, (plane) =>
    clipperShared(tessellate(plane.iron), tessellate(blocksAt(plane, "trued").front)),
  ),
  worstOf(MANIFOLD, "what wedge and bed block share, against nothing", "mm²", 1e-3, (plane) =>
    manifoldShared(tessellate(plane.wedge), tessellate(blocksAt(plane, "trued").bed)),
  ),
  worstOf(CLIPPER, "area of the front block", "mm²", CHORDS, (plane) => {
    const { front } = blocksAt(plane, "glued");
    return clipperArea(fine(front)) - outlineArea(front);
  }),
  worstOf(EARCUT, "triangles of the bed block", "mm²", CHORDS, (plane) => {
    const { bed } = blocksAt(plane, "blank");
    return earcutArea(fine(bed)) - outlineArea(bed);
  }),
];

/** Clipper2 finds a grown outline's edge to a tenth of a micrometre, its round corners to half of one. */
const REACHED = 2e-3;
const HIGH = 400; // mm: over any top
const wide = (plane: Elevation): Point[] => {
  // A front block that reaches far over the top along its ramp, so that the nearest of it is the ramp.
  const { rampChain } = blocksAt({ ...plane, topChain: tallTop(plane) }, "trued");
  const high = rampChain.at(-1)!.to;
  return [{ x: -HIGH, y: 0 }, ...tessellate(rampChain, 1e-4), high, { x: -HIGH, y: high.y }];
};
const tallTop = ({ design }: Elevation) => [
  {
    kind: "line" as const,
    from: { x: design.body.length + HIGH, y: 1.9 * design.body.height },
    to: { x: -HIGH, y: 1.9 * design.body.height },
  },
];

const distances: readonly OutsideCheck[] = [
  ...PLANES.flatMap(([name, plane]) => {
    const radius = plane.pinSize.diameter / 2;
    return [
      against(CLIPPER, `${name}: room from pin to ramp, by growing the front block`, {
        unit: "mm",
        ours: () => figureValue(plane, "pinToRamp")!,
        theirs: () => clipperDistance(plane.pin.centre, wide(plane), 60) - radius,
        within: REACHED,
      }),
      against(CLIPPER, `${name}: wood over the pin's hole, by shrinking the cheek`, {
        unit: "mm",
        ours: () => figureValue(plane, "woodOverPinHole")!,
        theirs: () =>
          clipperDistance(plane.pin.centre, tessellate(cheekShape(plane, "trued").boundary, 1e-4), 60) -
          plane.pinHole.radius,
        within: REACHED,
      }),
    ];
  }),
  worstOf(
    CLIPPER,
    "room from pin to ramp, by growing the front block",
    "mm",
    REACHED,
    (plane) =>
      clipperDistance(plane.pin.centre, wide(plane), 90) -
      plane.pinSize.diameter / 2 -
      figureValue(plane, "pinToRamp")!,
  ),
  worstOf(
    CLIPPER,
    "half a pin over the wedge's upper side, by growing the wedge",
    "mm",
    REACHED,
    (plane) => clipperDistance(plane.pin.centre, tessellate(plane.wedge), 60) - plane.pinSize.diameter / 2,
  ),
  ...PLANES.map(([name, plane]) => {
    const drawing = frontBlockDrawing(plane, "trued");
    return against("svg-path-properties 2.1", `${name}: way round the front block, along its path in SVG`, {
      unit: "mm",
      ours: () => blocksAt(plane, "trued").front.reduce((sum, segment) => sum + segmentLength(segment), 0),
      theirs: () => {
        const [, path] = /<path class="outline" d="([^"]+)"/.exec(pictureSvg(drawingPicture(drawing)))!;
        return new svgPathProperties(path!).getTotalLength();
      },
      within: 0.01,
    });
  }),
];

/** A convex part made larger all round, its corners sharp, as stock is planned. */
const offsets = PLANES.flatMap(([name, plane]) => {
  const corners = tessellate(plane.wedge);
  const row = (from: string, what: string, theirs: () => number, ours: () => number) =>
    against(from, `${name}: wedge ${what}`, { unit: "mm²", ours, theirs, within: CHORDS });
  return [
    row(
      CLIPPER,
      "grown by 1.5",
      () => clipperGrown(corners, 1.5),
      () => clipperArea(offsetPolygon(corners, 1.5)),
    ),
    row(
      MANIFOLD,
      "grown by 0.4",
      () => manifoldGrown(corners, 0.4),
      () => manifoldArea(offsetPolygon(corners, 0.4)),
    ),
    row(
      "Steiner's formula: A + U·r + π·r²",
      "grown by 2 with round corners in Clipper2",
      () => clipperGrown(corners, 2, "round"),
      () => {
        const round = plane.wedge.reduce((sum, segment) => sum + segmentLength(segment), 0);
        return outlineArea(plane.wedge) + 2 * round + Math.PI * 4;
      },
    ),
  ];
});

/** The triangles that an STL has of a cheek's face, against earcut's of the same corners. */
const faces = PLANES.map(([name, plane]) =>
  against(EARCUT, `${name}: triangles of a cheek's face as its solid has them`, {
    unit: "mm²",
    ours: () => {
      const cheek = partsOf(plane, "blank").find((part) => part.name === "cheek-left")!;
      const outside = plane.widths.body / 2;
      return solidTriangles(cheek.inPlace)
        .filter((triangle) => triangle.every(([, , z]) => Math.abs(z - outside) < 1e-9))
        .reduce((sum, triangle) => sum + clipperArea(triangle.map(([x, y]) => ({ x, y }))), 0);
    },
    theirs: () => {
      const { boundary, circles } = cheekShape(plane, "blank");
      return earcutArea(
        tessellate(boundary),
        circles.map((circle) => tessellate(circleOutline(circle))),
      );
    },
    within: 1e-3,
  }),
);

export const GEOMETRY_CHECKS: readonly OutsideCheck[] = [...areas, ...cuts, ...faces, ...offsets, ...distances];
