// Whether each jig does what it is for, read off its mesh: angles of flanks, the cutter's path, the gap, the axis, the level.
import { type Elevation, elevation, planeToIron, recessEdge } from "@lamplane/parameters/elevation";
import { fitTestShank, pinGuideLayout, TRIED, templateLayout } from "@lamplane/parameters/jigs";
import { type Jig, partsOf, planeJigs } from "@lamplane/parameters/solids";
import type { CrossSection } from "manifold-3d";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, WORKED } from "../../support/designs.ts";
import { areaFacing, triangleNormal, trianglesInUse, trianglesLying } from "../../support/jigs.ts";
import { manifoldOf, overlapVolume, type Vertex, wasm } from "../../support/meshes.ts";

const sin = (angle: number) => Math.sin((angle * Math.PI) / 180);
const cos = (angle: number) => Math.cos((angle * Math.PI) / 180);

const NAMED: [string, Changes][] = [
  ["the worked set", WORKED],
  ["a steep plane with a curved ramp", { "bed.angle": 56.3, "iron.width": 38, "recess.cutter": 8 }],
  [
    "a guide bush and an inch pin",
    { "jigs.bush": 16, "jigs.cutterLength": 22, "pin.section": "round", "sole.allowance": 4.5 },
  ],
  ["slotted fences, cut from sheet", { "jigs.fence": "slotted", "jigs.relief": 3, "body.length": 330 }],
  ["no feather chamfer", { "bed.featherChamfer": 0, "ramp.angle": 55 }],
];
const SMALL = 0.01; // mm: what the jigs may be off, in the plane and as an angle

describe.each(NAMED)("jigs of %s", (_, changes) => {
  const plane = elevation(designWith(changes));
  const jigs = new Map(planeJigs(plane).map((jig) => [jig.name, jig]));
  const parts = new Map(partsOf(plane, "blank").map((part) => [part.name, part.inPlace]));
  const jig = (name: Jig["name"]): Jig => {
    const found = jigs.get(name);
    if (!found) throw new Error(`there is no ${name}`);
    return found;
  };
  const shared = (solid: Jig["inUse"], part: string, by: Vertex): number => {
    const [a, b] = [manifoldOf(solid), manifoldOf(parts.get(part)!)];
    const moved = b.translate([...by]);
    const volume = overlapVolume(a, moved);
    for (const m of [a, b, moved]) m.delete();
    return volume;
  };

  test("gauges: a flank at the angle, one at its complement, both from the base", () => {
    for (const [name, angle] of [
      ["bed-gauge", plane.frame.bedAngle],
      ["ramp-gauge", plane.ramp.angle],
    ] as const) {
      const triangles = trianglesLying(jig(name));
      const flank = 60 * (16 - 0.5);
      expect(areaFacing(triangles, [0, -1, 0], 0.001)).toBeGreaterThan(60 * 15);
      expect(areaFacing(triangles, [-sin(angle), cos(angle), 0], 0.01)).toBeCloseTo(flank, 3);
      expect(areaFacing(triangles, [sin(90 - angle), cos(90 - angle), 0], 0.01)).toBeCloseTo(flank, 3);
    }
  });

  test("gauges in use: the flank lies in the line of bed or ramp", () => {
    const beta = plane.frame.bedAngle;
    const bed = facesAlong(trianglesInUse(jig("bed-gauge")), [-sin(beta), cos(beta), 0]);
    for (const [x, y] of bed)
      expect(Math.abs(planeToIron(plane.frame, { x, y }).v + plane.design.iron.thickness)).toBeLessThan(SMALL);
    const rho = plane.ramp.angle;
    const ramp = facesAlong(trianglesInUse(jig("ramp-gauge")), [sin(rho), cos(rho), 0]);
    const { rampTip } = plane.points;
    for (const [x, y] of ramp)
      expect(Math.abs((x - rampTip.x) * sin(rho) + (y - rampTip.y) * cos(rho))).toBeLessThan(SMALL);
  });

  test("template: what the cutter sweeps along its opening is the recess", () => {
    const { cutter, guide, bedTop, plate } = templateLayout(plane);
    const template = trianglesInUse(jig("recess-template"));
    // The opening as the mesh has it, cut half way through the plate, in s up the bed and z across.
    const section = openingOf(plane, template, plate / 2);
    const path = section.offset(-guide / 2 + 1e-4, "Round", 2, 360);
    const swept = path.offset(cutter / 2 - 1e-4, "Round", 2, 360);
    const end = bedTop - 0.5;
    const edge = recessEdge(plane.recess!, bedTop).flatMap((s) =>
      Array.from({ length: 60 }, (_, i) => along(s, i / 60)),
    );
    const recess = crossSection([...edge, [bedTop, plane.recess!.width / 2]]).intersect(band(-1e3, end));
    const cut = swept.intersect(band(-1e3, end));
    expect(recess.area()).toBeGreaterThan(100);
    expect(cut.subtract(recess.offset(SMALL, "Miter")).area()).toBeLessThan(1e-3);
    expect(
      recess
        .offset(-SMALL, "Miter")
        .intersect(band(-1e3, end - SMALL))
        .subtract(cut)
        .area(),
    ).toBeLessThan(1e-3);
    expect(shared(jig("recess-template").inUse, "bed-block", [0, 0, 0])).toBeLessThan(0.1);
  });

  test("template: stop, plate and fences hold the block within the clearance", () => {
    const beta = plane.frame.bedAngle;
    const { inUse } = jig("recess-template");
    const by = (s: number, v: number, z: number): Vertex => [
      s * cos(beta) - v * sin(beta),
      s * sin(beta) + v * cos(beta),
      z,
    ];
    expect(shared(inUse, "bed-block", by(-SMALL, 0, 0))).toBeGreaterThan(0);
    expect(shared(inUse, "bed-block", by(0, SMALL, 0))).toBeGreaterThan(1);
    const room = plane.design.jigs.clearance;
    for (const side of [-1, 1]) {
      expect(shared(inUse, "bed-block", by(0.001, -0.001, side * (room - SMALL)))).toBeLessThan(0.01);
      expect(shared(inUse, "bed-block", by(0.001, -0.001, side * (room + SMALL)))).toBeGreaterThan(0.1);
    }
  });

  test("spacer: bears on both blocks at the gap, hangs from their tops, and draws out upward", () => {
    const { inUse } = jig("throat-spacer");
    // The blocks stand in their places, their tips the glue gap apart: a hundredth nearer, and they are in the spacer.
    for (const [part, toward] of [
      ["bed-block", -1],
      ["front-block", 1],
    ] as const) {
      expect(shared(inUse, part, [-toward * SMALL, 0, 0])).toBeLessThan(0.1);
      expect(shared(inUse, part, [toward * SMALL, 0, 0])).toBeGreaterThan(1);
      expect(shared(inUse, part, [0, SMALL, 0])).toBeGreaterThan(1);
    }
    const turning = wasm.Manifold.cylinder(200, sweep(plane), sweep(plane), 64, true);
    const pin = turning.translate([plane.pin.centre.x, plane.pin.centre.y, 0]);
    for (let up = 0.05; up < plane.design.body.height + 10; up += 4.3) {
      const raised = manifoldOf(inUse).translate([0, up, 0]);
      expect(overlapVolume(raised, pin)).toBe(0);
      for (const part of ["bed-block", "front-block"]) expect(shared(inUse, part, [0, -up, 0])).toBeLessThan(0.01);
      raised.delete();
    }
  });

  test("pin guide: its hole stands over the axis when its pegs touch sole and toe of both cheeks", () => {
    const { pegs, pegRadius, drillRadius } = pinGuideLayout(plane);
    const holes = roundHoles(trianglesInUse(jig("pin-guide")));
    const clearance = plane.design.hand.pinHole / 2; // drill and pegs share what the hole may be off
    const bore = holes.find(
      ({ radius, x }) => Math.abs(radius - drillRadius - clearance) < SMALL && Math.abs(x - plane.pin.centre.x) < 1,
    )!;
    expect(Math.hypot(bore.x - plane.pin.centre.x, bore.y - plane.pin.centre.y)).toBeLessThan(SMALL);
    for (const peg of pegs) {
      const hole = holes.find(({ x, y }) => Math.hypot(x - peg.x, y - peg.y) < SMALL)!;
      expect(hole.radius).toBeCloseTo(pegRadius + clearance, 2);
      // The cheeks lie inside to inside, soles and toe ends flush.
      for (const cheek of ["cheek-left", "cheek-right"]) {
        const solid = wasm.Manifold.cylinder(400, pegRadius, pegRadius, 256, true).translate([hole.x, hole.y, 0]);
        const wood = manifoldOf(parts.get(cheek)!);
        expect(overlapVolume(solid, wood)).toBeLessThan(0.01);
        const [dx, dy] = peg === pegs[2] ? [SMALL, 0] : [0, SMALL];
        expect(overlapVolume(solid.translate([dx, dy, 0]), wood)).toBeGreaterThan(0);
        wood.delete();
      }
    }
  });

  test("cradle: holds sole and heel, and the bed level over its base", () => {
    const beta = plane.frame.bedAngle;
    const { inUse } = jig("bed-cradle");
    expect(areaFacing(trianglesInUse(jig("bed-cradle")), [sin(beta), -cos(beta), 0], 0.01)).toBeGreaterThan(500);
    expect(shared(inUse, "bed-block", [0, 0, 0])).toBeLessThan(0.1);
    expect(shared(inUse, "bed-block", [0, -SMALL, 0])).toBeGreaterThan(1);
    expect(shared(inUse, "bed-block", [SMALL, 0, 0])).toBeGreaterThan(1);
  });

  test("sled: the wedge's upper side lies in its open side, at the wedge angle from where it bears", () => {
    const omega = plane.design.wedge.angle;
    const triangles = trianglesLying(jig("wedge-sled"));
    expect(areaFacing(triangles, [sin(omega), cos(omega), 0], 0.01)).toBeGreaterThan(0.9 * plane.wedgeLength * 15);
    expect(areaFacing(triangles, [0, -1, 0], 0.001)).toBeGreaterThan(100 * 15);
    const upper = plane.wedge[2]!;
    const slope = plane.frame.bedAngle + omega;
    const outer = facesAlong(trianglesInUse(jig("wedge-sled")), [-sin(slope), cos(slope), 0]);
    const off = outer.map(([x, y]) => -(x - upper.from.x) * sin(slope) + (y - upper.from.y) * cos(slope));
    expect(Math.abs(Math.max(...off))).toBeLessThan(SMALL);
    expect(
      shared(jig("wedge-sled").inUse, "wedge", [
        0.01 * sin(plane.frame.bedAngle),
        -0.01 * cos(plane.frame.bedAngle),
        0,
      ]),
    ).toBeGreaterThan(1);
  });

  test("fit test: its holes are the shank and the clearance they are marked with", () => {
    const holes = roundHoles(trianglesLying(jig("fit-test"))).sort((a, b) => a.x - b.x);
    expect(holes.map(({ radius }) => Math.round((radius - fitTestShank(plane) / 2) * 100) / 100)).toEqual([...TRIED]);
    const xs = trianglesLying(jig("fit-test")).flatMap((t) => t.map((p) => p[0]));
    expect(Math.max(...xs)).toBeCloseTo(100, 6);
  });
});

/** Corners of the faces that look in a direction. */
function facesAlong(triangles: readonly Vertex[][], way: Vertex): Vertex[] {
  const found = triangles.filter((t) => {
    const { normal } = triangleNormal(t);
    return normal[0] * way[0] + normal[1] * way[1] + normal[2] * way[2] > Math.cos((0.01 * Math.PI) / 180);
  });
  expect(found.length).toBeGreaterThan(0);
  return found.flat();
}

const sweep = ({ design: { pin }, pinSize: { diameter } }: Elevation): number =>
  pin.section === "round" ? diameter / 2 : Math.hypot(diameter / 2, diameter / 2);

const crossSection = (points: readonly (readonly [number, number])[]): CrossSection =>
  new wasm.CrossSection([points.map(([x, y]) => [x, y] as [number, number])], "EvenOdd");
const band = (low: number, high: number): CrossSection =>
  crossSection([
    [low, -500],
    [high, -500],
    [high, 500],
    [low, 500],
  ]);

function along(s: ReturnType<typeof recessEdge>[number], share: number): [number, number] {
  if (s.kind === "line") return [s.from.x + (s.to.x - s.from.x) * share, s.from.y + (s.to.y - s.from.y) * share];
  const turn = (s.sweep * share * Math.PI) / 180;
  const [dx, dy] = [s.from.x - s.centre.x, s.from.y - s.centre.y];
  return [
    s.centre.x + dx * Math.cos(turn) - dy * Math.sin(turn),
    s.centre.y + dx * Math.sin(turn) + dy * Math.cos(turn),
  ];
}

/** The template's opening at a height over the bed, found by slicing the mesh: the hole that holds the recess's middle. */
function openingOf(plane: Elevation, template: readonly Vertex[][], over: number): CrossSection {
  const level = over - plane.design.iron.thickness;
  const turned = template.map((t) =>
    t.map(([x, y, z]): Vertex => {
      const { s, v } = planeToIron(plane.frame, { x, y });
      return [s, -z, v];
    }),
  );
  const rings = manifoldFrom(turned).slice(level).toPolygons();
  const middle = plane.recess!.low + plane.recess!.width / 2 + 2;
  const holding = rings.filter((ring) => {
    const xs = ring.map((p) => p[0]);
    const ys = ring.map((p) => p[1]);
    return Math.min(...xs) < middle && Math.max(...xs) > middle && Math.min(...ys) < 0 && Math.max(...ys) > 0;
  });
  const opening = holding.sort((a, b) => a.length - b.length).sort((a, b) => reach(a) - reach(b))[0]!;
  return crossSection(opening.map(([x, y]) => [x, y] as const));
}

const reach = (ring: readonly (readonly [number, number] | readonly number[])[]): number =>
  Math.max(...ring.map((p) => p[1]!));

function manifoldFrom(triangles: readonly Vertex[][]) {
  return manifoldOf({ polygons: triangles.map((vertices) => ({ vertices })) } as unknown as Jig["lying"]);
}

interface RoundHole {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** Round upright holes: walls that share edges and whose corners all lie on one circle, within 0.01 mm. */
function roundHoles(triangles: readonly Vertex[][]): RoundHole[] {
  const axis = [0, 1, 2].find((k) => new Set(triangles.flat().map((p) => Math.round(p[k]! * 1e6))).size < 8)!;
  const [i, j] = [0, 1, 2].filter((k) => k !== axis) as [number, number];
  const links = new Map<string, Set<string>>();
  const places = new Map<string, readonly [number, number]>();
  const key = (p: Vertex) => `${p[i]!.toFixed(6)} ${p[j]!.toFixed(6)}`;
  for (const t of triangles) {
    if (Math.abs(triangleNormal(t).normal[axis]!) > 1e-9) continue;
    for (const p of t) {
      places.set(key(p), [p[i]!, p[j]!]);
      for (const q of t) links.set(key(p), (links.get(key(p)) ?? new Set()).add(key(q)));
    }
  }
  const holes: RoundHole[] = [];
  const seen = new Set<string>();
  for (const start of places.keys()) {
    const group = [start];
    for (const k of group)
      if (!seen.has(k)) {
        seen.add(k);
        group.push(...[...links.get(k)!].filter((n) => !seen.has(n)));
      }
    const ring = [...new Set(group)].map((k) => places.get(k)!);
    if (ring.length < 16) continue;
    const [x, y] = [0, 1].map(
      (n) => (Math.min(...ring.map((p) => p[n]!)) + Math.max(...ring.map((p) => p[n]!))) / 2,
    ) as [number, number];
    const radii = ring.map((p) => Math.hypot(p[0] - x, p[1] - y));
    if (Math.max(...radii) - Math.min(...radii) < 0.01) holes.push({ x, y, radius: Math.max(...radii) });
  }
  return holes;
}
