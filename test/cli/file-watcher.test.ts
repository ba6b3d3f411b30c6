// A file that is followed: word of every change, also where its folder cannot be watched.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { watchFile } from "../../packages/cli/src/file-watcher.ts";

test("a folder that cannot be watched is looked at now and then", async () => {
  const parent = mkdtempSync(join(tmpdir(), "lamplane-watched-"));
  const folder = join(parent, "later");
  let calls = 0;
  const end = watchFile(join(folder, "plane.yaml"), () => {
    calls += 1;
  });
  try {
    mkdirSync(folder);
    writeFileSync(join(folder, "plane.yaml"), "iron: { width: 48, thickness: 3.6 }\n");
    await expect.poll(() => calls).toBe(1);
    writeFileSync(join(folder, "plane.yaml"), "iron: { width: 50, thickness: 3.6 } # wider\n");
    await expect.poll(() => calls).toBe(2);
  } finally {
    end();
    rmSync(parent, { recursive: true });
  }
});
