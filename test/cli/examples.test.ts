// Every example is built as it stands, without a failing check, into a pack whose manifest holds.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { isWholePack } from "../support/packs.ts";
import { runCommand } from "../support/running.ts";

const EXAMPLES = readdirSync("examples").filter((name) => name.endsWith(".yaml"));
const folder = mkdtempSync(join(tmpdir(), "lamplane-examples-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What the manifest tells of a solid. */
const SOLID = {
  bounds: { min: [expect.any(Number), expect.any(Number), expect.any(Number)], max: expect.any(Array) },
  volume: expect.any(Number),
  triangles: expect.any(Number),
};

const { version: VERSION } = JSON.parse(readFileSync("packages/cli/package.json", "utf8"));

test.each(EXAMPLES)("%s", async (example) => {
  const run = await runCommand("build", join("examples", example), "--out", folder);
  expect(run.exit, run.err).toBe(0);
  expect(run.err).toMatch(/^$|^\d+ warnings?: /);
  const pack = join(folder, example.replace(".yaml", ""));
  expect(isWholePack(pack)).toBe(true);
  const { unit, version, files } = JSON.parse(readFileSync(join(pack, "manifest.json"), "utf8"));
  expect({ unit, version }).toEqual({ unit: "mm", version: VERSION });
  for (const file of files.filter(({ path }: { path: string }) => path.endsWith(".stl")))
    expect(file).toMatchObject(SOLID);
  const document = files.find(({ path }: { path: string }) => path === "body.3mf");
  expect(document.solids.length).toBeGreaterThanOrEqual(6);
  for (const solid of document.solids) expect(solid).toMatchObject({ ...SOLID, name: expect.any(String) });
});
