// Writing a pack: whole or not at all, and nothing is ever replaced but a pack of the same design.
import { join } from "node:path";
import { CouldNotWrite, hasCode, writingError } from "./could-not-write.ts";
import { checkFileNames, foldersOf, isPlainName } from "./file-names.ts";
import { disk, type FileSystem } from "./file-system.ts";
import { clearLeftovers, ignoringFailure, packAt, removePack, workingFolder } from "./leftovers.ts";
import { bytesOf, MANIFEST, manifest, type PackFiles, type PackName } from "./manifest.ts";

export interface PackRequest extends PackName {
  /** Folder that the pack's own folder goes into; made where it isn't there. */
  readonly parent: string;
  /** Name of the pack's folder. */
  readonly name: string;
  /** All but the manifest, which is added here. */
  readonly files: PackFiles;
}
export interface PackResult {
  readonly folder: string;
  /** Names of the files written, the manifest among them, sorted. */
  readonly files: readonly string[];
  /** Size of them all. */
  readonly bytes: number;
  readonly replacedPack: boolean;
}

/**
 * Writes a pack to a working folder beside its place and renames it when it is whole. A pack of the same design is set aside first and
 * removed last; where the second renaming fails it goes back, and where the run is killed between the two the next run puts it back.
 * Two runs on the same pack at once: each gives a whole pack or an error.
 * @throws CouldNotWrite where the disk refuses or something else stands at the pack's place
 */
export async function writePack(request: PackRequest, fs: FileSystem = disk): Promise<PackResult> {
  const contents = packContents(request);
  const { parent, name, designName } = request;
  const folder = join(parent, name);
  if (!isPlainName(name)) {
    throw new CouldNotWrite(`"${name}" cannot be the name of a folder`, parent, "Give the design another name.");
  }
  try {
    await fs.makeFolders(parent);
    await clearLeftovers(fs, parent, name, designName);
    await refuseOthers(fs, folder, designName);
    const replacedPack = await writeAndSwap(fs, request, contents);
    const bytes = [...contents.values()].reduce((sum, content) => sum + content.length, 0);
    return { folder, files: [...contents.keys()].sort(), bytes, replacedPack };
  } catch (error) {
    throw writingError(error, folder);
  }
}

/** Every file's bytes, the manifest's first (`leftovers.ts` says why). */
function packContents({ files, designName, version }: PackRequest): Map<string, Uint8Array> {
  checkFileNames([MANIFEST, ...files.keys()]);
  const sorted = [...files].sort(([a], [b]) => (a < b ? -1 : 1));
  const list = manifest(files, { designName, version });
  return new Map([[MANIFEST, bytesOf(list)], ...sorted.map(([name, c]) => [name, bytesOf(c)] as const)]);
}

/** @returns whether a pack of the design stands there; an error where anything else does. */
async function refuseOthers(fs: FileSystem, folder: string, designName: string): Promise<boolean> {
  const { kind } = await fs.look(folder);
  if (kind === "nothing") return false;
  const found = kind === "folder" ? await packAt(fs, folder) : undefined;
  if (found === designName) return true;
  throw new CouldNotWrite(
    found === undefined ? IN_THE_WAY[kind] : `the pack of another design, "${found}", is there`,
    folder,
    "It was left as it is: move it away, or write the pack to another folder.",
  );
}

const IN_THE_WAY = {
  folder: "a folder that is not a lamplane pack is there",
  file: "a file is there",
  link: "a symbolic link is there, and a pack is never written through one",
};

async function writeAndSwap(fs: FileSystem, request: PackRequest, contents: Map<string, Uint8Array>): Promise<boolean> {
  const { parent, name, designName } = request;
  const made = await workingFolder(fs, parent, name, "tmp");
  try {
    await writeFiles(fs, made, contents);
    const replaces = await refuseOthers(fs, join(parent, name), designName); // once more: the writing took its time
    if (replaces) await replace(fs, parent, name, made);
    else await fs.rename(made, join(parent, name));
    if (!replaces) await ignoringFailure(() => fs.settle(parent));
    return replaces;
  } catch (error) {
    await ignoringFailure(() => removePack(fs, made));
    throw error;
  }
}

async function writeFiles(fs: FileSystem, folder: string, contents: Map<string, Uint8Array>): Promise<void> {
  await fs.makeNewFolder(folder);
  const folders = foldersOf(contents.keys()).map((inner) => join(folder, inner));
  const [[manifestName, manifestBytes], ...others] = [...contents] as [[string, Uint8Array], ...[string, Uint8Array][]];
  await fs.write(join(folder, manifestName), manifestBytes);
  for (const inner of folders) await fs.makeNewFolder(inner);
  for (const [name, bytes] of others) await fs.write(join(folder, name), bytes);
  for (const inner of [...folders, folder]) await fs.settle(inner);
}

/** Sets the old pack aside, puts the new one in its place, and only when that is on the disk removes the old one. */
async function replace(fs: FileSystem, parent: string, name: string, made: string): Promise<void> {
  const target = join(parent, name);
  const aside = await workingFolder(fs, parent, name, "old");
  await fs.rename(target, aside);
  try {
    await fs.rename(made, target);
  } catch (error) {
    await putBack(fs, aside, target, error);
    throw error;
  }
  await ignoringFailure(async () => {
    await fs.settle(parent);
    const doomed = await workingFolder(fs, parent, name, "tmp");
    await fs.rename(aside, doomed); // an .old folder is always whole
    await removePack(fs, doomed);
  });
}

async function putBack(fs: FileSystem, aside: string, target: string, cause: unknown): Promise<void> {
  try {
    await fs.rename(aside, target);
  } catch (error) {
    if (hasCode(error, "ENOENT")) throw error;
    const cure = `Rename it to ${target}, or run again once the disk can be written.`;
    throw new CouldNotWrite("the earlier pack is whole but could not be put back in its place", aside, cure, cause);
  }
}
