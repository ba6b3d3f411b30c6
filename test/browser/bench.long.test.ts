// The bench screens on a phone with the network off: a whole build in fractions, over reloads, against the command.
import { copyFileSync, cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expectedValue, isMeasuredKey, JOB_STEPS } from "@lamplane/bench";
import { readDesign } from "@lamplane/parameters/design";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startViewServer } from "../../packages/cli/src/view-server.ts";
import { writeServiceWorker } from "../../packages/viewer/write-service-worker.js";
import { buildPage, closePages, FILE_ADDRESS, hasNoBrowser, launchBrowser, PAGE } from "../support/browser.ts";
import { runCommand } from "../support/running.ts";
import { type StaticHost, startStaticHost } from "../support/static-host.ts";

const JACK = "examples/trestle-jack.yaml";
const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const folder = mkdtempSync(join(tmpdir(), "lamplane-phone-"));
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

/** The build as the browser keeps it. */
const keptText = (page: Page): Promise<string> =>
  page.evaluate(() => JSON.parse(localStorage.getItem("lamplane-builds")!)[0].text);

const stepShown = (page: Page) => page.locator(".bench-step").getAttribute("data-step");

/** A length on a rule by 1/64 in, as a maker says it: "3 15/32". */
function ruleText(mm: number): string {
  const parts = Math.max(1, Math.round((mm / 25.4) * 64));
  const [whole, rest] = [Math.floor(parts / 64), parts % 64];
  if (rest === 0) return String(whole);
  let [top, bottom] = [rest, 64];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${whole === 0 ? "" : `${whole} `}${top}/${bottom}`;
}

/** Taps a text on the pad, key by key. */
async function tap(page: Page, text: string) {
  for (const key of text.match(/\/\d+|\d|\.| /g)!)
    await page
      .locator(".pad-keys button")
      .getByText(key === " " ? "and" : key, { exact: true })
      .tap();
}

/** Fills one blank with what the build expects there, on the rule, and confirms where the bench doubts it. */
async function fillBlank(page: Page, path: string): Promise<string> {
  const key = path.replace("measured.", "");
  const reading = readDesign(await keptText(page), "");
  if (!reading.ok || !isMeasuredKey(key)) throw new Error(`no design, or no such value: ${path}`);
  const blank = page.locator(`.bench-blank[data-path="${path}"]`);
  const isAngle = (await blank.textContent())!.includes("°");
  const expected = expectedValue(reading.design, key)!;
  const text = isAngle ? String(Math.round(expected * 4) / 4) : ruleText(key === "mouthSeen" ? 25.4 / 32 : expected);
  await blank.tap();
  await tap(page, text);
  expect(await page.locator(".pad-line").inputValue()).toBe(text);
  await page.locator(".pad .is-main").tap();
  const isSo = page.getByText("It is so: enter it");
  await expect.poll(async () => (await isSo.isVisible()) || !(await page.locator(".pad").isVisible())).toBe(true);
  if (await isSo.isVisible()) await isSo.tap();
  await page.locator(".pad").waitFor({ state: "detached" });
  return `${key}=${text}`;
}

/** Does the step that is shown. @returns what was entered, as `lamplane measured` takes it */
async function doStep(page: Page, step: string): Promise<string[]> {
  const paths = await page
    .locator(".bench-blank:not(.is-filled)")
    .evaluateAll((all) => all.map((blank) => (blank as HTMLElement).dataset.path!));
  const needed = paths.filter((path) => !/mouthSeen(Left|Right)/.test(path));
  const entered: string[] = [];
  for (const path of needed) {
    if ((await stepShown(page)) !== step) break;
    entered.push(await fillBlank(page, path));
  }
  if (needed.length > 0) return entered;
  await page.locator(".bench-finish").tap();
  await expect.poll(() => stepShown(page)).not.toBe(step);
  return [`done=${step}`];
}

async function openPhone(browser: Browser, address: string) {
  const context = await browser.newContext(PHONE);
  const page = await context.newPage();
  const errors: string[] = [];
  page.on("pageerror", ({ message }) => errors.push(message));
  await page.goto(address);
  await page.waitForSelector(".bench-step");
  return { context, page, errors };
}

/** Whether every file of the page is kept on the device, as the build's dialog says it. */
async function waitUntilKept(page: Page) {
  await page.getByRole("button", { name: "Build", exact: true }).click();
  await page.getByText("Works without a network").waitFor({ timeout: 60_000 });
  await page.getByRole("button", { name: "Close", exact: true }).click();
}

async function saveBuild(page: Page, name: string): Promise<string> {
  await page.getByRole("button", { name: "Build", exact: true }).click();
  const [download] = await Promise.all([page.waitForEvent("download"), page.locator(".bench-save").click()]);
  await page.getByRole("button", { name: "Close", exact: true }).click();
  copyFileSync(await download.path(), join(folder, name));
  return join(folder, name);
}

describe.skipIf(hasNoBrowser)("the bench screens", () => {
  let browser: Browser;
  let host: StaticHost;
  beforeAll(async () => {
    buildPage();
    browser = await launchBrowser();
    host = await startStaticHost(PAGE);
  });
  afterAll(async () => {
    await closePages(browser);
    await host?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test("a build from step 2 to the end with the network off, in fractions, is what the command makes of the same values", async () => {
    const own = await startStaticHost(PAGE);
    const { context, page, errors } = await openPhone(browser, `${own.address}#bench&from=trestle-jack`);
    await waitUntilKept(page);
    await context.setOffline(true);
    await own.close();
    await page.reload();
    await page.waitForSelector(".bench-step");
    expect(await stepShown(page)).toBe("stock");
    await page.locator(".bench-nav .is-main").tap();

    const byHand = join(folder, "by-hand.yaml");
    copyFileSync(JACK, byHand);
    const measure = async (...values: string[]) => {
      const { exit, err } = await runCommand("measured", byHand, ...values, "--read-twice", "--skip");
      expect({ exit, err }, values.join()).toEqual({ exit: 0, err: "" });
    };
    for (const step of JOB_STEPS.slice(1, -2)) {
      expect(await stepShown(page)).toBe(step);
      for (const value of await doStep(page, step)) await measure(value);
      await expect.poll(() => stepShown(page), { message: step }).not.toBe(step);
      if (step !== "recess" && step !== "sole") continue;
      const shown = await stepShown(page);
      const text = await keptText(page);
      await page.reload();
      await page.waitForSelector(".bench-step");
      expect(await stepShown(page)).toBe(shown);
      expect(await keptText(page)).toBe(text);
      const halfway = await saveBuild(page, "halfway.yaml");
      expect(JSON.parse((await runCommand("next", halfway, "--json")).out).step).toBe(shown);
    }
    expect(await stepShown(page)).toBe("first-shaving");
    const saved = await saveBuild(page, "saved.yaml");
    expect(readFileSync(saved, "utf8")).toBe(readFileSync(byHand, "utf8"));
    const next = await runCommand("next", saved);
    expect(next.out).toMatch(/the plane is built/);
    expect(next.out).toBe((await runCommand("next", byHand)).out);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("a slip is asked about, an entry is taken back also after a reload, and a passed-over step is asked about", async () => {
    const { context, page } = await openPhone(browser, `${host.address}#bench&from=trestle-jack&step=iron`);
    const before = await keptText(page);
    await page.locator('[data-path="measured.ironWidth"]').tap();
    await tap(page, "1 3/64");
    await page.locator(".pad .is-main").tap();
    await expect.poll(() => page.locator(".pad-words").textContent()).toMatch(/\(1\.047\) is far from the 1 3\/4 in/);
    await page.getByText("Read it again").tap();
    await page.locator(".pad-keys button").getByText("⌫").tap();
    await tap(page, "1 23/32");
    await page.locator(".pad .is-main").tap();
    await page.locator(".pad").waitFor({ state: "detached" });
    expect(await page.locator('[data-path="measured.ironWidth"] .blank-value').textContent()).toBe("1 23/32 in");
    expect(await keptText(page)).toContain("ironWidth");
    await page.reload();
    await page.waitForSelector(".bench-step");
    await page.locator(".bench-undo").tap();
    await expect.poll(() => page.locator(".bench-status").textContent()).toMatch(/Taken back/);
    expect(await keptText(page)).toBe(before);
    await page.getByRole("button", { name: "All steps" }).tap();
    await page.getByText("Cut ramp and bed").tap();
    await page.locator(".bench-finish").tap();
    await expect
      .poll(() => page.locator(".bench-dialog p").textContent())
      .toMatch(/passes over 2 steps.*Measure the iron/);
    await page.getByText("Cancel").tap();
    expect(await keptText(page)).toBe(before);
    await context.close();
  });

  test("an address that is opened again beside a build that has gone on offers that build, and loses nothing", async () => {
    const address = `${host.address}#bench&from=apprentice-smoother&step=iron`;
    const { context, page } = await openPhone(browser, address);
    await page.locator('[data-path="measured.ironThickness"]').tap();
    await tap(page, "3.65");
    await page.locator(".pad .is-main").tap();
    await page.locator(".pad").waitFor({ state: "detached" });
    const gone = await keptText(page);
    const again = await context.newPage();
    await again.goto(address);
    await again.getByText("Go on with that one").tap();
    await expect.poll(() => keptText(again)).toBe(gone);
    await again.getByRole("button", { name: "All steps" }).tap();
    await again.getByText("2. Measure the iron").tap();
    expect(await again.locator('[data-path="measured.ironThickness"] .blank-value').textContent()).toBe("3.65 mm");
    await context.close();
  });

  test("a browser that keeps nothing says so, and the address still holds what was entered", async () => {
    const context = await browser.newContext(PHONE);
    await context.addInitScript(() => {
      const refuse = () => {
        throw new DOMException("refused", "SecurityError");
      };
      for (const name of ["localStorage", "indexedDB", "caches"]) Object.defineProperty(window, name, { get: refuse });
    });
    const page = await context.newPage();
    await page.goto(`${host.address}#bench&from=apprentice-smoother&step=iron`);
    await page.locator('[data-path="measured.ironThickness"]').tap();
    await tap(page, "3.65");
    await page.locator(".pad .is-main").tap();
    await expect.poll(() => page.locator(".bench-status").textContent()).toMatch(/Save the build to a file/);
    await page.reload();
    expect(await page.locator('[data-path="measured.ironThickness"] .blank-value').textContent()).toBe("3.65 mm");
    await context.close();
  });

  test("a newer release takes the place of the older one, as a whole", async () => {
    const release = join(folder, "release");
    cpSync(PAGE, release, { recursive: true });
    const own = await startStaticHost(release);
    const { context, page } = await openPhone(browser, `${own.address}#bench&from=trestle-jack`);
    await waitUntilKept(page);
    const asked = own.asked.length;
    writeFileSync(
      join(release, "bench.css"),
      `${readFileSync(join(PAGE, "bench.css"), "utf8")}:root { --release: 2; }`,
    );
    const release2 = () =>
      page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue("--release"));
    await page.reload();
    await page.waitForSelector(".bench-step");
    expect(await release2()).toBe(""); // half a release is none: the list is still the older one's
    writeServiceWorker(`${release}/`, "packages/viewer/src/offline/service-worker.js");
    await page.reload();
    await page.waitForSelector(".bench-step");
    await page.getByRole("button", { name: "Build", exact: true }).tap();
    await page.getByText("Use it now").tap();
    await expect.poll(release2).toBe("2");
    expect(own.asked.slice(asked).filter((path) => !path.includes("service-worker"))).toEqual(["/bench.css"]);
    await context.setOffline(true);
    await own.close();
    await page.reload();
    await page.waitForSelector(".bench-step");
    expect(await release2()).toBe("2");
    expect(await page.evaluate(async () => (await (await caches.open("lamplane-files")).keys()).length)).toBe(
      Object.keys(JSON.parse(/FILES = (\{[^}]*\})/.exec(readFileSync(join(release, "service-worker.js"), "utf8"))![1]!))
        .length,
    );
    await context.close();
  });

  test("with the network off the drawing sheet opens too, and makes its files", async () => {
    const own = await startStaticHost(PAGE);
    const { context, page } = await openPhone(browser, `${own.address}#bench&from=trestle-jack`);
    await waitUntilKept(page);
    await context.setOffline(true);
    await own.close();
    const sheet = await context.newPage();
    await sheet.goto(`${own.address}#from=figured-finisher`);
    await sheet.locator(".files summary").click();
    await expect.poll(() => sheet.locator(".file-list li").count(), { timeout: 120_000 }).toBeGreaterThan(20);
    await context.close();
  });

  test("under `view` nothing is kept for use without a network, and the page says so", async () => {
    const file = join(folder, "viewed.yaml");
    copyFileSync(JACK, file);
    const view = await startViewServer({ page: PAGE, file, port: 0 });
    const { context, page, errors } = await openPhone(browser, `${view.address}#bench&from=trestle-jack`);
    await page.getByRole("button", { name: "Build", exact: true }).tap();
    await page.getByText("Served by `lamplane view`").waitFor();
    expect(await page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length)).toBe(0);
    expect((await fetch(`${view.address}service-worker.js`)).status).toBe(404);
    expect(errors).toEqual([]);
    await context.close();
    await view.close();
  });

  for (const [width, height] of [
    [390, 844],
    [834, 1112],
    [1440, 900],
  ] as const)
    for (const colorScheme of ["light", "dark"] as const)
      test(`axe finds no fault at ${width}, ${colorScheme}, every button is for gloves, and nothing runs off the side`, async () => {
        const context = await browser.newContext({ viewport: { width, height }, colorScheme });
        const page = await context.newPage();
        await page.goto(`${FILE_ADDRESS}#bench&from=trestle-jack&step=core`);
        await page.waitForSelector(".bench-step");
        await page.evaluate(AXE);
        const look = async (where: string) => {
          const faults = await page.evaluate(async () => {
            const { violations } = await (
              globalThis as unknown as {
                axe: { run(): Promise<{ violations: { id: string; nodes: { target: unknown }[] }[] }> };
              }
            ).axe.run();
            return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => String(target)).join(", ")}`);
          });
          expect(faults, where).toEqual([]);
          const small = await page.locator("button:visible, .open-file:visible, summary:visible").evaluateAll((all) =>
            all.flatMap((each) => {
              const { width: w, height: h } = each.getBoundingClientRect();
              return w < 48 || h < 48 ? [`${each.textContent} ${w} × ${h}`] : [];
            }),
          );
          expect(small, where).toEqual([]);
          expect(await page.evaluate(() => document.documentElement.scrollWidth), where).toBe(width);
        };
        await look("step");
        await page.locator(".bench-blank").first().click();
        await look("pad");
        await page.keyboard.press("Escape");
        await page.getByRole("button", { name: "All steps" }).click();
        await look("steps");
        await page.keyboard.press("Escape");
        await page.getByRole("button", { name: "Build", exact: true }).click();
        await look("build");
        await context.close();
      });

  test("the keyboard alone turns the steps, fills a blank and takes it back", async () => {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
    const page = await context.newPage();
    await page.goto(`${FILE_ADDRESS}#bench&from=trestle-jack&step=stock`);
    await page.waitForSelector(".bench-step");
    await page.keyboard.press("ArrowRight");
    expect(await stepShown(page)).toBe("iron");
    for (let i = 0; i < 12; i++) {
      await page.keyboard.press("Tab");
      if (await page.evaluate(() => document.activeElement!.classList.contains("bench-blank"))) break;
    }
    await page.keyboard.press("Enter");
    await page.keyboard.type("9/64");
    await page.keyboard.press("Enter");
    await page.locator(".pad").waitFor({ state: "detached" });
    expect(await page.locator(".bench-blank.is-filled .blank-value").textContent()).toContain("0.141");
    await page.keyboard.press("Control+z");
    await expect.poll(() => page.locator(".bench-blank.is-filled").count()).toBe(0);
    await context.close();
  });
});
