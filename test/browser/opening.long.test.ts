// The first picture of a page: drawn before any worker has answered, and just what a worker's answer would draw.
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildPage, FILE_ADDRESS, hasNoBrowser, launchBrowser } from "../support/browser.ts";

/** Workers that are started and never answer. */
const silenceWorkers = () => {
  globalThis.Worker = class {
    postMessage() {}
  } as unknown as typeof Worker;
};

describe.skipIf(hasNoBrowser)("the first picture", () => {
  let browser: Browser;
  beforeAll(async () => {
    buildPage();
    browser = await launchBrowser();
  });
  afterAll(() => browser?.close());

  /** The views as they are drawn. */
  async function drawnViews(address: string, act?: () => void) {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    if (act) await page.addInitScript(act);
    await page.goto(address);
    await page.waitForFunction(() => performance.getEntriesByName("lamplane details").length > 0);
    const views = await page
      .locator(".field:not(.field-body) .board")
      .evaluateAll((all) => all.map((b) => b.innerHTML));
    await page.close();
    return views;
  }

  test("needs no worker, and is what one draws", async () => {
    const opened = await drawnViews(FILE_ADDRESS, silenceWorkers);
    expect(opened).toHaveLength(4);
    expect(opened[0]).toContain('data-parameter="bed.angle"');
    // A change that changes nothing: the page waits for its worker.
    const answered = await drawnViews(`${FILE_ADDRESS}#bed.angle=47`);
    expect(answered).toEqual(opened);
  });
});
