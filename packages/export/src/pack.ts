// Writing a pack: at every moment there is either the old pack or the new one, whole; what isn't ours is never touched.
import { join } from "node:path";
import { asCouldNotWrite, CouldNotWrite, codeOf } from "./could-not-write.ts";
import { bytesOf, type Files, isManifestOf, MANIFEST } from "./manifest.ts";
import {
  DISK,
  type FileSystem,
  type Found,
  foundAt,
  isOurs,
  removeQuietly,
  settleNames,
  writeFolder,
} from "./pack-files.ts";
import { refuseFileNames, refusePackName } from "./pack-names.ts";

export interface Pack {
  /** Folder that the pack's folder goes into; made where it is missing. */
  readonly parent: string;
  /** The design's name, which is also the folder's. */
  readonly name: string;
  /** Its files with manifest.json among them, which says the same name. */
  readonly files: Files;
  /** The disk, unless a test puts something else in its place. */
  readonly fileSystem?: FileSystem;
}
export interface WrittenPack {
  readonly path: string;
  /** Whether an older pack stood there. */
  readonly replaced: boolean;
}

/** Where a pack goes, and the two names beside it that are ours. */
interface Places {
  readonly fs: FileSystem;
  readonly name: string;
  readonly parent: string;
  readonly target: string;
  /** The new pack until it is whole; afterwards the old one until it is gone. */
  readonly temporary: string;
  /** The old pack, whole, while the new one takes its place. */
  readonly aside: string;
}

/** Temporary folders that this process is writing now. */
const inUse = new Set<string>();

/**
 * Writes a pack whole, or leaves everything as it was.
 * @throws CouldNotWrite where something else is in the way or the disk refuses; any other error is our bug
 */
export async function writePack({ parent, name, files, fileSystem = DISK }: Pack): Promise<WrittenPack> {
  refuseNames(name, files);
  const places = placesOf(parent, name, fileSystem);
  if (inUse.has(places.temporary)) throw new Error(`the pack ${name} is being written already`);
  inUse.add(places.temporary);
  try {
    return await written(places, files);
  } catch (error) {
    throw asCouldNotWrite(places.target, error);
  } finally {
    inUse.delete(places.temporary);
  }
}

function refuseNames(name: string, files: Files): void {
  refusePackName(name);
  refuseFileNames(files.keys());
  const manifest = new TextDecoder().decode(bytesOf(files.get(MANIFEST) ?? ""));
  if (!isManifestOf(name, manifest)) throw new Error(`the pack ${name} has no ${MANIFEST} of its own`);
}

function placesOf(parent: string, name: string, fs: FileSystem): Places {
  const temporary = join(parent, `.lamplane-${name}-${process.pid}.tmp`);
  return { fs, name, parent, target: join(parent, name), temporary, aside: join(parent, `.lamplane-${name}.old`) };
}

async function written(places: Places, files: Files): Promise<WrittenPack> {
  const { fs, parent, target, temporary } = places;
  await fs.mkdir(parent, { recursive: true });
  await removeStale(places);
  await restoreLeftOver(places);
  await replaceable(places, target);
  if ((await foundAt(fs, temporary, places.name)) !== "nothing")
    refuse(temporary, "something that is not a folder of ours");
  try {
    await writeFolder(fs, temporary, files);
    const replaced = await replaceable(places, target); // again: writing took a while
    await (replaced ? swap(places) : fs.rename(temporary, target));
    await settleNames(fs, target);
    if (replaced) await removeAside(places);
    return { path: target, replaced };
  } catch (error) {
    await removeQuietly(fs, temporary);
    throw error;
  }
}

/** The new pack takes the old one's place; where it can't, the old one returns to it. */
async function swap({ fs, target, temporary, aside }: Places): Promise<void> {
  await fs.rename(target, aside);
  try {
    await fs.rename(temporary, target);
  } catch (error) {
    await fs.rename(aside, target).catch((again: unknown) => {
      const remedy = `the pack that was there is whole in ${aside}: rename it, or write again, which puts it back first`;
      throw new CouldNotWrite(
        target,
        `neither the new pack nor the old one could be put there (${codeOf(again)})`,
        remedy,
        error,
      );
    });
    throw error;
  }
}

/** The old pack is removed under a temporary name, so that what bears the other name is always whole. */
async function removeAside({ fs, temporary, aside }: Places): Promise<void> {
  await fs.rename(aside, temporary).catch(() => undefined);
  await removeQuietly(fs, temporary);
}

/** An old pack that a broken-off run left aside returns to its place, or goes where a newer one has taken it. */
async function restoreLeftOver(places: Places): Promise<void> {
  const { fs, name, target, aside } = places;
  if (!(await replaceable(places, aside))) return;
  const inPlace = await foundAt(fs, target, name);
  if (inPlace === "nothing") await fs.rename(aside, target);
  else if (inPlace === "pack") await removeAside(places);
}

const IN_THE_WAY: Readonly<Record<Exclude<Found, "nothing" | "pack">, string>> = {
  folder: "a folder that is no pack of this design",
  file: "a file",
  link: "a symbolic link, which is not followed",
};

/** Whether a pack of this design is there (true) or nothing (false). */
async function replaceable({ fs, name }: Places, path: string): Promise<boolean> {
  const found = await foundAt(fs, path, name);
  if (found === "nothing" || found === "pack") return found === "pack";
  return refuse(path, IN_THE_WAY[found]);
}

function refuse(path: string, what: string): never {
  throw new CouldNotWrite(path, `there is ${what}`, "it was left as it is: move it away or choose another folder");
}

/** Removes temporary folders of this pack whose process is gone. */
async function removeStale({ fs, name, parent, temporary }: Places): Promise<void> {
  const [before, after] = [`.lamplane-${name}-`, ".tmp"];
  for (const each of await fs.readdir(parent)) {
    const number = each.startsWith(before) && each.endsWith(after) ? each.slice(before.length, -after.length) : "";
    if (!/^[1-9]\d*$/.test(number)) continue;
    const path = join(parent, each);
    const stale = path === temporary || !isRunning(Number(number)); // one of our own number is an earlier process's
    if (stale && (await isOurs(fs, path, name))) await removeQuietly(fs, path);
  }
}

function isRunning(id: number): boolean {
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    return codeOf(error) === "EPERM"; // another user's
  }
}
