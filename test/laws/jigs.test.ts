// Laws of the jigs over the examples' planes and random designs that can be built, with the jigs' own settings in turn.
import { readdirSync, readFileSync } from "node:fs";
import { CHORD_ERROR, cotDeg } from "@lamplane/geometry";
import { readDesign } from "@lamplane/parameters/design";
import { type Elevation, elevation } from "@lamplane/parameters/elevation";
import { jigPlans, LEAST_WALL, omittedJigs } from "@lamplane/parameters/jigs";
import { type Jig, makeJig, partsOf } from "@lamplane/parameters/solids";
import type { Design } from "@lamplane/parameters/table";
import { formatBareLength } from "@lamplane/parameters/units";
import { describe, expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { randomDesigns, seeded } from "../support/designs.ts";
import { linesOf, thinnestWall, trianglesLying, worstOverhang } from "../support/jigs.ts";
import {
  countEdgeFaults,
  countShells,
  manifoldOf,
  overlapVolume,
  solidTriangles,
  volumeOf,
} from "../support/meshes.ts";

const DESIGNS = 200;
/** Volume that a jig and the wood it touches may share, mm³: what float32 makes of faces of some thousand mm². */
const TOUCH = 0.1;
/** Rays sent into each jig. */
const RAYS = 40;
/** One random design in so many is sent rays into, and laid on its wood in manifold-3d. */
const ONE_IN = 10;

const SETTINGS: readonly Partial<Design["jigs"]>[] = [
  {},
  { bush: 20, cutterLength: 25 },
  { fence: "slotted" },
  { relief: 2, drillBush: 15 },
  { clearance: 0 },
];

/** What each jig holds or is held against, by the parts' names. */
const HOLDS: Readonly<Record<Jig["name"], readonly string[]>> = {
  "fit-test": [],
  "bed-gauge": ["bed-block"],
  "ramp-gauge": ["front-block"],
  "recess-template": ["bed-block"],
  "pin-guide": ["cheek-left", "cheek-right"],
  "throat-spacer": ["front-block", "bed-block", "cheek-left", "cheek-right", "cross-pin"],
  "bed-cradle": ["bed-block"],
  "wedge-sled": ["wedge"],
};

interface Case {
  readonly what: object;
  readonly plane: Elevation;
}
/** Jigs that a plane may have: without a recess there is no template to rout it by. */
const jigsOf = ({ recess }: Elevation): number => (recess?.madeBy === "router" ? 8 : 7);
/** What breaks a law about one jig. */
type Law = (jig: Jig, plane: Elevation) => string[];
const random = seeded(7);

const LAWS = {
  "is closed as an STL file holds it, of one shell unless it says otherwise, and of the volume it says": (
    jig,
    plane,
  ) => {
    const triangles = trianglesLying(jig);
    const open = countEdgeFaults(triangles);
    const shells = countShells(triangles);
    const volume = volumeOf(triangles);
    return [
      ...(open === 0 ? [] : [`${open} edges`]),
      ...(shells === jig.shells ? [] : [`${shells} shells, says ${jig.shells}`]),
      ...(Math.abs(volume / jig.volume - 1) < 1e-6 ? [] : [`${volume} mm³, says ${jig.volume}`]),
      ...(jig.shells === 1 || plane.design.jigs.fence === "slotted" ? [] : ["more than one shell"]),
    ];
  },
  "lies on the table and needs no supports: nothing leans out more than 45°": (jig) => {
    const triangles = trianglesLying(jig);
    const low = [0, 1, 2].map((k) => triangles.reduce((m, t) => Math.min(m, t[0]![k]!, t[1]![k]!, t[2]![k]!), 1));
    const lean = worstOverhang(triangles);
    return [
      ...(low.every((v) => Math.abs(v) < 1e-9) ? [] : [`lowest at ${low}`]),
      ...(lean <= 45.001 ? [] : [`${lean}°`]),
    ];
  },
  "says what it is and for which plane": (jig, plane) => {
    const text = linesOf(jig);
    const { bedAngle } = plane.frame;
    const shown = (v: number) => String(Math.round(v * 100) / 100);
    const length = (mm: number) => formatBareLength(mm, plane.design);
    const { bedTip, rampTip } = plane.points;
    const offFeather = plane.design.bed.featherChamfer * cotDeg(bedAngle);
    const wanted = {
      "fit-test": ["FIT", "0", ".1", ".2", ".3", ".4", ".5"],
      "bed-gauge": [`${shown(bedAngle)}°`, `${shown(90 - bedAngle)}°`],
      "ramp-gauge": [`${shown(plane.ramp.angle)}°`, `${shown(90 - plane.ramp.angle)}°`],
      "recess-template": [length(plane.design.recess.cutter), plane.design.jigs.bush > 0 ? "BUSH" : "BEARING"],
      "pin-guide": ["PIN"],
      "throat-spacer": ["GAP", length(bedTip.x + offFeather - rampTip.x)],
      "bed-cradle": [`${shown(bedAngle)}°`],
      "wedge-sled": [`${shown(plane.design.wedge.angle)}°`],
    }[jig.name];
    return [...wanted, plane.design.name.slice(-2)]
      .filter((word) => !text.includes(word))
      .map((word) => `"${text}" lacks ${word}`);
  },
} satisfies Record<string, Law>;

/** Laws that take long: for every example, and one random design in so many. */
const SLOW_LAWS = {
  "is closed where it is used, and a solid to manifold-3d in as many pieces": (jig) => {
    const open = countEdgeFaults(solidTriangles(jig.inUse));
    const solid = manifoldOf(jig.lying);
    const pieces = solid.decompose();
    for (const piece of [solid, ...pieces]) piece.delete();
    return [
      ...(open === 0 ? [] : [`${open} edges`]),
      ...(pieces.length === jig.shells ? [] : [`${pieces.length} pieces, says ${jig.shells}`]),
    ];
  },
  "has no wall under the limit": (jig) => {
    const heights = [...new Set(trianglesLying(jig).flatMap((t) => t.map((p) => p[2])))];
    // A letter lies between its floor and a face 0.6 over it: its strokes are no walls.
    const floors = heights.filter((z) => heights.some((top) => Math.abs(top - z - 0.6) < 1e-9));
    const skip = (p: readonly number[]) => floors.some((z) => p[2]! > z - 1e-9 && p[2]! < z + 0.6 - 1e-9);
    const wall = thinnestWall(trianglesLying(jig), RAYS, random, skip);
    return wall >= LEAST_WALL - 1e-6 ? [] : [`${wall} mm`];
  },
  "does not cut into what it holds": (jig, plane) => {
    const solid = manifoldOf(jig.inUse);
    const faults = HOLDS[jig.name].flatMap((name) => {
      const part = manifoldOf(partsOf(plane, "blank").find((p) => p.name === name)!.inPlace);
      const shared = overlapVolume(solid, part);
      part.delete();
      return shared <= TOUCH + chords(plane) ? [] : [`${shared} mm³ of the ${name}`];
    });
    solid.delete();
    return faults;
  },
} satisfies Record<string, Law>;

/** What the chords of a curved ramp may take of the front block's own: the chord error over the curve. mm³ */
function chords({ ramp, widths }: Elevation): number {
  if (!ramp.curve) return 0;
  const { begin, end } = ramp.curve;
  return CHORD_ERROR * Math.hypot(end.x - begin.x, end.y - begin.y) * widths.core;
}

const EXAMPLES = readdirSync("examples").filter((name) => name.endsWith(".yaml"));
const cases: Case[] = [
  ...EXAMPLES.map((name) => {
    const read = readDesign(readFileSync(`examples/${name}`), name);
    if (!read.ok) throw new Error(`${name} is not read`);
    return { what: { name }, plane: elevation(read.design) };
  }),
  ...randomDesigns(41, DESIGNS, isBuildable).map(({ changes, design }, i) => {
    const jigs = SETTINGS[i % SETTINGS.length]!;
    return { what: { ...changes, jigs }, plane: elevation({ ...design, jigs: { ...design.jigs, ...jigs } }) };
  }),
];

/** Every jig is made, judged and let go: some thousand meshes at once would not fit. */
const broken = new Map<string, object[]>();
let count = 0;
cases.forEach(({ what, plane }, i) => {
  const laws: [string, Law][] = Object.entries(LAWS);
  if (i < EXAMPLES.length || i % ONE_IN === 0) laws.push(...Object.entries(SLOW_LAWS));
  const tell = (law: string, fault: object) => broken.set(law, [...(broken.get(law) ?? []), fault]);
  for (const plan of jigPlans(plane))
    try {
      const jig = makeJig(plan);
      count++;
      for (const [law, check] of laws)
        for (const fault of check(jig, plane)) tell(law, { jig: jig.name, fault, ...what });
    } catch (error) {
      tell("exceptions", { jig: plan.name, error: (error as Error).message, ...what });
    }
});

describe(`every jig of ${EXAMPLES.length} examples and ${DESIGNS} random designs`, () => {
  test("is made, or left out with a reason, never an exception", () => {
    expect(broken.get("exceptions") ?? []).toEqual([]);
    const plans = cases.map(({ plane }) => jigPlans(plane).length);
    expect(cases.map(({ plane }, i) => plans[i]! + omittedJigs(plane).length)).toEqual(
      cases.map(({ plane }) => jigsOf(plane)),
    );
    expect(plans.slice(0, EXAMPLES.length)).toEqual(cases.slice(0, EXAMPLES.length).map(({ plane }) => jigsOf(plane)));
    expect(count).toBe(plans.reduce((sum, n) => sum + n, 0));
    expect(count).toBeGreaterThan(1400);
  });

  test.each(Object.keys({ ...LAWS, ...SLOW_LAWS }))("%s", (law) => {
    const faults = broken.get(law) ?? [];
    expect({ faults: faults.length, first: faults.slice(0, 3) }).toEqual({ faults: 0, first: [] });
  });
});
