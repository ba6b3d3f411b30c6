// Threads that end before they have answered, under a build and under a class: nothing half made, and the packs that stand stay whole.
import * as fs from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { writePack } from "@lamplane/export";
import { afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { buildIfStale, runWithEndingWorkers } from "../support/built.ts";
import { ClassFolder } from "../support/class-folder.ts";
import { fault } from "../support/faults.ts";
import { isWholePack, OLD, packFiles, readContents } from "../support/packs.ts";

const NAME = "apprentice-smoother";
const WAYS = ["throw", "exit"] as const;
const BUG =
  /^lamplane \S+ has a bug: (broken off on purpose|(a worker of the class|the worker of the sheets) ended by itself, with 7)$/m;

let parent: string;
const school = new ClassFolder();
beforeAll(buildIfStale);
beforeEach(() => {
  parent = fs.mkdtempSync(join(tmpdir(), "lamplane-threads-"));
});
afterEach(() => fs.rmSync(parent, { recursive: true }));

describe.skipIf(availableParallelism() < 2)("worker threads that end by themselves", () => {
  test.each(WAYS)(
    "the sheets' thread of a build (%s)",
    fault({
      fault: "the thread of the sheets ends by itself",
      on: "a build over an older pack",
      survives:
        "the older pack, whole, with nothing beside it; that it is a bug is told; the next build makes its pack",
    }),
    async (how) => {
      await writePack({ parent, name: NAME, files: packFiles(OLD, NAME) });
      const before = readContents(join(parent, NAME));
      const args = ["build", `examples/${NAME}.yaml`, "--only", "sheets,router", "--out", parent];
      const { status, stderr, stdout } = runWithEndingWorkers(how, 1, ...args);
      expect({ status, stdout }).toEqual({ status: 4, stdout: "" });
      expect(stderr).toMatch(BUG);
      expect(stderr).toContain("No file is half written.");
      expect(stderr).not.toMatch(/\n\s+at /);
      expect(fs.readdirSync(parent)).toEqual([NAME]);
      expect(readContents(join(parent, NAME))).toEqual(before);
      const next = runWithEndingWorkers(how, 2, ...args); // a worker of the sheets answers once
      expect(next.status, next.stderr).toBe(0);
      expect(isWholePack(join(parent, NAME))).toBe(true);
      expect(fs.existsSync(join(parent, NAME, "traveller.pdf"))).toBe(true);
    },
  );

  test.each(WAYS)(
    "the threads of a class (%s)",
    fault({
      fault: "the threads that make its packs end by themselves",
      on: "a class",
      survives: "every pack and design file that was written, whole; that it is a bug is told",
    }),
    (how) => {
      school.writeRoster("name,iron.width\nanna,50.8\nben,50.2\n");
      const { status, stderr } = runWithEndingWorkers(
        how,
        1,
        ...["class", school.roster, "--base", school.base, "--out", school.packs],
      );
      expect(status).toBe(4);
      expect(stderr).toMatch(BUG);
      expect(stderr).not.toMatch(/\n\s+at /);
      for (const name of ["anna", "ben"]) {
        expect(school.design(name).name).toBe(name);
        if (fs.existsSync(school.at("packs", name))) expect(isWholePack(school.at("packs", name)), name).toBe(true);
      }
    },
  );
});
