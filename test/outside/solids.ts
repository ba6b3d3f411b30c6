// Solids: closed, in one piece and of the right volume, against manifold-3d, admesh and three.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { meshMeasures, stlBytes } from "@lamplane/export/bytes";
import { elevation } from "@lamplane/parameters/elevation";
import { bodySolid, type Part, partsOf } from "@lamplane/parameters/solids";
import { Box3 } from "three";
import { STLLoader } from "three/addons/loaders/STLLoader.js";
import { designWith, WORKED } from "../support/designs.ts";
import { manifoldOf, overlapVolume, unionVolume } from "../support/meshes.ts";
import { outsideProgram, runForStdout } from "../support/outside-programs.ts";
import type { OutsideCheck } from "./check.ts";

const MANIFOLD = "manifold-3d 3.5";
const plane = elevation(designWith({ ...WORKED, "body.outline": "arched" }));
const parts = partsOf(plane, "trued");
const body = bodySolid(plane, "trued");
const WOOD = parts.slice(0, 4);

function ofManifold<T>(solid: Part["inPlace"], read: (manifold: ReturnType<typeof manifoldOf>) => T): T {
  const manifold = manifoldOf(solid);
  const value = read(manifold);
  manifold.delete();
  return value;
}

const row = (
  from: string,
  what: string,
  more: Pick<OutsideCheck, "ours" | "theirs" | "unit" | "within" | "relative">,
) => ({
  what: `Arched worked plane: ${what}`,
  from,
  told: "library" as const,
  ...more,
});
/** float32 holds seven digits of a coordinate. */
const ROUNDED = { within: 1e-5, relative: true } as const;

const volumes: readonly OutsideCheck[] = [
  ...parts.map(({ name, inPlace, volume }) =>
    row(MANIFOLD, `volume of ${name}`, {
      unit: "mm³",
      ours: () => volume,
      theirs: () => ofManifold(inPlace, (solid) => solid.volume()),
      ...ROUNDED,
    }),
  ),
  row(MANIFOLD, "volume of the body", {
    unit: "mm³",
    ours: () => body.volume,
    theirs: () => ofManifold(body.solid, (solid) => solid.volume()),
    ...ROUNDED,
  }),
  row(MANIFOLD, "volume of blocks and cheeks made one", {
    unit: "mm³",
    ours: () => body.volume,
    theirs: () => unionVolume(WOOD.map(({ inPlace }) => manifoldOf(inPlace))),
    ...ROUNDED,
  }),
];

const shapes: readonly OutsideCheck[] = [
  row(MANIFOLD, "pieces of the body", {
    ours: () => 1,
    theirs: () => ofManifold(body.solid, (solid) => solid.decompose().length),
  }),
  row(MANIFOLD, "ways through the body: throat and two pin holes", {
    ours: () => 3,
    theirs: () => ofManifold(body.solid, (solid) => solid.genus()),
  }),
  row(MANIFOLD, "ways through a cheek: the pin's hole", {
    ours: () => 1,
    theirs: () => ofManifold(parts[2]!.inPlace, (solid) => solid.genus()),
  }),
  row(MANIFOLD, "what cross pin and wedge share", {
    unit: "mm³",
    ours: () => 0,
    theirs: () => overlapVolume(manifoldOf(parts[4]!.inPlace), manifoldOf(parts[5]!.inPlace)),
    within: 0.05, // the flat lies on the wedge: float32 over some 600 mm²
  }),
];

const bytesOf = ({ lyingMesh, name, volume }: Part) => stlBytes(lyingMesh, name, volume);

const read: readonly OutsideCheck[] = parts.flatMap((part) => {
  const geometry = () => {
    const bytes = bytesOf(part);
    return new STLLoader().parse(bytes.slice().buffer);
  };
  const bounds = () => new Box3().setFromBufferAttribute(geometry().getAttribute("position") as never);
  const size = (k: 0 | 1 | 2) => () => {
    const { min, max } = meshMeasures(bytesOf(part)).bounds;
    return max[k]! - min[k]!;
  };
  return [
    row("three 0.187, STLLoader", `triangles of ${part.name} in its STL`, {
      ours: () => meshMeasures(bytesOf(part)).triangles,
      theirs: () => geometry().getAttribute("position").count / 3,
    }),
    row("three 0.187, STLLoader", `length of ${part.name} as it lies`, {
      unit: "mm",
      ours: size(0),
      theirs: () => bounds().max.x - bounds().min.x,
      within: 1e-4,
    }),
  ];
});

/** What admesh reports of a part's STL, read off by a pattern. */
function admesh(part: Part, pattern: RegExp): number {
  const folder = mkdtempSync(join(tmpdir(), "lamplane-outside-"));
  try {
    writeFileSync(join(folder, "part.stl"), bytesOf(part));
    const report = runForStdout(outsideProgram("admesh")!, [join(folder, "part.stl")]);
    const found = pattern.exec(report);
    if (!found) throw new Error(report);
    return Number(found[1]);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const mended: readonly OutsideCheck[] = parts.flatMap((part): OutsideCheck[] => [
  {
    ...row("admesh 0.98", `volume of ${part.name} in its STL`, {
      unit: "mm³",
      ours: () => part.volume,
      theirs: () => admesh(part, /Volume\s*:\s*([\d.]+)/),
      within: 5e-5, // the file's own grid
      relative: true,
    }),
    needs: "admesh",
  },
  {
    ...row("admesh 0.98", `open edges of ${part.name} in its STL`, {
      ours: () => 0,
      theirs: () => admesh(part, /Total disconnected facets\s*:\s*(\d+)/),
    }),
    needs: "admesh",
  },
]);

export const SOLID_CHECKS: readonly OutsideCheck[] = [...volumes, ...shapes, ...read, ...mended];
