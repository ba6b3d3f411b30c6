// What the page hands out is what the command writes, byte for byte: every file, and the zip as an outside program unpacks it.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
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

/** A layered core, whose layers are cut as parts; cheeks and jigs lie on the sheets. */
const SHOP_MADE = `name: shop-made
iron: { width: 48, thickness: 3.6 }
core: { layers: auto }
router: { area: { width: 800, depth: 400, height: 80 }, engraving: 0.3 }
cutters:
  - { name: end-6, kind: end, diameter: 6, cutting: 30 }
  - { name: drill-6, kind: drill, diameter: 6, cutting: 40, step: 5 }
  - { name: vee, kind: engrave, diameter: 0.6, cutting: 5 }
sheets:
  - { name: board, material: wood, length: 700, width: 250, thickness: 8 }
  - { name: ply-12, length: 600, width: 400, thickness: 12 }
`;

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

  test("a shop's router and sheets too: the zip of a file that was opened holds its programs, sheets and their pages", async () => {
    const file = join(folder, "shop-made.yaml");
    writeFileSync(file, SHOP_MADE);
    const { exit } = await runCommand("build", file, "--out", folder);
    expect(exit).toBe(0);
    const { page, complaints } = await openPage(browser, FILE_ADDRESS);
    await page.locator("#more > summary").click();
    await page.setInputFiles("#open-file", file);
    await page.waitForFunction(() => document.title.includes("shop-made"));
    const [download] = await Promise.all([page.waitForEvent("download"), page.click(".whole-pack")]);
    const unpacked = unzipSync(readFileSync(await download.path()));
    const written = packOnDisk("shop-made");
    expect([...written.keys()]).toEqual(
      expect.arrayContaining([
        "nested.pdf",
        "nested/sheets.txt",
        "nested/1-board.ngc",
        "nested/1-board.dxf",
        "router.pdf",
      ]),
    );
    expect(Object.keys(unpacked).sort()).toEqual([...written.keys()].map((path) => `shop-made/${path}`).sort());
    for (const [path, bytes] of written)
      expect(Buffer.compare(Buffer.from(unpacked[`shop-made/${path}`]!), bytes), path).toBe(0);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

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
