// Whether what a build script made is as new as all that it is made of.
import { readdirSync, statSync } from "node:fs";

const newestIn = (path) => {
  const found = statSync(path);
  if (!found.isDirectory()) return found.mtimeMs;
  return Math.max(0, ...readdirSync(path).map((name) => newestIn(`${path}/${name}`)));
};

/** Whether a file is there, and no older than any file of `sources`, which are files and folders. */
export function isUpToDate(file, sources) {
  const builtAt = statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;
  return Math.max(...sources.map(newestIn)) <= builtAt;
}
