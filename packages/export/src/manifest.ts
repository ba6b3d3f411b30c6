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

/** What a manifest says of one file. */
export interface ManifestRow {
  readonly path: string;
  readonly bytes: number;
  readonly sha256: string;
  /** Only where the file was made from another state of the design, or by another version, than the manifest's own. */
  readonly madeFrom?: string;
}

/**
 * Text of manifest.json: each file's size and SHA-256, and the measures of each solid in it. The same files give the same text.
 * @param madeFrom what tells one state of the design from another
 * @param sections of the pack that the files are
 */
export function manifestText(
  designName: string,
  version: string,
  files: PackFiles,
  madeFrom = "",
  sections: readonly string[] = [],
): string {
  const paths = [...files.keys()].filter((path) => path !== MANIFEST);
  const rows = paths.map((path) => row(path, toBytes(files.get(path)!)));
  return textOf({ kind: KIND, design: designName, version, madeFrom, sections, unit: "mm", files: rows.sort(byPath) });
}

/** A manifest with rows of files that an older pack made, each marked with what it was made from where that is another. */
export function withCarriedRows(text: string, older: string, carried: readonly ManifestRow[]): string {
  const manifest = JSON.parse(text) as Manifest;
  const before = manifestOrigin(older);
  const isOlder = before.version !== manifest.version;
  const rows = carried.map(({ madeFrom = before.madeFrom, ...row }) =>
    madeFrom === manifest.madeFrom && !isOlder ? row : { ...row, madeFrom },
  );
  const isAlike = before.madeFrom === manifest.madeFrom && !isOlder;
  const sections = isAlike ? [...new Set([...manifest.sections, ...before.sections])].sort() : manifest.sections;
  return textOf({ ...manifest, sections, files: [...manifest.files, ...rows].sort(byPath) });
}

/** Rows of a manifest; none where the text is no manifest. */
export function manifestRows(text: string): readonly ManifestRow[] {
  try {
    const { files } = JSON.parse(text) as Partial<Manifest>;
    return Array.isArray(files)
      ? files.filter(({ path, sha256 }) => typeof path === "string" && typeof sha256 === "string")
      : [];
  } catch {
    return [];
  }
}

/** What a manifest's pack was made from, and which of its sections were. */
export type ManifestOrigin = Pick<Manifest, "madeFrom" | "version" | "sections">;

/** @throws SyntaxError for no JSON */
export function manifestOrigin(text: string): ManifestOrigin {
  const { madeFrom = "", version = "", sections = [] } = JSON.parse(text) as Partial<Manifest>;
  return { madeFrom, version, sections };
}

interface Manifest {
  readonly kind: string;
  readonly design: string;
  readonly version: string;
  readonly madeFrom: string;
  readonly sections: readonly string[];
  readonly unit: string;
  readonly files: readonly ManifestRow[];
}

const textOf = (manifest: Manifest): string => `${JSON.stringify(manifest, null, 2)}\n`;
/** By code units, the same in every locale. */
const byPath = (a: ManifestRow, b: ManifestRow): number => (a.path < b.path ? -1 : 1);

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

function row(path: string, bytes: Uint8Array): ManifestRow {
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
