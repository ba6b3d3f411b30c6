// Small packs for tests of writing them, and what stands in a folder, judged by its manifest alone.
import { createHash } from "node:crypto";
import * as fs from "node:fs";
import { join } from "node:path";
import { manifestText } from "@lamplane/export";
import { beginRun, endRun } from "../../packages/export/src/pack-owner.ts";

export type Contents = Record<string, string>;
export const NAME = "small-plane";
export const OLD: Contents = { "figures.json": "old", "jigs/pin-guide.dxf": "old", "gone.svg": "old" };
export const NEW: Contents = { "figures.json": "new", "jigs/pin-guide.dxf": "new", "parts/inner/wedge.dxf": "new" };

/** Files of a pack, its manifest among them. */
export function packFiles(contents: Contents, name = NAME): Map<string, string> {
  const files = new Map(Object.entries(contents));
  return files.set("manifest.json", manifestText(name, "0.1.0", files));
}

/** Every file below a folder, by its path there; bytes that are no text as a hash of them. */
export function readContents(folder: string): Contents {
  const files = fs.readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const paths = files.map((file) => join(file.parentPath, file.name)).sort();
  return Object.fromEntries(paths.map((path) => [path.slice(folder.length + 1), textOrHash(path)]));
}

function textOrHash(path: string): string {
  const [bytes, text] = [fs.readFileSync(path), fs.readFileSync(path, "utf8")];
  return Buffer.from(text).equals(bytes) ? text : hashOf(path);
}

/** Whether a folder holds just the files its manifest lists, each with the SHA-256 told there. */
export function isWholePack(folder: string): boolean {
  if (!fs.existsSync(join(folder, "manifest.json"))) return false;
  const { files } = JSON.parse(fs.readFileSync(join(folder, "manifest.json"), "utf8"));
  const listed = files.map(({ path, sha256 }: { path: string; sha256: string }) => `${path} ${sha256}`);
  const present = Object.keys(readContents(folder)).filter((path) => path !== "manifest.json");
  return (
    listed.sort().join() ===
    present
      .map((path) => `${path} ${hashOf(join(folder, path))}`)
      .sort()
      .join()
  );
}

const hashOf = (path: string): string => createHash("sha256").update(fs.readFileSync(path)).digest("hex");

/** Mark of a run of this process that has ended. */
export function makeEndedMark(): string {
  const mark = beginRun();
  endRun(mark);
  return mark;
}

/** Name of the folder in which a run with that mark writes. */
export const runFolder = (mark: string, name = NAME): string => `.lamplane-${name}-${mark}.tmp`;
