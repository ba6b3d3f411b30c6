// Sharing: an address from any page opens on any other as the same design, byte for byte of the saved file; the card's code too.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import jsqr from "jsqr";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startViewServer, type ViewServer } from "../../packages/cli/src/view-server.ts";
import {
  buildPage,
  closePages,
  FILE_ADDRESS,
  hasNoBrowser,
  launchBrowser,
  openPage,
  PAGE,
} from "../support/browser.ts";
import { type StaticHost, startStaticHost } from "../support/static-host.ts";

const TEXT =
  "# the club's plane, beech from the old bench\r\nname: club-plane # ü\r\nunits: in\r\niron: { width: 1 3/4, thickness: 5/32 }   # measured twice\r\nbed: { angle: 48 }\r\n";

const CORNER = 620; // px: the card's corner that holds the code

/** Saves the design by the page's own command and reads it. */
async function savedFile(page: Page): Promise<{ name: string; bytes: Buffer }> {
  if (!(await page.locator("#save").isVisible())) await page.click("#more > summary");
  const [download] = await Promise.all([page.waitForEvent("download"), page.click("#save")]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

async function openSharing(page: Page): Promise<string> {
  await page.click("#share");
  await page.waitForSelector("dialog.share[data-drawn]");
  return page.locator(".share-address").inputValue();
}

/** The text of the code on the card, read off its pixels by another library than the one that made it. */
async function scanCard(page: Page): Promise<string | undefined> {
  const corner = await page.locator("canvas.card").evaluate((canvas: HTMLCanvasElement, side) => {
    const { data } = canvas.getContext("2d")!.getImageData(canvas.width - side, canvas.height - side, side, side);
    return btoa(Array.from(data, (byte) => String.fromCharCode(byte)).join(""));
  }, CORNER);
  return jsqr.default(Uint8ClampedArray.from(Buffer.from(corner, "base64")), CORNER, CORNER)?.data;
}

describe.skipIf(hasNoBrowser)("sharing", () => {
  let browser: Browser;
  let view: ViewServer;
  let hosted: StaticHost;
  let hostedAddress: string;
  const folder = mkdtempSync(join(tmpdir(), "lamplane-sharing-"));
  const file = join(folder, "club plane.yaml");
  beforeAll(async () => {
    buildPage();
    writeFileSync(file, TEXT);
    browser = await launchBrowser();
    view = await startViewServer({ page: PAGE, file, port: 0 });
    hosted = await startStaticHost(PAGE);
    hostedAddress = hosted.address;
  });
  afterAll(async () => {
    await closePages(browser);
    await view?.close();
    await hosted?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test("an address copied under `view`, or taken from its address bar, opens elsewhere as the same design", async () => {
    const { page, complaints } = await openPage(browser, view.address);
    const angle = page.locator('.numbers [data-parameter="bed.angle"]').first();
    await angle.fill("51");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.url()).toContain("bed.angle=51");
    const saved = await savedFile(page);
    expect(saved.bytes.toString()).toBe(TEXT.replace("angle: 48", "angle: 51"));
    const copied = await openSharing(page);
    expect(copied).toMatch(/^#from=club/);
    await page.fill("#share-page", "no address");
    await page.keyboard.press("Tab");
    await expect.poll(() => page.locator(".share-fault").textContent()).toMatch(/no address of a page/);
    await page.fill("#share-page", hostedAddress);
    await page.keyboard.press("Tab");
    await expect.poll(() => page.locator(".share-address").inputValue()).toBe(hostedAddress + copied);
    expect(await scanCard(page)).toBe(hostedAddress + copied);
    const bar = new URL(page.url()).hash;
    expect(complaints).toEqual([]);
    await page.context().close();
    for (const address of [hostedAddress + copied, hostedAddress + bar, FILE_ADDRESS + copied]) {
      const there = await openPage(browser, address, { asNewcomer: true });
      expect(await savedFile(there.page), address).toEqual(saved);
      expect(await there.page.locator(".faults").isVisible()).toBe(false);
      await there.page.context().close();
    }
  });

  test("an example with a change is shared whole, whatever the page's examples are", async () => {
    const { page } = await openPage(browser, `${hostedAddress}#from=trestle-jack&bed.angle=46`, { asNewcomer: true });
    const saved = await savedFile(page);
    const address = await openSharing(page);
    expect(address.startsWith(`${hostedAddress}#from=trestle-jack.yaml&text=`)).toBe(true);
    expect(await scanCard(page)).toBe(address);
    await page.context().close();
    const there = await openPage(browser, address.replace(hostedAddress, FILE_ADDRESS), { asNewcomer: true });
    expect(await savedFile(there.page)).toEqual(saved);
    await there.page.context().close();
  });

  test("a file whose comments are too long for a code: the code opens the same plane without them", async () => {
    const words = Array.from({ length: 400 }, (_, i) => `# ${(i * 2654435761) % 4294967296} shavings`).join("\n");
    const long = join(folder, "long.yaml");
    writeFileSync(long, `${words}\nname: long\niron: { width: 50, thickness: 4 }\nbed: { angle: 49 }\n`);
    const { page } = await openPage(browser, hostedAddress, { asNewcomer: true });
    await page.setInputFiles("#open-file", long);
    await expect.poll(() => page.title()).toMatch(/^long/);
    const whole = await openSharing(page);
    const scanned = (await scanCard(page))!;
    expect(await page.locator(".share-note").textContent()).toContain(`${whole.length} characters`);
    expect(scanned.length).toBeLessThan(whole.length);
    await page.context().close();
    const there = await openPage(browser, scanned, { asNewcomer: true });
    expect(await there.page.title()).toMatch(/^long/);
    expect((await savedFile(there.page)).bytes.toString()).not.toContain("shavings");
    expect(
      await there.page.locator('.numbers [data-parameter="bed.angle"]').first().getAttribute("aria-valuenow"),
    ).toBe("49");
    await there.page.context().close();
  });
});
