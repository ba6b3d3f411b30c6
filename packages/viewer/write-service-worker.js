// Writes the service worker into dist/, with every file that the page is made of and the hash of its bytes.
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";

const NAME = "service-worker.js";

/** @param dist folder of the built page, with a slash at its end @param source of the worker */
export function writeServiceWorker(dist, source) {
  const hashes = readdirSync(dist)
    .filter((name) => name !== NAME)
    .sort()
    .map((name) => [
      name,
      createHash("sha256")
        .update(readFileSync(dist + name))
        .digest("hex"),
    ]);
  const list = JSON.stringify(Object.fromEntries(hashes), null, 1);
  const notice = readFileSync(`${dist}sheet.js`, "utf8").split("\n", 1)[0];
  const code = readFileSync(source, "utf8").replace("self.LAMPLANE_FILES", () => list);
  writeFileSync(dist + NAME, `${notice}\n${code}`);
}
