// What a pack says of its own files; it is also how a later run knows the pack for one of ours.
import { createHash } from "node:crypto";
import { meshMeasures } from "./stl-reading.ts";

/** Name of the manifest in its pack. */
export const MANIFEST = "manifest.json";
const KIND = "lamplane pack";

/** A pack's files by their paths in it, parted by "/". */
export type Files = ReadonlyMap<string, Uint8Array | string>;

/** Text of manifest.json: each file's size and SHA-256, and each mesh's measures. The same files give the same text. */
export function manifestText(designName: string, version: string, files: Files): string {
  const paths = [...files.keys()].filter((path) => path !== MANIFEST).sort(); // by code units, the same in every locale
  const rows = paths.map((path) => row(path, bytesOf(files.get(path)!)));
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
export const bytesOf = (content: Uint8Array | string): Uint8Array =>
  typeof content === "string" ? new TextEncoder().encode(content) : content;

function row(path: string, bytes: Uint8Array): object {
  const sha256 = createHash("sha256").update(bytes).digest("hex");
  return { path, bytes: bytes.length, sha256, ...(path.endsWith(".stl") ? meshRow(bytes) : {}) };
}

function meshRow(bytes: Uint8Array): object {
  const { bounds, volume, triangles } = meshMeasures(bytes);
  const box = { min: bounds.min.map(shown), max: bounds.max.map(shown) };
  return { bounds: box, volume: Number(volume.toFixed(3)), triangles };
}

/** A length in mm to 0.1 µm: float32 holds no more of a length of some hundred mm. */
const shown = (mm: number): number => Number(mm.toFixed(4)) + 0; // + 0 makes −0 a 0
