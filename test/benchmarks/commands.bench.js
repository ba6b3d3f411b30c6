// The command as a process of its own, from nothing: what a maker waits for. An empty script is the floor, and the measure.
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { FIRST } from "./corpus.js";
import { beside } from "./measure.js";

export const title = "Commands: a process from its start to its end";
const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const REPETITIONS = 15;
const SMALL_SWEEP = ["--vary", "bed.angle=44..54:0.1", "--vary", "wedge.angle=6..11:0.5"]; // 101 × 11
const LARGE_SWEEP = ["--vary", "bed.angle=43..57:0.14", "--vary", "wedge.angle=4.05..9:0.05"];
const LARGE = 101 * 100;

const node =
  (...args) =>
  () => {
    const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
    if (status !== 0) throw new Error(`${args.join(" ")} ended with ${status}: ${stderr}`);
  };

const EMPTY = { what: "node with an empty script", run: node("-e", "0") };

/** @param options base: a folder of other sources, built, whose command is measured in turn with this one's */
export async function measured({ base } = {}) {
  const folder = mkdtempSync(join(tmpdir(), "lamplane-bench-"));
  const trees = [["", ROOT], ...(base ? [[`, ${base.commit}`, base.folder]] : [])];
  const lamplane = (what, ...args) =>
    trees.map(([state, root]) => ({ what: what + state, run: node(`${root}/packages/cli/bin/lamplane.js`, ...args) }));
  const table = (name) => ["--out", join(folder, name)];
  try {
    return [
      {
        of: FIRST.name,
        floor: EMPTY.what,
        rows: await beside(
          [
            EMPTY,
            ...lamplane("lamplane --help", "--help"),
            ...lamplane("lamplane figures", "figures", FIRST.path),
            ...lamplane("lamplane check", "check", FIRST.path),
            ...lamplane("lamplane build", "build", FIRST.path, "--out", folder),
            ...lamplane("lamplane sweep of 1 111 designs", "sweep", FIRST.path, ...SMALL_SWEEP, ...table("small.csv")),
          ],
          { repetitions: REPETITIONS, warm: false },
        ),
      },
      {
        of: `lamplane sweep of ${LARGE} designs on ${availableParallelism()} cores, to a table`,
        rate: "designs",
        rows: await beside(
          [
            ...lamplane("without plots", "sweep", FIRST.path, ...LARGE_SWEEP, ...table("large.csv")),
            ...lamplane(
              "with seven plots",
              "sweep",
              FIRST.path,
              ...LARGE_SWEEP,
              ...table("large.csv"),
              "--plots",
              join(folder, "plots"),
            ),
          ].map((contender) => ({ ...contender, each: LARGE })),
          { repetitions: 3, warm: false },
        ),
      },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
