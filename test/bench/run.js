// Timings, ours and peers' in one run: median with low and high. Nothing here is asserted.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { cpus } from "node:os";
import modeling from "@jscad/modeling";
import { stlBytes } from "@lamplane/export";
import { checkPlane, findingsOf } from "@lamplane/parameters/checks";
import { readDesign } from "@lamplane/parameters/design";
import { blocksAt, cheekShape, elevation, facetted, figuresOf, fromIron } from "@lamplane/parameters/elevation";
import { bodyOf, partsOf } from "@lamplane/parameters/solids";
import Module from "manifold-3d";

const RUNS = 25;
const EXAMPLE = "examples/apprentice-smoother.yaml";
const text = readFileSync(EXAMPLE, "utf8");
const { design } = readDesign(text, EXAMPLE);
const plane = elevation(design);

function timed(what, run, runs = RUNS) {
  for (let i = 0; i < 3; i++) run();
  const times = Array.from({ length: runs }, () => {
    const begin = performance.now();
    run();
    return performance.now() - begin;
  }).sort((a, b) => a - b);
  const ms = (t) => t.toFixed(2).padStart(9);
  console.log(`${what.padEnd(58)}${ms(times[runs >> 1])} ms  (${ms(times[0]).trim()} to ${ms(times.at(-1)).trim()})`);
}

const { booleans, extrusions, geometries, primitives, transforms } = modeling;
const points = (outline) => facetted(outline).map(({ x, y }) => [x, y]);

/** The trued body as a peer would make it: profile less throat less recess less pin hole, by 3D booleans. */
function bodyByBooleans() {
  const [c, w] = [plane.widths.core / 2, plane.widths.body / 2];
  const run = (outline, half) =>
    transforms.translate(
      [0, 0, -half],
      extrusions.extrudeLinear({ height: 2 * half }, geometries.geom2.fromPoints(points(outline))),
    );
  const { centre, radius } = plane.pinHole;
  const hole = primitives.cylinder({ center: [centre.x, centre.y, 0], height: 2 * w + 2, radius, segments: 76 });
  return booleans.subtract(
    run(cheekShape(plane, "trued").boundary, w),
    run(blocksAt(plane, "trued").throat, c),
    recessBox(),
    hole,
  );
}

function recessBox() {
  const { recess } = plane;
  const far = 200;
  const corner = fromIron(plane.frame, recess.low + far / 2, -design.iron.thickness - recess.depth / 2);
  const box = primitives.cuboid({ size: [far, recess.depth, recess.width] });
  return transforms.translate([corner.x, corner.y, 0], transforms.rotateZ((plane.frame.bedAngle * Math.PI) / 180, box));
}

/** The same by manifold-3d. */
function bodyByManifold({ CrossSection, Manifold }) {
  const [c, w] = [plane.widths.core / 2, plane.widths.body / 2];
  const run = (outline, half) => CrossSection.ofPolygons([points(outline)]).extrude(2 * half, 0, 0, [1, 1], true);
  const { recess } = plane;
  const far = 200;
  const corner = fromIron(plane.frame, recess.low + far / 2, -design.iron.thickness - recess.depth / 2);
  const box = Manifold.cube([far, recess.depth, recess.width], true)
    .rotate([0, 0, plane.frame.bedAngle])
    .translate([corner.x, corner.y, 0]);
  const { centre, radius } = plane.pinHole;
  const hole = Manifold.cylinder(2 * w + 2, radius, radius, 76, true).translate([centre.x, centre.y, 0]);
  const body = run(cheekShape(plane, "trued").boundary, w)
    .subtract(run(blocksAt(plane, "trued").throat, c))
    .subtract(box)
    .subtract(hole);
  return body.getMesh();
}

console.log(
  `Node ${process.version}, ${cpus().length} × ${cpus()[0].model.trim()}; ${EXAMPLE}; median of ${RUNS} (low to high)\n`,
);
const wasm = await Module();
wasm.setup();
timed("read the design", () => readDesign(text, EXAMPLE));
timed("design to elevation and figures", () => figuresOf(elevation(design)));
timed("design to elevation and findings", () => findingsOf(elevation(design)));
timed("the same with cures, where there are none to find", () => checkPlane(elevation(design)));
timed("all six parts as solids, ours", () => partsOf(plane, "blank"));
timed("body, ours: one closed shell with a rounded recess", () => bodyOf(plane, "trued"));
timed("body, JSCAD booleans, square recess", bodyByBooleans);
timed("body, manifold-3d, square recess", () => bodyByManifold(wasm));
const { solid, volume } = bodyOf(plane, "trued");
timed("body to gated STL bytes", () => stlBytes(solid, "body", volume));
const cli = new URL("../../packages/cli/bin/lamplane.js", import.meta.url).pathname;
timed("cold process: lamplane figures", () => execFileSync(process.execPath, [cli, "figures", EXAMPLE, "--json"]), 7);
timed(
  "cold process: lamplane build, the whole pack",
  () => execFileSync(process.execPath, [cli, "build", EXAMPLE, "--out", "packs/bench"]),
  7,
);
await import("./page.js");
