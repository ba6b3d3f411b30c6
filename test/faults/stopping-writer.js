// A process that writes a small pack and stops at one call to the disk: killed there, or waiting there until its input ends.
// Arguments: the packs' folder, "kill" or "wait", the number of the call from 1, what stands in the pack's files. Needs the packages built.
import * as disk from "node:fs/promises";
import { MANIFEST, manifestText } from "../../packages/export/dist/manifest.js";
import { writePack } from "../../packages/export/dist/pack.js";

const [parent, how, stop, word] = process.argv.slice(2);
let count = 0;

async function stopAt() {
  if (++count !== Number(stop)) return;
  if (how === "kill") process.kill(process.pid, "SIGKILL");
  process.stdout.write(`waiting ${process.pid}\n`);
  await new Promise((resolve) => process.stdin.on("end", resolve).resume());
}

const stopping = (object, names) =>
  Object.fromEntries(
    names.map((name) => [
      name,
      async (...args) => {
        await stopAt();
        return object[name](...args);
      },
    ]),
  );
const fileSystem = {
  ...stopping(disk, ["lstat", "mkdir", "readdir", "readFile", "rename", "rmdir", "rm"]),
  open: async (...args) => {
    await stopAt();
    return stopping(await disk.open(...args), ["writeFile", "sync", "close"]);
  },
};

const files = new Map([
  ["figures.json", word],
  ["parts/inner/wedge.dxf", word],
]);
files.set(MANIFEST, manifestText("small-plane", "0.1.0", files));
await writePack({ parent, name: "small-plane", files, fileSystem });
process.stdout.write(`calls ${count}\n`);
