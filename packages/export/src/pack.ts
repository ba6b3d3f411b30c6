// Writing a pack: at every moment there is either the old pack or the new one, whole; what isn't ours is never touched.
import { join } from "node:path";
import { asCouldNotWrite, CouldNotWrite, codeOf } from "./could-not-write.ts";
import { bytesOf, type Files, isManifestOf, MANIFEST } from "./manifest.ts";
import { DISK, type FileSystem, type Found, foundAt, settleNames, writeFolder } from "./pack-files.ts";
import { refuseFileNames, refusePackName } from "./pack-names.ts";
import { clearRun, inTurn, type Place, putInOrder, type Run } from "./pack-runs.ts";

export interface Pack {
  /** Folder that the pack's folder goes into; made where it is missing. */
  readonly parent: string;
  /** The design's name, which is also the folder's. */
  readonly name: string;
  /** Its files with manifest.json among them, which says the same name. */
  readonly files: Files;
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
 * @throws CouldNotWrite where something else is in the way, the disk refuses or another run doesn't end; any other error is our bug
 */
export async function writePack(pack: Pack): Promise<WrittenPack> {
  const { parent, name, files, fileSystem: fs = DISK, patience = PATIENCE } = pack;
  refuseNames(name, files);
  const place = { fs, name, parent, target: join(parent, name) };
  try {
    await fs.mkdir(parent, { recursive: true });
    return await inTurn(place, patience, (own, broken) => written(place, own, broken, files));
  } catch (error) {
    throw asCouldNotWrite(place.target, error);
  }
}

function refuseNames(name: string, files: Files): void {
  refusePackName(name);
  refuseFileNames(files.keys());
  const manifest = new TextDecoder().decode(bytesOf(files.get(MANIFEST) ?? ""));
  if (!isManifestOf(name, manifest)) throw new Error(`the pack ${name} has no ${MANIFEST} of its own`);
}

async function written(place: Place, own: Run, broken: readonly Run[], files: Files): Promise<WrittenPack> {
  const { fs, target } = place;
  await replaceable(place); // before anything is put in order: what isn't ours stays among what it was found among
  await putInOrder(place, broken);
  try {
    await writeFolder(fs, own.fresh, files);
    const replaced = await replaceable(place); // again: writing took a while
    await (replaced ? swap(place, own) : fs.rename(own.fresh, target));
    await settleNames(fs, target);
    await clearRun(fs, own, replaced);
    return { path: target, replaced };
  } catch (error) {
    await clearRun(fs, own, false);
    throw error;
  }
}

/** The new pack takes the old one's place; where it can't, the old one returns to it. */
async function swap({ fs, target }: Place, { fresh, old }: Run): Promise<void> {
  await fs.rename(target, old);
  try {
    await fs.rename(fresh, target);
  } catch (error) {
    await fs.rename(old, target).catch((again: unknown) => {
      const remedy = `the pack that was there is whole in ${old}: move it back, or write again, which puts it back first`;
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

const IN_THE_WAY: Readonly<Record<Exclude<Found, "nothing" | "pack">, string>> = {
  folder: "a folder that is no pack of this design",
  file: "a file",
  link: "a symbolic link, which is not followed",
};

/** Whether a pack of this design is there (true) or nothing (false). */
async function replaceable({ fs, name, target }: Place): Promise<boolean> {
  const found = await foundAt(fs, target, name);
  if (found === "nothing" || found === "pack") return found === "pack";
  const what = `there is ${IN_THE_WAY[found]}`;
  throw new CouldNotWrite(target, what, "it was left as it is: move it away or choose another folder");
}
