// Growth of the solids with their segments: the same code with a finer chord error, each in a process of its own.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

export const title = "Growth: parts and STL with ten (--long: a hundred) times the segments";
const CHILD = fileURLToPath(new URL("./finer/child.js", import.meta.url));
const LOADER = new URL("./finer/register.js", import.meta.url).href;

/** Chords of an arc grow as the root of the chord error shrinks. @see plane geometry: sagitta of a chord */
const FINER = [1, 10];
/** Takes minutes: with --long, and once. */
const FINEST = 100;

export async function measured({ long = false } = {}) {
  const rows = { parts: [], bytes: [] };
  let coarsest;
  for (const times of long ? [...FINER, FINEST] : FINER) {
    const { status, stdout, stderr } = spawnSync(process.execPath, ["--import", LOADER, CHILD], {
      encoding: "utf8",
      env: {
        ...process.env,
        LAMPLANE_BENCH_FINER: String(times * times),
        LAMPLANE_BENCH_ONCE: times === FINEST ? "1" : "",
      },
    });
    if (status !== 0) throw new Error(`${CHILD} ended with ${status}: ${stderr}`);
    if (times > 1 && stdout.includes(coarsest)) throw new Error("a finer chord error made no more triangles");
    coarsest ??= JSON.parse(stdout)[0].what;
    for (const row of JSON.parse(stdout)) rows[row.kind].push({ ...row, what: `${times} × the segments: ${row.what}` });
  }
  return [
    { of: "six parts as closed solids", rate: "triangles", rows: rows.parts },
    { of: "whole body to gated STL", rate: "triangles", rows: rows.bytes },
  ];
}
