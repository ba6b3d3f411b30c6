// Laws of the jigs over the examples' planes and random designs that can be built, with the jigs' own settings in turn.
import { readdirSync, readFileSync } from "node:fs";
import { readDesign } from "@lamplane/parameters/design";
import { CHORD_ERROR, type Elevation, elevation } from "@lamplane/parameters/elevation";
import { jigPlans, jigsLeftOut, LEAST_WALL } from "@lamplane/parameters/jigs";
import { type Jig, jigsOf, partsOf } from "@lamplane/parameters/solids";
import type { Design } from "@lamplane/parameters/table";
import type { Manifold } from "manifold-3d";
import { describe, expect, test } from "vitest";
import { buildable } from "../support/buildable.ts";
import { randomDesigns, seeded } from "../support/designs.ts";
import { linesOf, lying, thinnestWall, worstOverhang } from "../support/jigs.ts";
import { faultsInEdges, manifoldOf, overlap, shellsIn, trianglesOf, volumeOf } from "../support/meshes.ts";

const DESIGNS = 200;
/** Volume that a jig and the wood it touches may share, mm³: what float32 makes of faces of some thousand mm². */
const TOUCH = 0.1;
/** Rays sent into each jig. */
const RAYS = 40;
/** One design in so many is sent rays into, and is laid on its wood in manifold-3d: they take long. */
const RAYED = 10;
const HELD = 5;

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
  readonly jigs: readonly Jig[];
}

const broken: object[] = [];
const made = (design: Design, what: object): Case[] => {
  try {
    const plane = elevation(design);
    return [{ what, plane, jigs: jigsOf(plane) }];
  } catch (error) {
    broken.push({ error: (error as Error).message, what });
    return [];
  }
};
const EXAMPLES = readdirSync("examples").filter((name) => name.endsWith(".yaml"));
const examples = EXAMPLES.flatMap((name) => {
  const read = readDesign(readFileSync(`examples/${name}`), name);
  if (!read.ok) throw new Error(`${name} is not read`);
  return made(read.design, { name });
});
const cases = [
  ...examples,
  ...randomDesigns(41, DESIGNS, buildable).flatMap(({ changes, design }, i) => {
    const jigs = SETTINGS[i % SETTINGS.length]!;
    return made({ ...design, jigs: { ...design.jigs, ...jigs } }, { ...changes, jigs });
  }),
];

const someCases = cases.filter((_, i) => i < EXAMPLES.length || i % RAYED === 0);

/** Runs a law over every jig and tells how many break it, and the first that do. */
function holds(law: (jig: Jig, c: Case) => string[], over: readonly Case[] = cases): void {
  const faults = over.flatMap((c) =>
    c.jigs.flatMap((jig) => law(jig, c).map((fault) => ({ jig: jig.name, fault, ...c.what }))),
  );
  expect({ faults: faults.length, first: faults.slice(0, 3) }).toEqual({ faults: 0, first: [] });
}

describe(`jigs of ${EXAMPLES.length} examples and ${DESIGNS} random designs`, () => {
  test("are made, or left out with a reason, never an exception", () => {
    expect({ broken: broken.length, first: broken.slice(0, 3) }).toEqual({ broken: 0, first: [] });
    expect(cases).toHaveLength(EXAMPLES.length + DESIGNS);
    for (const { plane, jigs } of cases) {
      expect(jigPlans(plane).map(({ name }) => name)).toEqual(jigs.map(({ name }) => name));
      expect(jigs.length + jigsLeftOut(plane).length).toBe(8);
    }
    expect(cases.flatMap(({ jigs }) => jigs).length).toBeGreaterThan(1400);
    for (const { jigs } of examples) expect(jigs).toHaveLength(8);
  });

  test("are closed as an STL file holds them, of one shell unless they say otherwise, and of the volume they say", () =>
    holds((jig, { plane }) => {
      const triangles = lying(jig);
      const open = faultsInEdges(triangles);
      const shells = shellsIn(triangles);
      const volume = volumeOf(triangles);
      return [
        ...(open === 0 ? [] : [`${open} edges`]),
        ...(shells === jig.shells ? [] : [`${shells} shells, says ${jig.shells}`]),
        ...(Math.abs(volume / jig.volume - 1) < 1e-6 ? [] : [`${volume} mm³, says ${jig.volume}`]),
        ...(jig.shells === 1 || plane.design.jigs.fence === "slotted" ? [] : ["more than one shell"]),
      ];
    }));

  test("are solids to manifold-3d, in as many pieces", () =>
    holds((jig) => {
      const solid = manifoldOf(jig.lying);
      const pieces = solid.decompose();
      for (const piece of [solid, ...pieces]) piece.delete();
      return pieces.length === jig.shells ? [] : [`${pieces.length} pieces, says ${jig.shells}`];
    }, someCases));

  test("are closed where they are used, too", () =>
    holds((jig) => {
      const open = faultsInEdges(trianglesOf(jig.inUse));
      return open > 0 ? [`${open} edges`] : [];
    }, someCases));

  test("lie on the table and need no supports: nothing leans out more than 45°", () =>
    holds((jig) => {
      const triangles = lying(jig);
      const low = [0, 1, 2].map((k) => triangles.reduce((m, t) => Math.min(m, t[0]![k]!, t[1]![k]!, t[2]![k]!), 1));
      const lean = worstOverhang(triangles);
      return [
        ...(low.every((v) => Math.abs(v) < 1e-9) ? [] : [`lowest at ${low}`]),
        ...(lean <= 45.001 ? [] : [`${lean}°`]),
      ];
    }));

  test("have no wall under the limit", () => {
    const random = seeded(7);
    const tops = (jig: Jig) => [
      ...new Set(
        lying(jig)
          .flat()
          .map((p) => p[2]),
      ),
    ];
    holds((jig) => {
      const heights = tops(jig);
      // A letter lies between its floor and a face 0.6 over it: its strokes are no walls.
      const floors = heights.filter((z) => heights.some((top) => Math.abs(top - z - 0.6) < 1e-9));
      const skip = (p: readonly number[]) => floors.some((z) => p[2]! > z - 1e-9 && p[2]! < z + 0.6 - 1e-9);
      const wall = thinnestWall(lying(jig), RAYS, random, skip);
      return wall >= LEAST_WALL - 1e-6 ? [] : [`${wall} mm`];
    }, someCases);
  });

  test("say what they are and for which plane", () =>
    holds((jig, { plane }) => {
      const text = linesOf(jig);
      const { bedAngle } = plane.frame;
      const shown = (v: number) => String(Math.round(v * 100) / 100);
      const wanted = {
        "fit-test": ["FIT", "0", ".1", ".2", ".3", ".4", ".5"],
        "bed-gauge": [`${shown(bedAngle)}°`, `${shown(90 - bedAngle)}°`],
        "ramp-gauge": [`${shown(plane.ramp.angle)}°`, `${shown(90 - plane.ramp.angle)}°`],
        "recess-template": [shown(plane.design.recess.cutter), plane.design.jigs.bush > 0 ? "BUSH" : "BEARING"],
        "pin-guide": ["PIN"],
        "throat-spacer": ["GAP", shown(plane.points.bedTip.x - plane.points.rampTip.x)],
        "bed-cradle": [`${shown(bedAngle)}°`],
        "wedge-sled": [`${shown(plane.design.wedge.angle)}°`],
      }[jig.name];
      const missing = wanted.filter((word) => !text.includes(word));
      const name = plane.design.name.slice(0, 4);
      return [...missing, ...(text.includes(name) ? [] : [`the name ${name}`])].map(
        (word) => `"${text}" lacks ${word}`,
      );
    }));

  test("do not cut into what they hold", () =>
    holds(
      (jig, { plane }) => {
        const parts = heldParts(plane);
        const solid = manifoldOf(jig.inUse);
        const faults = HOLDS[jig.name].flatMap((name) => {
          const shared = overlap(solid, parts.get(name)!);
          return shared <= TOUCH + chords(plane) ? [] : [`${shared} mm³ of the ${name}`];
        });
        solid.delete();
        return faults;
      },
      cases.filter((_, i) => i < EXAMPLES.length || i % HELD === 0),
    ));
});

/** What the chords of a curved ramp may take of the front block's own: the chord error over the curve. mm³ */
const chords = ({ ramp, widths }: Elevation): number =>
  ramp.curve
    ? CHORD_ERROR *
      Math.hypot(ramp.curve.end.x - ramp.curve.begin.x, ramp.curve.end.y - ramp.curve.begin.y) *
      widths.core
    : 0;

const kept = new WeakMap<Elevation, ReadonlyMap<string, Manifold>>();
function heldParts(plane: Elevation): ReadonlyMap<string, Manifold> {
  const found = kept.get(plane);
  if (found) return found;
  const parts = new Map(partsOf(plane, "blank").map(({ name, inPlace }) => [name, manifoldOf(inPlace)]));
  kept.set(plane, parts);
  return parts;
}
