// The command as a process of its own, from nothing: what a maker waits for. An empty script is the floor.
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { FIRST } from "./corpus.js";
import { beside } from "./measure.js";

export const title = "Commands: a process from its start to its end";
const COMMAND = fileURLToPath(new URL("../../packages/cli/bin/lamplane.js", import.meta.url));
const REPETITIONS = 15;

export async function measured() {
  const folder = mkdtempSync(join(tmpdir(), "lamplane-bench-"));
  const node =
    (...args) =>
    () => {
      const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
      if (status !== 0) throw new Error(`${args.join(" ")} ended with ${status}: ${stderr}`);
    };
  const lamplane = (...args) => ({ what: `lamplane ${args[0]}`, run: node(COMMAND, ...args) });
  const swept = [
    "--vary",
    "bed.angle=43..57:0.14",
    "--vary",
    "wedge.angle=4.05..9:0.05",
    "--out",
    join(folder, "sweep.csv"),
  ];
  try {
    return [
      {
        of: FIRST.name,
        rows: await beside(
          [
            { what: "node with an empty script", run: node("-e", "0") },
            lamplane("--version"),
            lamplane("figures", FIRST.path),
            lamplane("check", FIRST.path),
            lamplane("build", FIRST.path, "--out", folder),
          ],
          { repetitions: REPETITIONS, warm: false },
        ),
      },
      {
        of: `lamplane sweep of ${101 * 100} designs on ${availableParallelism()} cores, to a table`,
        rate: "designs",
        rows: await beside(
          [
            { ...lamplane("sweep", FIRST.path, ...swept), what: "without plots", each: 101 * 100 },
            {
              ...lamplane("sweep", FIRST.path, ...swept, "--plots", join(folder, "plots")),
              what: "with seven plots",
              each: 101 * 100,
            },
          ],
          { repetitions: 3, warm: false },
        ),
      },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
