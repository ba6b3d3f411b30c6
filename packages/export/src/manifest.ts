// What a pack says of its own files; it is also how a later run knows the pack for one of ours.
import type { MeshMeasures } from "@lamplane/geometry/mesh";
import { sha256Hex } from "./sha256.ts";
import { meshMeasures } from "./stl-parser.ts";
import { solidMeasures } from "./threemf-parser.ts";

/** Name of the manifest in its pack. */
export const MANIFEST = "manifest.json";
const KIND = "lamplane pack";

/** A pack's files by their paths in it, parted by "/". */
export type PackFiles = ReadonlyMap<string, Uint8Array | string>;

/** Text of manifest.json: each file's size and SHA-256, and the measures of each solid in it. The same files give the same text. */
export function manifestText(designName: string, version: string, files: PackFiles): string {
  const paths = [...files.keys()].filter((path) => path !== MANIFEST).sort(); // by code units, the same in every locale
  const rows = paths.map((path) => row(path, toBytes(files.get(path)!)));
  return `${JSON.stringify({ kind: KIND, design: designName, version, unit: "mm", files: rows }, null, 2)}\n`;
}

/** Whether a text is the manifest of a pack of this design. */
export function isManifestOf(designName: string, text: string): boolean {
  try {
    const { kind, design } = JSON.parse(text) as { kind?: unknown; design?: unknown };
    return kind === KIND && design === designName;
  } catch {
    return false; // no JSON, or null: some other program's file
  }
}

/** A file's content as bytes; text in UTF-8. */
export const toBytes = (content: Uint8Array | string): Uint8Array =>
  typeof content === "string" ? new TextEncoder().encode(content) : content;

function row(path: string, bytes: Uint8Array): object {
  return { path, bytes: bytes.length, sha256: sha256Hex(bytes), ...measureSolids(path, bytes) };
}

/** What a file's bytes say of the solids in it: one in an STL, each by its name in a 3MF. */
function measureSolids(path: string, bytes: Uint8Array): object {
  if (path.endsWith(".stl")) return meshRow(meshMeasures(bytes));
  if (!path.endsWith(".3mf")) return {};
  return { solids: solidMeasures(bytes).map(({ name, ...measures }) => ({ name, ...meshRow(measures) })) };
}

function meshRow({ bounds, volume, triangles }: MeshMeasures): object {
  const box = { min: bounds.min.map(roundForManifest), max: bounds.max.map(roundForManifest) };
  return { bounds: box, volume: Number(volume.toFixed(3)), triangles };
}

/** A length in mm to 0.1 µm: float32 holds no more of a length of some hundred mm. */
const roundForManifest = (mm: number): number => Number(mm.toFixed(4)) + 0; // + 0 makes −0 a 0
