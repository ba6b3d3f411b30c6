// The same wooden parts made the usual way, by 3D booleans, with two general libraries. Their recess ends square, ours round.
import modeling from "@jscad/modeling";
import { tessellate } from "@lamplane/geometry";
import { blocksAt, cheekShape, elevationFigures, ironToPlane } from "@lamplane/parameters/elevation";
import Module from "manifold-3d";

const SEGMENTS = 76; // of a circle: as many as our chord error asks of the pin's hole
const FAR = 200; // mm: past any bed
const points = (outline) => tessellate(outline).map(({ x, y }) => [x, y]);

/** All six parts of a plane at a stage, as a kit's own solids. */
export function partsBy(kit, plane, stage) {
  const [core, body] = [plane.widths.core / 2, plane.widths.body / 2];
  const blocks = blocksAt(plane, stage);
  const cheek = cheekShape(plane, stage);
  const between = (outline, low, high) => kit.extruded(points(outline), low, high);
  const drilled = (solid, low, high) =>
    cheek.circles.reduce(
      (s, { centre, radius }) => kit.less(s, kit.cylinder(centre, radius, low - 1, high + 1)),
      solid,
    );
  const wedge = core - plane.design.wedge.clearance / 2;
  return [
    between(blocks.front, -core, core),
    recessed(kit, plane, between(blocks.bed, -core, core)),
    drilled(between(cheek.boundary, core, body), core, body),
    drilled(between(cheek.boundary, -body, -core), -body, -core),
    between(plane.wedge, -wedge, wedge),
    pin(kit, plane, core),
  ];
}

function recessed(kit, { recess, frame, design }, block) {
  if (!recess) return block;
  const middle = ironToPlane(frame, recess.low + FAR / 2, -design.iron.thickness - recess.depth / 2);
  return kit.less(block, kit.box([FAR, recess.depth, recess.width], frame.bedAngle, middle));
}

function pin(kit, plane, core) {
  const shoulder = core - plane.design.pin.endClearance;
  const { tenonLength } = Object.fromEntries(elevationFigures(plane).map(({ key, value }) => [key, value]));
  const end = shoulder + tenonLength;
  const tenon = kit.cylinder(plane.pin.centre, plane.design.pin.tenon / 2, -end, end);
  return kit.with(kit.extruded(points(plane.pinSection), -shoulder, shoulder), tenon);
}

const { booleans, extrusions, geometries, measurements, primitives, transforms } = modeling;

export const JSCAD = {
  extruded: (ring, low, high) =>
    transforms.translate(
      [0, 0, low],
      extrusions.extrudeLinear({ height: high - low }, geometries.geom2.fromPoints(ring)),
    ),
  cylinder: ({ x, y }, radius, low, high) =>
    primitives.cylinder({ center: [x, y, (low + high) / 2], height: high - low, radius, segments: SEGMENTS }),
  box: (size, turn, { x, y }) =>
    transforms.translate([x, y, 0], transforms.rotateZ((turn * Math.PI) / 180, primitives.cuboid({ size }))),
  less: (a, b) => booleans.subtract(a, b),
  with: (a, b) => booleans.union(a, b),
  finished: (solid) => geometries.geom3.toPolygons(solid),
  volume: (solid) => measurements.measureVolume(solid),
  freed: () => undefined,
};

/** manifold-3d; what it makes lies outside the garbage collector's reach and is freed after each run. */
export async function manifoldKit() {
  const wasm = await Module();
  wasm.setup();
  const { CrossSection, Manifold } = wasm;
  let made = [];
  const kept = (solid) => {
    made.push(solid);
    return solid;
  };
  return {
    extruded: (ring, low, high) => {
      const section = kept(CrossSection.ofPolygons([ring]));
      return kept(kept(section.extrude(high - low)).translate([0, 0, low]));
    },
    cylinder: ({ x, y }, radius, low, high) =>
      kept(kept(Manifold.cylinder(high - low, radius, radius, SEGMENTS)).translate([x, y, low])),
    box: (size, turn, { x, y }) =>
      kept(kept(kept(Manifold.cube(size, true)).rotate([0, 0, turn])).translate([x, y, 0])),
    less: (a, b) => kept(a.subtract(b)),
    with: (a, b) => kept(a.add(b)),
    finished: (solid) => solid.getMesh(), // its booleans are worked out here
    volume: (solid) => solid.volume(),
    freed: () => {
      for (const each of made) each.delete();
      made = [];
    },
  };
}
