// Names of designs that some disk would not take for a folder: refused in words when the design is read, and nowhere later.
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { TABLE } from "@lamplane/parameters/table";
import fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import { assertFileNames, assertPackName } from "../../packages/export/src/pack-names.ts";
import { fault } from "../support/faults.ts";
import { runCommand } from "../support/running.ts";

const folder = mkdtempSync(join(tmpdir(), "lamplane-names-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

// Microsoft, "Naming Files, Paths, and Namespaces": reserved names, also with an ending, in any case; no dot at the end
const DEVICES = ["con", "prn", "aux", "nul", "com1", "com9", "lpt1", "lpt9"];
const REFUSED = [...DEVICES, ...DEVICES.map((name) => `${name.toUpperCase()}.stl`), "Nul", "plane.", "plane..", "a/b"];

describe.each(REFUSED)("a design called %j", (name) => {
  test(
    "is refused with its place and what a name may be",
    fault({
      fault: "a name that some disk does not take (con, NUL.stl, a/b, a dot at its end …)",
      on: "a design's name",
      survives: "exit 2 with line and column; nothing written",
    }),
    async () => {
      const file = join(folder, "design.yaml");
      writeFileSync(file, `name: ${name}\niron: { width: 48, thickness: 3.6 }\n`);
      const { exit, out, err } = await runCommand("build", file, "--out", folder);
      expect({ exit, out }).toEqual({ exit: 2, out: "" });
      expect(err).toMatch(
        /design\.yaml:1:7: name: .*beginning with a letter or digit and not ending with a dot; no word that/s,
      );
      expect(readdirSync(folder)).toEqual(["design.yaml"]);
    },
  );
});

test.each(["console", "nul-plane", "com10", "auxiliary.2", "plane.v2", "A", "9", "x_", "lpt"])(
  "%j is a name",
  (name) => {
    expect(name).toMatch(TABLE.name.pattern!.regex);
  },
);

test("whatever the table lets a design be called is a name for a pack and for a file in it", () => {
  const letters = fc.constantFrom(..."conprauxlmtpAZ019._-");
  const names = fc
    .string({ unit: letters, minLength: 1, maxLength: 8 })
    .filter((n) => TABLE.name.pattern!.regex.test(n));
  fc.assert(
    fc.property(names, (name) => {
      assertPackName(name);
      assertFileNames([`${name}/x`]);
    }),
    { numRuns: 2000, seed: 4 },
  );
});
