// Solids to one 3MF, each in its place and by its name: the bytes are read back, and a mesh that does not close is never a file.
import {
  assertNoFaults,
  assertVolume,
  type Mesh,
  mapVertices,
  meshBounds,
  meshVolume,
  roundToFloat32,
  unweld,
  type Vec3,
  weld,
} from "@lamplane/geometry/mesh";
import { assertModelVolume, writingAllowance } from "./mesh-volume.ts";
import { parseThreeMf } from "./threemf-parser.ts";
import { contentTypesXml, MODEL_PATH, modelXml, type NamedMesh, relationsXml } from "./threemf-xml.ts";
import { zipArchive } from "./zip.ts";

/** What a document takes of a part. */
export interface PartInPlace {
  readonly name: string;
  /** In the plane's frame: x to the heel, y up from the sole, z to the left cheek. */
  readonly inPlaceMesh: Mesh;
  /** Volume from the outlines, mm³. */
  readonly volume: number;
}

/** Decimals of a length in mm: a nanometre. */
const DECIMALS = 6;
const STEP = 10 ** -DECIMALS;

/**
 * 3MF core document of solids, in mm. They keep their places to each other; the plane stands on its sole, z up, with the lowest corner
 * of the whole at 0, 0, 0. The same solids, name and version give the same bytes.
 * @throws our bug: a mesh that is open, flat, inside out, not finite or of another volume; no part, or two of one name
 * @see 3MF Consortium, 3MF Core Specification 1.4.0: 3.1 (z is up), 3.3 (positive octant), 3.4.3.1 (components), 4.1 (meshes)
 */
export function serializeThreeMf(
  parts: readonly PartInPlace[],
  { name, version }: { readonly name: string; readonly version: string },
): Uint8Array {
  if (parts.length === 0 || new Set(parts.map((part) => part.name)).size < parts.length)
    throw new Error(`${name}: a 3MF needs parts, each with a name of its own`);
  const modelled = parts.map(({ name, inPlaceMesh: mesh, volume }) => {
    assertModelVolume(name, mesh, volume);
    return { name, mesh };
  });
  const meshes = moveToPositiveOctant(modelled);
  const words = { title: name, application: `lamplane ${version}`, colours: woodTones(parts.length) };
  const bytes = zipArchive(
    new Map([
      ["[Content_Types].xml", contentTypesXml()],
      ["_rels/.rels", relationsXml()],
      [MODEL_PATH, modelXml(meshes, words)],
    ]),
  );
  verifyWritten(bytes, modelled);
  return bytes;
}

/** Turned to stand on the sole, shifted to where no coordinate is negative, and rounded: what is in the file is these numbers. */
function moveToPositiveOctant(meshes: readonly NamedMesh[]): NamedMesh[] {
  const standing = meshes.map(({ name, mesh }) => ({ name, mesh: mapVertices(mesh, ([x, y, z]) => [x, -z, y]) }));
  const lows = standing.map(({ mesh }) => meshBounds(mesh).min);
  const low = ([0, 1, 2] as const).map((k) => Math.min(...lows.map((corner) => corner[k])));
  const shifted = (at: Vec3): Vec3 => [
    roundCoordinate(at[0] - low[0]!),
    roundCoordinate(at[1] - low[1]!),
    roundCoordinate(at[2] - low[2]!),
  ];
  return standing.map(({ name, mesh }) => ({ name, mesh: moveAndWeld(mesh, shifted) }));
}

/** Vertices that the move lays together become one. */
const moveAndWeld = (mesh: Mesh, move: (at: Vec3) => Vec3): Mesh => weld(unweld(mapVertices(mesh, move)));

/** No number this large or small is ever written with an exponent. */
const roundCoordinate = (mm: number): number => Number(mm.toFixed(DECIMALS)) + 0; // + 0 makes −0 a 0

/** The bytes against the model: in the numbers as written and in float32, to which most readers round them. */
function verifyWritten(bytes: Uint8Array, modelled: readonly NamedMesh[]): void {
  parseThreeMf(bytes).forEach(({ name, mesh }, i) => {
    const asRead = roundToFloat32(mesh);
    for (const judged of [mesh, asRead]) assertNoFaults(name, judged);
    assertVolume(name, "in its 3MF", asRead, meshVolume(modelled[i]!.mesh), writingAllowance(asRead, STEP));
  });
}

const [DARK, LIGHT] = [
  [0x4a, 0x2f, 0x1b],
  [0xf4, 0xe6, 0xca],
] as const;

/** As many tones of wood, from dark to light in even steps, so that parts differ in grey too. */
const woodTones = (count: number): string[] =>
  Array.from({ length: count }, (_, i) => {
    const share = count === 1 ? 1 / 2 : i / (count - 1);
    const channels = DARK.map((dark, k) => Math.round(dark + share * (LIGHT[k]! - dark)));
    return `#${channels.map((channel) => channel.toString(16).toUpperCase().padStart(2, "0")).join("")}`;
  });
