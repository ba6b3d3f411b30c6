// Reading our own 3MF back: its solids are measured from the bytes in the file.
import { type MeshMeasures, measureMesh } from "@lamplane/geometry/mesh";
import { unzipSync } from "fflate";
import { MODEL_PATH, type NamedMesh, parseMeshes } from "./threemf-xml.ts";

/** A solid of a document with its size. */
export interface SolidMeasures extends MeshMeasures {
  readonly name: string;
}

/** Documents read before: the gate and the manifest ask of the same bytes. */
const READ = new WeakMap<Uint8Array, readonly NamedMesh[]>();

/**
 * The solids of a 3MF that `serializeThreeMf` wrote, in their order, as they stand in the build, mm.
 * @throws where the bytes are not such a document
 */
export function parseThreeMf(bytes: Uint8Array): readonly NamedMesh[] {
  const known = READ.get(bytes);
  if (known) return known;
  const model = unzipSync(bytes)[MODEL_PATH];
  if (model === undefined) throw new Error(`not a 3MF of ours: it has no ${MODEL_PATH}`);
  const meshes = parseMeshes(new TextDecoder().decode(model));
  READ.set(bytes, meshes);
  return meshes;
}

/** Size of each solid in a 3MF that `serializeThreeMf` wrote. */
export const solidMeasures = (bytes: Uint8Array): SolidMeasures[] =>
  parseThreeMf(bytes).map(({ name, mesh }) => ({ name, ...measureMesh(mesh) }));
