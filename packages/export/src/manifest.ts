// The list of what is in a pack, and the mark by which a folder is known to be one; the same files give the same text.
import { createHash } from "node:crypto";
import { meshMeasures } from "./stl-reading.ts";

/** Files of a pack by their names in it ("parts/wedge.stl"); text is written as UTF-8. */
export type PackFiles = ReadonlyMap<string, Uint8Array | string>;

export interface PackName {
  /** The plane's name in its design file. */
  readonly designName: string;
  /** Version of the program. */
  readonly version: string;
}

export const MANIFEST = "manifest.json";
export const PACK_KIND = "lamplane pack";

/** `manifest.json` of the files given: for each its SHA-256 and size; for an STL also what was measured in its bytes. */
export function manifest(files: PackFiles, { designName, version }: PackName): string {
  const described = Object.fromEntries([...files].map(([name, content]) => [name, fileEntry(name, bytesOf(content))]));
  const content = { kind: PACK_KIND, design: designName, version, unit: "mm", files: described };
  return `${JSON.stringify(sortedKeys(content), null, 2)}\n`;
}

export const bytesOf = (content: Uint8Array | string): Uint8Array =>
  typeof content === "string" ? new TextEncoder().encode(content) : content;

function fileEntry(name: string, bytes: Uint8Array): object {
  const entry = { bytes: bytes.length, sha256: createHash("sha256").update(bytes).digest("hex") };
  if (!name.endsWith(".stl")) return entry;
  const { triangles, bounds, volume } = meshMeasures(bytes);
  const box = { min: bounds.min.map(micron), max: bounds.max.map(micron) };
  return { ...entry, triangles, bounds: box, volume: micron(volume) };
}

/** Three decimals, of mm or mm³: the STL itself is no finer. */
const micron = (value: number): number => Number(value.toFixed(3)) + 0;

function sortedKeys(value: unknown): unknown {
  if (Array.isArray(value) || typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, inner]) => [key, sortedKeys(inner)]));
}

/** The design that a `manifest.json` belongs to; undefined where the text is not a pack's. */
export function designOf(text: string): string | undefined {
  try {
    const { kind, design } = JSON.parse(text) as { kind?: unknown; design?: unknown };
    return kind === PACK_KIND && typeof design === "string" ? design : undefined;
  } catch {
    return undefined;
  }
}
