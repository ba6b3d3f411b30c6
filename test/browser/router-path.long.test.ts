// The router's path on the page: the moves of the programs that the command writes, played, scrubbed and stepped by keys.
// Where the cutter stands after each line is asked of Debian's RS-274 interpreter (linuxcnc-uspace).
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildPage, closePages, FILE_ADDRESS, hasNoBrowser, launchBrowser, openPage } from "../support/browser.ts";
import { requireProgram } from "../support/outside-programs.ts";
import { canonicalMoves } from "../support/router-cutting.ts";
import { runCommand } from "../support/running.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const TEXT = `name: routed
iron: { width: 48, thickness: 3.6 }
router: { area: { width: 600, depth: 400, height: 80 } }
cutters:
  - { name: end-6, kind: end, diameter: 6, cutting: 22, step: 3 }
  - { name: drill-9.7, kind: drill, diameter: 9.7, cutting: 40, step: 5 }
sheets:
  - { name: board, material: wood, length: 580, width: 200, thickness: 8 }
  - { name: slab, length: 400, width: 300, thickness: 60 } # serves no jig
`;

describe.skipIf(hasNoBrowser)("the router's path", () => {
  let browser: Browser;
  const folder = mkdtempSync(join(tmpdir(), "lamplane-router-path-"));
  const file = join(folder, "routed.yaml");
  beforeAll(async () => {
    buildPage();
    writeFileSync(file, TEXT);
    browser = await launchBrowser();
    await runCommand("build", file, "--out", folder, "--only", "router");
  });
  afterAll(async () => {
    await closePages(browser);
    rmSync(folder, { recursive: true, force: true });
  });
  const programOnDisk = (path: string): string => readFileSync(join(folder, "routed", path), "utf8");

  async function openPath(options: BrowserContextOptions = {}, design = file) {
    const opened = await openPage(browser, FILE_ADDRESS, { asNewcomer: true, ...options });
    await opened.page.locator("#more > summary").click();
    if (design !== "") {
      await opened.page.setInputFiles("#open-file", design);
      await opened.page.waitForFunction(() => document.title.includes("routed"));
    }
    await opened.page.click("#router");
    if (design !== "") await opened.page.waitForSelector("dialog.router[data-drawn]");
    return opened;
  }
  const runningLine = (page: Page) => page.locator(".router-lines [aria-current] code").textContent();
  const runningNumber = async (page: Page) =>
    Number(await page.locator(".router-lines [aria-current] .router-number").textContent());
  const secondsOf = async (page: Page) => Number(await page.locator(".router-slider").inputValue());

  test("every part that has a program can be chosen, and what is not cut is named", async () => {
    const { page, complaints } = await openPath();
    const list = programOnDisk("router/set-ups.txt") + programOnDisk("nested/sheets.txt");
    const titles = await page.locator("#router-part option").allTextContents();
    expect(titles.length).toBeGreaterThan(5);
    for (const title of titles) expect(list.split(/\.ngc: |: cheek-|\n/)).toContain(title);
    expect(titles.at(-1)).toBe("Sheet 1: board, 8 mm thick");
    expect(titles).toHaveLength(list.match(/\.ngc: /g)!.length);
    await page.click(".router-refused summary");
    const refused = await page.locator(".router-refused dd").allTextContents();
    expect(refused.length).toBeGreaterThan(0);
    for (const why of refused) expect(list).toContain(why);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("a sheet is played like a part: its program's lines, every part on it drawn", async () => {
    const { page } = await openPath();
    await page.selectOption("#router-part", { label: "Sheet 1: board, 8 mm thick" });
    const lines = programOnDisk("nested/1-board.ngc").trimEnd().split("\n");
    await page.focus(".router-slider");
    for (let i = 0; i < 20; i++) {
      expect(await runningLine(page)).toBe(lines[(await runningNumber(page)) - 1]);
      await page.keyboard.press("ArrowRight");
    }
    expect(await page.locator(".router-outlines path").count()).toBe(4); // two cheeks, each with the hole of its pin
    const whole = Number(await page.locator(".router-slider").getAttribute("max"));
    await page.keyboard.press("End");
    expect(await secondsOf(page)).toBeCloseTo(whole, 0);
    await page.context().close();
  });

  test("an arrow goes on by a line of the written program; the cutter stands where the interpreter has it", async (context) => {
    requireProgram(context, "rs274");
    const { page } = await openPath();
    const text = programOnDisk("router/cheek-left.ngc");
    const lines = text.trimEnd().split("\n");
    const ends = canonicalMoves(text).moves.map(({ points }) => points.at(-1)!);
    const moving = lines.flatMap((line, i) => (/^G[0123] ?[XYZ]/.test(line) ? [i + 1] : []));
    expect(ends).toHaveLength(moving.length);
    await page.focus(".router-slider");
    let at = moving.indexOf(await runningNumber(page));
    for (let steps = 0; steps < 60; steps++) {
      expect(await runningLine(page)).toBe(lines[moving[at]! - 1]);
      const before = moving[at]!;
      await page.keyboard.press("ArrowRight");
      await expect.poll(() => runningNumber(page)).toBeGreaterThan(before);
      at = moving.indexOf(await runningNumber(page));
      // After a stop the cutter is lifted anew where it is lifted already: the path has no step for it.
      const passed = moving.slice(moving.indexOf(before) + 1, at).map((n) => lines[n - 1]);
      const isStopped = lines.slice(before, moving[at]! - 1).includes("M0");
      expect(passed).toEqual(isStopped ? ["G1 Z30 F300"] : []);
      const [x, y] = await page.locator(".router-cutter").evaluate((e) => [e.getAttribute("cx"), e.getAttribute("cy")]);
      expect(Number(x)).toBeCloseTo(ends[at - 1]!.x, 3);
      expect(-Number(y)).toBeCloseTo(ends[at - 1]!.y, 3);
    }
    const last = await runningNumber(page);
    await page.keyboard.press("ArrowLeft");
    expect(await runningNumber(page)).toBeLessThan(last);
    await page.context().close();
  });

  test("passes by the page keys go deeper; Home, End and the pointer on the depths set the time", async () => {
    const { page } = await openPath();
    await page.focus(".router-slider");
    const depths: number[] = [];
    for (let i = 0; i < 12; i++) {
      await page.keyboard.press("PageDown");
      const [, depth] = /([\d.]+) mm deep/.exec((await page.locator(".router-reading").textContent())!) ?? [];
      if (depth !== undefined) depths.push(Number(depth));
    }
    const outer = depths.slice(-4);
    expect(new Set(outer).size).toBeGreaterThan(1);
    expect(Math.max(...depths)).toBeCloseTo(8.3, 6); // cheek of 8 and 0.3 into the spoilboard
    await page.keyboard.press("End");
    const whole = await secondsOf(page);
    expect(whole).toBeCloseTo(Number(await page.locator(".router-slider").getAttribute("max")), 0);
    await page.keyboard.press("Home");
    expect(await secondsOf(page)).toBe(0);
    const box = (await page.locator(".router-depths").boundingBox())!;
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    expect((await secondsOf(page)) / whole).toBeCloseTo(0.5, 1);
    await page.context().close();
  });

  test("played, it goes on by itself and stops when asked; Escape closes it and gives the focus back", async () => {
    const { page } = await openPath();
    await page.click(".router-play");
    await page.waitForFunction(() => Number((document.querySelector(".router-slider") as HTMLInputElement).value) > 8);
    await page.click(".router-play");
    const at = await secondsOf(page);
    await page.waitForTimeout(300);
    expect(await secondsOf(page)).toBe(at);
    expect(await page.locator(".move.is-done").count()).toBeGreaterThan(1);
    await page.keyboard.press("Escape");
    await page.waitForSelector("dialog.router", { state: "detached" });
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("router");
    await page.context().close();
  });

  test("where motion is not wanted it goes from pass to pass", async () => {
    const { page } = await openPath({ reducedMotion: "reduce" });
    await page.click(".router-play");
    await page.waitForTimeout(400);
    expect(await secondsOf(page)).toBe(0);
    await page.waitForFunction(() => Number((document.querySelector(".router-slider") as HTMLInputElement).value) > 0);
    expect(await page.locator(".router-reading").textContent()).toMatch(/pass, /);
    await page.context().close();
  });

  test("a design without a router says so, and shows an example router's path; its script comes when it is asked for", async () => {
    const { page, requests } = await openPath({}, "");
    await page.click(".router-example");
    await page.waitForSelector("dialog.router[data-drawn]");
    expect(await page.locator("#router-part option").count()).toBeGreaterThan(5);
    await page.context().close();
    const fresh = await openPage(browser, FILE_ADDRESS, { asNewcomer: true });
    expect(requests.some((url) => url.endsWith("/router.js"))).toBe(true);
    expect(fresh.requests.some((url) => url.endsWith("/router.js"))).toBe(false);
    await fresh.page.context().close();
  });

  test.each([
    [1440, "light"],
    [1440, "dark"],
    [390, "light"],
    [390, "dark"],
  ] as const)("axe finds no fault at %d, %s, and nothing runs off the side", async (width, colorScheme) => {
    const { page } = await openPath({ viewport: { width, height: 844 }, colorScheme });
    await page.focus(".router-slider");
    await page.keyboard.press("PageDown");
    const dialog = page.locator("dialog.router");
    expect(await dialog.evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth)).toBe(0);
    await page.addScriptTag({ content: AXE });
    const violations = await page.evaluate(async () => {
      const { axe } = globalThis as unknown as {
        axe: { run(root: string): Promise<{ violations: { id: string; nodes: { target: unknown }[] }[] }> };
      };
      return (await axe.run("dialog.router")).violations.map(({ id, nodes }) => [
        id,
        nodes.map(({ target }) => target),
      ]);
    });
    expect(violations).toEqual([]);
    await page.context().close();
  });
});
