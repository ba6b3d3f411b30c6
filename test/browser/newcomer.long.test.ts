// The path of one who has seen nothing else: open, type the iron, drag the bed, watch it build, download. A picture at each step.
import { mkdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { STAGES } from "../../packages/viewer/src/protocol/build-steps.ts";
import {
  actAndDraw,
  buildPage,
  closePages,
  FILE_ADDRESS,
  hasNoBrowser,
  launchBrowser,
  openPage,
} from "../support/browser.ts";
import { IS_FULL } from "../support/extent.ts";

const PICTURES = join(tmpdir(), "lamplane-newcomer");
const SIZES = [
  [390, 844],
  [1440, 900],
  [1920, 1080],
] as const;

/** Words and numbers of the first screen, as they are read: text and boxes that lie in the window and are not hidden. */
const readFirstScreen = (page: Page): Promise<{ words: string[]; numbers: string[] }> =>
  page.evaluate(() => {
    const isSeen = (element: Element, box: DOMRect) =>
      box.width > 1 && box.top < innerHeight && box.bottom > 0 && element.checkVisibility({ visibilityProperty: true });
    const isClipped = (element: Element) => element.closest("title, option, .verdict-status, noscript") !== null;
    const texts: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const range = document.createRange();
      range.selectNodeContents(node);
      const parent = node.parentElement!;
      const isCut = getComputedStyle(parent).clipPath !== "none" || parent.getBoundingClientRect().width <= 1;
      if (!isClipped(parent) && !isCut && isSeen(parent, range.getBoundingClientRect())) texts.push(node.textContent!);
    }
    for (const box of document.querySelectorAll<HTMLInputElement | HTMLSelectElement>(
      "input:not([type]), input[type=text], select",
    ))
      if (isSeen(box, box.getBoundingClientRect())) texts.push(box.value);
    const all = texts.flatMap((text) => text.split(/\s+/)).filter((word) => /[\p{L}\p{N}]/u.test(word));
    return { words: all.filter((w) => !/^\(?\d/.test(w)), numbers: all.filter((w) => /^\(?\d/.test(w)) };
  });

const elevationLines = (page: Page) =>
  page.locator(".field-elevation .marks path").evaluateAll((all) => all.map((p) => p.getAttribute("d")).join());
const number = (page: Page, path: string) => page.locator(`.field-elevation [data-parameter="${path}"]`);
const numberNow = async (page: Page, path: string) => Number(await number(page, path).getAttribute("aria-valuenow"));

describe.skipIf(hasNoBrowser)("a newcomer", () => {
  let browser: Browser;
  beforeAll(async () => {
    buildPage();
    mkdirSync(PICTURES, { recursive: true });
    browser = await launchBrowser();
  });
  afterAll(() => closePages(browser));

  const looks = SIZES.flatMap((size, i) =>
    (["light", "dark"] as const).map((scheme, k) => ({ size, scheme, k: i + k })),
  );
  for (const {
    size: [width, height],
    scheme: colorScheme,
    k,
  } of looks)
    if (IS_FULL || k % 3 === 0)
      test(`opens, types an iron, drags the bed, watches it build, downloads: ${width} × ${height}, ${colorScheme}`, async () => {
        const { page, complaints } = await openPage(browser, FILE_ADDRESS, {
          viewport: { width, height },
          colorScheme,
          asNewcomer: true,
        });
        const picture = (name: string) =>
          page.screenshot({ path: join(PICTURES, `${width}-${colorScheme}-${name}.png`) });
        await page.locator(".strip-drawing path").first().waitFor({ state: "attached" });
        await picture("1-open");
        const { words, numbers } = await readFirstScreen(page);
        expect(words.length, words.join(" ")).toBeLessThanOrEqual(25);
        expect(numbers.length, numbers.join(" ")).toBeLessThanOrEqual(7);
        expect(words.length, "words are read at all").toBeGreaterThan(10);
        expect(numbers).toContain("47°");

        const opened = await elevationLines(page);
        const iron = (path: string) => page.locator(`.my-iron [data-parameter="${path}"]`);
        await iron("iron.width").click();
        await actAndDraw(page, () => page.keyboard.type("52").then(() => page.keyboard.press("Enter")));
        await iron("iron.thickness").click();
        await actAndDraw(page, () => page.keyboard.type("5").then(() => page.keyboard.press("Enter")));
        expect(await iron("iron.width").getAttribute("aria-valuenow")).toBe("52");
        expect(await elevationLines(page)).not.toBe(opened);
        await picture("2-iron");

        const before = await numberNow(page, "bed.angle");
        const [grip, edge] = await Promise.all([
          page.locator('[data-grip="bed"]').boundingBox(),
          page.locator('[data-grip="mouth"]').boundingBox(),
        ]);
        const [x, y] = [grip!.x + grip!.width / 2, grip!.y + grip!.height / 2];
        const [ex, ey] = [edge!.x + edge!.width / 2, edge!.y + edge!.height / 2 - 11];
        const turned = (angle: number) => {
          const [c, s] = [Math.cos(angle), Math.sin(angle)];
          return [ex + (x - ex) * c + (y - ey) * s, ey - (x - ex) * s + (y - ey) * c] as const;
        };
        await page.mouse.move(x, y);
        await page.mouse.down();
        for (let i = 1; i <= 5; i++) await page.mouse.move(...turned((i * Math.PI) / 180));
        await expect
          .poll(async () => (await numberNow(page, "bed.angle")) - before, { message: "five degrees round the edge" })
          .toBeGreaterThanOrEqual(4);
        await page.mouse.up();
        const after = await numberNow(page, "bed.angle");
        expect(after - before).toBeLessThanOrEqual(6);
        await picture("3-bed");

        await page.getByRole("button", { name: "Watch it build" }).click();
        const drawn = new Set<string>();
        for (const [i, stage] of STAGES.entries()) {
          await page.locator(`#stage-${stage}:checked`).waitFor({ state: "attached", timeout: 5000 });
          await expect
            .poll(() => page.locator(".steps h2").textContent())
            .toBe(await page.locator(`label[for=stage-${stage}]`).textContent());
          await expect.poll(() => page.locator(".steps h3").count()).toBeGreaterThan(0);
          drawn.add(await elevationLines(page));
          await page.locator(".step-picture svg").waitFor({ state: "attached" });
          await picture(`4-build-${String(i + 1).padStart(2, "0")}-${stage}`);
          const seen = await page.evaluate(() =>
            [...document.querySelectorAll(".steps h3, .step-measures")]
              .slice(0, 2)
              .map((e) => e.getBoundingClientRect().bottom),
          );
          if (stage !== "first-shaving" && stage !== "season")
            for (const bottom of seen)
              expect(bottom, `${stage}: numbers and blanks in view`).toBeLessThanOrEqual(height);
        }
        expect(drawn.size).toBeGreaterThanOrEqual(9);

        await page.evaluate(() => scrollTo(0, 0));
        const [download] = await Promise.all([
          page.waitForEvent("download"),
          page.getByRole("button", { name: "Download" }).click(),
        ]);
        const files = unzipSync(readFileSync(await download.path()));
        const [name] = Object.keys(files).filter((path) => path.endsWith("figures.json"));
        expect(strFromU8(files[name!]!)).toContain(String(after));
        await picture("5-download");
        expect(complaints).toEqual([]);
        await page.context().close();
      });

  test("goes the same way by keyboard alone", async () => {
    const { page, complaints } = await openPage(browser, FILE_ADDRESS, { asNewcomer: true });
    const focused = () =>
      page.evaluate(() => {
        const e = document.activeElement as HTMLElement;
        return e.dataset.parameter ?? e.id ?? e.className;
      });
    const reached: string[] = [];
    const tabTo = async (wanted: RegExp) => {
      for (let i = 0; i < 20; i++) {
        await page.keyboard.press("Tab");
        const name = (await focused()) || (await page.evaluate(() => document.activeElement!.className));
        reached.push(name);
        if (wanted.test(name)) return reached.length;
      }
      throw new Error(`${wanted} not reached: ${reached.join(", ")}`);
    };
    await tabTo(/^iron.width$/);
    await actAndDraw(page, () => page.keyboard.type("54").then(() => page.keyboard.press("Enter")));
    const tabs = await tabTo(/^bed.angle$/);
    expect(tabs, reached.join(", ")).toBeLessThanOrEqual(6);
    await actAndDraw(page, () => page.keyboard.press("ArrowUp"));
    expect(await numberNow(page, "bed.angle")).toBe(47.5);
    await tabTo(/^play$/);
    await page.keyboard.press("Enter");
    await page.locator("#stage-billet:checked").waitFor({ state: "attached" });
    await page.keyboard.press("Enter");
    await tabTo(/^stage-/);
    for (const stage of STAGES.slice(1, 4)) {
      await actAndDraw(page, () => page.keyboard.press("ArrowRight"));
      expect(await page.locator(`#stage-${stage}`).isChecked(), stage).toBe(true);
    }
    await tabTo(/whole-pack/);
    const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
    expect(download.suggestedFilename()).toMatch(/\.zip$/);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test.each(["no-preference", "reduce"] as const)(
    "sees wood and numbers go from step to step: motion %s",
    async (motion) => {
      const { page, complaints } = await openPage(browser, `${FILE_ADDRESS}#at=pin`, {
        asNewcomer: true,
        reducedMotion: motion,
      });
      await page.evaluate(() => {
        const { animate } = Element.prototype;
        const moved: string[] = [];
        Element.prototype.animate = function (...how) {
          moved.push(
            this.closest(".numbers")
              ? "number"
              : this.closest(".ghosts")
                ? "ghost"
                : this.matches(".marks path")
                  ? "piece"
                  : "",
          );
          return animate.apply(this, how);
        };
        Object.assign(globalThis, { moved });
      });
      const movedOf = async (stage: string) => {
        await actAndDraw(page, () => page.locator(`#stage-${stage}`).check({ force: true }));
        return new Set(await page.evaluate(() => (globalThis as unknown as { moved: string[] }).moved.splice(0)));
      };
      const together = await movedOf("dry-fit");
      for (const what of ["piece", "number"]) expect(together.has(what), what).toBe(motion === "no-preference");
      const apart = await movedOf("glue-up"); // the iron is drawn out
      expect(apart.has("ghost")).toBe(motion === "no-preference");
      await page.waitForFunction(() => document.getAnimations().length === 0);
      expect(await page.locator(".ghosts > *").count(), "nothing is left of what has gone").toBe(0);
      expect(complaints).toEqual([]);
      await page.context().close();
    },
  );

  test("scrubs the strip with the pointer held down: every step that it comes over is shown", async () => {
    const { page } = await openPage(browser, FILE_ADDRESS, { asNewcomer: true });
    const at = async (stage: string) => {
      const box = (await page.locator(`label[for=stage-${stage}]`).boundingBox())!;
      return [box.x + box.width / 2, box.y + box.height / 2] as const;
    };
    await page.mouse.move(...(await at("shaped")));
    await page.mouse.down();
    for (const stage of ["trued", "pin", "cuts"]) {
      await page.mouse.move(...(await at(stage)), { steps: 4 });
      await page.locator(`#stage-${stage}:checked`).waitFor({ state: "attached" });
      expect(await page.locator(".steps h2").textContent()).not.toBe("");
    }
    await page.mouse.up();
    await page.mouse.move(...(await at("billet")));
    expect(await page.locator("#stage-cuts").isChecked()).toBe(true);
    await page.context().close();
  });
});
