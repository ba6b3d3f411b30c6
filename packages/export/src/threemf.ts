// Solids to one 3MF, each in its place and by its name: the bytes are read back, and a mesh that does not close is never a file.
import {
  assertNoFaults,
  assertVolume,
  type Mesh,
  mapVertices,
  meshBounds,
  roundToFloat32,
  unweld,
  type Vec3,
  weld,
} from "@lamplane/geometry/mesh";
import { assertModelVolume, writingAllowance } from "./mesh-volume.ts";
import { parseThreeMf } from "./threemf-parser.ts";
import {
  type Arrangement,
  contentTypesXml,
  MODEL_PATH,
  modelXml,
  type NamedMesh,
  relationsXml,
} from "./threemf-xml.ts";
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

/** A solid with z up, no coordinate negative. */
export interface StandingSolid extends NamedMesh {
  /** Volume from the outlines, mm³. */
  readonly volume: number;
}

interface Document {
  readonly name: string;
  readonly version: string;
}

/** 3MF of a plane: its parts keep their places to each other; it stands on its sole, with its lowest corner at 0, 0, 0. */
export const serializeThreeMf = (parts: readonly PartInPlace[], document: Document): Uint8Array =>
  serializeStanding(moveToPositiveOctant(parts), document, "one");

/** 3MF of solids that lie apart on a printer's bed, so that a slicer may move each. */
export const serializePlate = (solids: readonly StandingSolid[], document: Document): Uint8Array =>
  serializeStanding(
    solids.map(({ mesh, ...solid }) => ({ ...solid, mesh: moveAndWeld(mesh, roundPoint) })),
    document,
    "apart",
  );

/**
 * 3MF core document, in mm. The same solids, name and version give the same bytes.
 * @throws our bug: a mesh that is open, flat, inside out, not finite or of another volume; no solid, or two of one name
 * @see 3MF Consortium, 3MF Core Specification 1.4.0: 3.1 (z is up), 3.3 (positive octant), 3.4.3.1 (components), 4.1 (meshes)
 */
function serializeStanding(
  solids: readonly StandingSolid[],
  { name, version }: Document,
  arrangement: Arrangement,
): Uint8Array {
  if (solids.length === 0 || new Set(solids.map((solid) => solid.name)).size < solids.length)
    throw new Error(`${name}: a 3MF needs parts, each with a name of its own`);
  for (const { name, mesh, volume } of solids) assertModelVolume(name, mesh, volume);
  const words = { title: name, application: `lamplane ${version}`, colours: woodTones(solids.length), arrangement };
  const bytes = zipArchive(
    new Map([
      ["[Content_Types].xml", contentTypesXml()],
      ["_rels/.rels", relationsXml()],
      [MODEL_PATH, modelXml(solids, words)],
    ]),
  );
  verifyWritten(bytes, solids);
  return bytes;
}

/** Turned to stand on the sole, shifted to where no coordinate is negative, and rounded: what is in the file is these numbers. */
function moveToPositiveOctant(parts: readonly PartInPlace[]): StandingSolid[] {
  const standing = parts.map(({ name, inPlaceMesh, volume }) => {
    assertModelVolume(name, inPlaceMesh, volume);
    return { name, volume, mesh: mapVertices(inPlaceMesh, ([x, y, z]) => [x, -z, y]) };
  });
  const lows = standing.map(({ mesh }) => meshBounds(mesh).min);
  const low = ([0, 1, 2] as const).map((k) => Math.min(...lows.map((corner) => corner[k])));
  const shifted = ([x, y, z]: Vec3): Vec3 => roundPoint([x - low[0]!, y - low[1]!, z - low[2]!]);
  return standing.map(({ mesh, ...part }) => ({ ...part, mesh: moveAndWeld(mesh, shifted) }));
}

/** Vertices that the move lays together become one. */
const moveAndWeld = (mesh: Mesh, move: (at: Vec3) => Vec3): Mesh => weld(unweld(mapVertices(mesh, move)));

const roundPoint = ([x, y, z]: Vec3): Vec3 => [roundCoordinate(x), roundCoordinate(y), roundCoordinate(z)];

/** No number this large or small is ever written with an exponent. */
const roundCoordinate = (mm: number): number => Number(mm.toFixed(DECIMALS)) + 0; // + 0 makes −0 a 0

/** The bytes against the model: in the numbers as written and in float32, to which most readers round them. */
function verifyWritten(bytes: Uint8Array, modelled: readonly StandingSolid[]): void {
  parseThreeMf(bytes).forEach(({ name, mesh }, i) => {
    const asRead = roundToFloat32(mesh);
    for (const judged of [mesh, asRead]) assertNoFaults(name, judged);
    assertVolume(name, "in its 3MF", asRead, modelled[i]!.volume, writingAllowance(asRead, STEP));
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
