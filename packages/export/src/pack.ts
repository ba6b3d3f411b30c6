// Writing a pack: at every moment there is either the old pack or the new one, whole; what isn't ours is never touched.
import { join } from "node:path";
import { isManifestOf, MANIFEST, type PackFiles, toBytes } from "./manifest.ts";
import { DISK, type FileSystem, inspectPath, type PathKind, syncParentFolder, writeFolder } from "./pack-files.ts";
import { type PackRun, type PackTarget, recoverBrokenRuns, removeRun, withLock } from "./pack-lock.ts";
import { assertFileNames, assertPackName } from "./pack-names.ts";
import { systemErrorCode, toWriteError, WriteError } from "./write-error.ts";

export interface Pack {
  /** Folder that the pack's folder goes into; made where it is missing. */
  readonly parent: string;
  /** The design's name, which is also the folder's. */
  readonly name: string;
  /** Its files with manifest.json among them, which says the same name. */
  readonly files: PackFiles;
  /** The disk, unless a test puts something else in its place. */
  readonly fileSystem?: FileSystem;
  /** How long to wait for another run that writes the same pack, ms; 3 s by default. */
  readonly patience?: number;
}
export interface WrittenPack {
  readonly path: string;
  /** Whether an older pack stood there. */
  readonly replaced: boolean;
}

const PATIENCE = 3_000; // ms: a pack is written in a second or two

/**
 * Writes a pack whole, or leaves everything as it was; while another run writes the same one, waits.
 * @throws WriteError where something else is in the way, the disk refuses or another run doesn't end; any other error is our bug
 */
export async function writePack(pack: Pack): Promise<WrittenPack> {
  const { parent, name, files, fileSystem: fs = DISK, patience = PATIENCE } = pack;
  assertNames(name, files);
  const place = { fs, name, parent, target: join(parent, name) };
  try {
    await fs.mkdir(parent, { recursive: true });
    return await withLock(place, patience, (own, broken) => replacePack(place, own, broken, files));
  } catch (error) {
    throw toWriteError(place.target, error);
  }
}

function assertNames(name: string, files: PackFiles): void {
  assertPackName(name);
  assertFileNames(files.keys());
  const manifest = new TextDecoder().decode(toBytes(files.get(MANIFEST) ?? ""));
  if (!isManifestOf(name, manifest)) throw new Error(`the pack ${name} has no ${MANIFEST} of its own`);
}

async function replacePack(
  pack: PackTarget,
  own: PackRun,
  broken: readonly PackRun[],
  files: PackFiles,
): Promise<WrittenPack> {
  const { fs, target } = pack;
  await isReplaceable(pack); // before anything is put in order: what isn't ours stays among what it was found among
  await recoverBrokenRuns(pack, broken);
  try {
    await writeFolder(fs, own.fresh, files);
    const replaced = await isReplaceable(pack); // again: writing took a while
    await (replaced ? swapPacks(pack, own) : fs.rename(own.fresh, target));
    await syncParentFolder(fs, target);
    await removeRun(fs, own, replaced);
    return { path: target, replaced };
  } catch (error) {
    await removeRun(fs, own, false);
    throw error;
  }
}

/** The new pack takes the old one's place; where it can't, the old one returns to it. */
async function swapPacks({ fs, target }: PackTarget, { fresh, old }: PackRun): Promise<void> {
  await fs.rename(target, old);
  try {
    await fs.rename(fresh, target);
  } catch (error) {
    await fs.rename(old, target).catch((again: unknown) => {
      const remedy = `the pack that was there is whole in ${old}: move it back, or write again, which puts it back first`;
      throw new WriteError(
        target,
        `neither the new pack nor the old one could be put there (${systemErrorCode(again)})`,
        remedy,
        error,
      );
    });
    throw error;
  }
}

const OBSTACLES: Readonly<Record<Exclude<PathKind, "nothing" | "pack">, string>> = {
  folder: "a folder that is no pack of this design",
  file: "a file",
  link: "a symbolic link, which is not followed",
};

/** Whether a pack of this design is there (true) or nothing (false). */
async function isReplaceable({ fs, name, target }: PackTarget): Promise<boolean> {
  const found = await inspectPath(fs, target, name);
  if (found === "nothing" || found === "pack") return found === "pack";
  const what = `there is ${OBSTACLES[found]}`;
  throw new WriteError(target, what, "it was left as it is: move it away or choose another folder");
}
