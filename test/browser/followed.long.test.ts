// `lamplane view` and its page together: the sheet follows the file, and writes into it only when asked, keeping comments.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startViewServer, type ViewServer } from "../../packages/cli/src/view-server.ts";
import { actAndWait, buildPage, closePages, hasNoBrowser, launchBrowser, openPage, PAGE } from "../support/browser.ts";

const TEXT =
  "# the club's plane\nname: club-plane\niron: { width: 50, thickness: 4 } # measured twice\nbed: { angle: 48 }\n";

describe.skipIf(hasNoBrowser)("a followed file", () => {
  let browser: Browser;
  let server: ViewServer;
  const folder = mkdtempSync(join(tmpdir(), "lamplane-followed-"));
  const file = join(folder, "club plane.yaml");
  beforeAll(async () => {
    buildPage();
    writeFileSync(file, TEXT);
    browser = await launchBrowser();
    server = await startViewServer({ page: PAGE, file, port: 0 });
  });
  afterAll(async () => {
    await closePages(browser);
    await server?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test("is shown, followed, changed on the sheet and written back", async () => {
    const { page, complaints, requests } = await openPage(browser, server.address);
    const angle = page.locator('.numbers [data-parameter="bed.angle"]').first();
    expect(await angle.getAttribute("aria-valuenow")).toBe("48");
    await actAndWait(page, async () => writeFileSync(file, TEXT.replace("48", "49")));
    expect(await angle.getAttribute("aria-valuenow")).toBe("49");
    await actAndWait(page, async () => {
      await angle.fill("51");
      await page.keyboard.press("Enter");
    });
    expect(readFileSync(file, "utf8")).toContain("angle: 49");
    await page.click("#write-back");
    await expect.poll(() => readFileSync(file, "utf8")).toBe(TEXT.replace("48", "51"));
    await expect.poll(() => page.locator(".title-block .status").textContent()).toContain("club plane.yaml");
    expect(requests.filter((url) => !url.startsWith(server.address) && !/^(blob|data):/.test(url))).toEqual([]);
    expect(complaints).toEqual([]);
    await page.context().close();
  });
});
