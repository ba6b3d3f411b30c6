// A build on two threads makes what one thread makes: the bundle hands its sheets to a worker, the sources cannot.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { main } from "@lamplane/cli";
import { afterAll, expect, test } from "vitest";

const BUNDLE = new URL("../../packages/cli/bundle/lamplane.js", import.meta.url).href;
const folder = mkdtempSync(join(tmpdir(), "lamplane-test-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function built(run: typeof main, name: string) {
  let text = "";
  const out = (more: string) => {
    text += more;
  };
  const parent = join(folder, name);
  const args = ["build", "examples/apprentice-smoother.yaml", "--only", "sheets,router", "--json", "--out", parent];
  expect(await run(args, { out, err: out, showsProgress: false })).toBe(0);
  const { written, ...rest } = JSON.parse(text);
  const paths = readdirSync(written, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const files = paths.map((entry) => {
    const path = join(entry.parentPath, entry.name);
    return [path.slice(written.length), readFileSync(path, "latin1")];
  });
  return { rest, files: Object.fromEntries(files) };
}

test("every file of a pack is the same from two threads as from one, and told in the same order", async () => {
  const bundled: typeof main = (await import(BUNDLE)).main;
  const [two, one] = [await built(bundled, "two"), await built(main, "one")];
  expect(one.rest.files).toContain("traveller.pdf");
  expect(two.rest).toEqual(one.rest);
  expect(Object.keys(two.files).sort()).toEqual(Object.keys(one.files).sort());
  for (const path of Object.keys(one.files)) expect(two.files[path] === one.files[path], path).toBe(true);
}, 60_000);
