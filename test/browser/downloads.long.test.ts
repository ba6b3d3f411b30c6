// What the page hands out is what the command writes, byte for byte: every file, and the zip as an outside program unpacks it.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import {
  actAndWait,
  buildPage,
  closePages,
  FILE_ADDRESS,
  hasNoBrowser,
  launchBrowser,
  openPage,
} from "../support/browser.ts";
import { runCommand } from "../support/running.ts";

describe.skipIf(hasNoBrowser)("downloads", () => {
  let browser: Browser;
  const folder = mkdtempSync(join(tmpdir(), "lamplane-downloads-"));
  beforeAll(async () => {
    buildPage();
    browser = await launchBrowser();
  });
  afterAll(async () => {
    await closePages(browser);
    rmSync(folder, { recursive: true, force: true });
  });

  const packOnDisk = (name: string) => {
    const pack = join(folder, name);
    const entries = readdirSync(pack, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
    return new Map(
      entries.map((entry) => {
        const path = join(entry.parentPath, entry.name);
        return [path.slice(pack.length + 1), readFileSync(path)] as const;
      }),
    );
  };

  test.each(["apprentice-smoother", "trestle-jack"])(
    "%s: the zip holds what build writes, changes included",
    async (name) => {
      const { exit } = await runCommand("build", `examples/${name}.yaml`, "--out", folder, "--with", "bed.angle=48");
      expect(exit).toBe(0);
      const { page, complaints } = await openPage(browser, `${FILE_ADDRESS}#from=${name}&bed.angle=48`);
      const [download] = await Promise.all([page.waitForEvent("download"), page.click(".whole-pack")]);
      expect(download.suggestedFilename()).toBe(`${name}.zip`);
      const unpacked = unzipSync(readFileSync(await download.path()));
      const written = packOnDisk(name);
      expect(Object.keys(unpacked).sort()).toEqual([...written.keys()].map((path) => `${name}/${path}`).sort());
      for (const [path, bytes] of written)
        expect(Buffer.compare(Buffer.from(unpacked[`${name}/${path}`]!), bytes), path).toBe(0);
      expect(strFromU8(unpacked[`${name}/manifest.json`]!)).toContain("sha256");
      expect(complaints).toEqual([]);
      await page.context().close();
    },
  );

  test("single files too, and none of a plane that will not work", async () => {
    await runCommand("build", "examples/figured-finisher.yaml", "--out", folder);
    const written = packOnDisk("figured-finisher");
    const { page } = await openPage(browser, `${FILE_ADDRESS}#from=figured-finisher`);
    await page.click(".files summary");
    await page.locator("[data-file]").first().waitFor();
    const paths = await page.locator("[data-file]").evaluateAll((all) => all.map((e) => e.getAttribute("data-file")!));
    expect(paths.sort()).toEqual([...written.keys()].sort());
    for (const path of ["body.stl", "parts/bed-block.dxf", "layout.pdf", "figures.json"]) {
      const [download] = await Promise.all([page.waitForEvent("download"), page.click(`[data-file="${path}"]`)]);
      expect(Buffer.compare(readFileSync(await download.path()), written.get(path)!), path).toBe(0);
    }
    await actAndWait(page, async () => {
      await page.locator('.numbers [data-parameter="pin.height"]').first().fill("25");
      await page.keyboard.press("Enter");
    });
    await page.click(".whole-pack");
    await expect.poll(() => page.locator(".download .status").textContent()).toContain("will not work is not built");
    await page.context().close();
  });
});
