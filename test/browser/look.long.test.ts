// Whether everyone can use the sheet: axe's rules, contrast by WCAG's formula, sizes of targets, widths from phone to wide.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import {
  actAndWait,
  buildPage,
  closePages,
  FILE_ADDRESS,
  hasNoBrowser,
  launchBrowser,
  openPage,
  visit,
  type Watched,
} from "../support/browser.ts";
import { contrast } from "../support/contrast.ts";
import { requireProgram } from "../support/outside-programs.ts";
import { greyPages, type Pixels, wordsOf } from "../support/pages.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const SIZES = [
  [390, 844],
  [1024, 768],
  [1920, 1080],
] as const;

const WIDE = { width: 1440, height: 1000 };

interface Violation {
  readonly id: string;
  readonly impact: string | null;
  readonly nodes: readonly { readonly target: unknown; readonly failureSummary?: string }[];
}

async function seriousFaults(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const { violations } = await page.evaluate(() =>
    (globalThis as unknown as { axe: { run(): Promise<{ violations: Violation[] }> } }).axe.run(),
  );
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(
      ({ id, nodes }) =>
        `${id}: ${nodes.map(({ target, failureSummary }) => `${target} ${failureSummary}`).join("; ")}`,
    );
}

/** Rows of a page with ink between its frame lines at the sides. */
const inkedRows = ({ width, height, at }: Pixels): number => {
  const across = Array.from({ length: Math.floor(width * 0.86) }, (_, i) => Math.floor(width * 0.07) + i);
  return Array.from({ length: height }, (_, y) => across.filter((x) => at(x, y) < 200).length).filter((n) => n > 2)
    .length;
};

/** The frame after the next: what was asked to be drawn has been drawn. */
const framed = (page: Page): Promise<void> =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))));

describe.skipIf(hasNoBrowser)("the sheet's look", () => {
  let browser: Browser;
  let watched: Watched;
  beforeAll(async () => {
    buildPage();
    browser = await launchBrowser();
    watched = await openPage(browser, FILE_ADDRESS);
  });
  afterAll(() => closePages(browser));

  interface Look {
    readonly hash?: string;
    readonly viewport?: { readonly width: number; readonly height: number };
    readonly colorScheme?: "light" | "dark";
  }
  /** The tests' common page, as a first visit finds it. */
  async function openSheet({ hash = "", viewport = WIDE, colorScheme = "light" }: Look = {}): Promise<Page> {
    await watched.page.setViewportSize(viewport);
    await watched.page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await visit(watched, FILE_ADDRESS + hash);
    return watched.page;
  }

  test("contrast as WCAG 2.2 defines it is known from its own examples", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 5);
    expect(contrast("#777777", "#ffffff")).toBeCloseTo(4.48, 2); // WebAIM and W3C: #777 on white just fails 4.5
  });

  test.each(["light", "dark"] as const)("words and lines stand out from paper and wood, %s", async (colorScheme) => {
    const page = await openSheet({ colorScheme });
    const colour = (name: string) =>
      page.evaluate((n) => getComputedStyle(document.documentElement).getPropertyValue(n).trim(), name);
    for (const words of ["--ink", "--thin", "--accent", "--stop", "--warning", "--note"])
      expect(contrast(await colour(words), await colour("--paper")), words).toBeGreaterThanOrEqual(4.5);
    expect(contrast(await colour("--ink"), await colour("--backdrop"))).toBeGreaterThanOrEqual(4.5);
    expect(contrast(await colour("--accent"), await colour("--backdrop"))).toBeGreaterThanOrEqual(4.5);
    // The sheet's own limit: wood is seen as a body on its paper.
    for (const matter of ["--wood", "--wood-far", "--cheek", "--wedge", "--pin"])
      expect(contrast(await colour(matter), await colour("--paper")), `${matter} on paper`).toBeGreaterThanOrEqual(1.6);
    for (const matter of ["--wood", "--wood-far", "--steel", "--cap", "--wedge", "--pin"])
      expect(contrast(await colour("--ink"), await colour(matter)), matter).toBeGreaterThanOrEqual(3);
  });

  for (const [width, height] of SIZES)
    for (const colorScheme of ["light", "dark"] as const)
      test(`axe finds no serious fault at ${width} wide, ${colorScheme}, with a broken check and the schedule open`, async () => {
        const viewport = { width, height };
        const page = await openSheet({ colorScheme, viewport, hash: "#pin.height=25&at=bed" });
        await page.locator(".note .cure").first().waitFor();
        await page.locator("#schedule summary").click();
        expect(await seriousFaults(page)).toEqual([]);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(wide).toBeLessThanOrEqual(width);
      });

  test("whatever can be pressed is at least 24 px high and wide (WCAG 2.2, 2.5.8)", async () => {
    const page = await openSheet();
    await page.locator("#schedule summary").click();
    const small = await page.evaluate(() =>
      [...document.querySelectorAll("button, select, summary, input, label.open-file")]
        .map((e) => ({
          name: `${e.tagName} ${e.getAttribute("aria-label") ?? e.textContent}`,
          box: e.getBoundingClientRect(),
        }))
        .filter(({ box }) => box.width > 0 && (box.width < 24 || box.height < 24))
        .map(({ name, box }) => `${name} ${box.width} × ${box.height}`),
    );
    expect(small).toEqual([]);
  });

  test("the keyboard reaches every number and leaves it again", async () => {
    const page = await openSheet();
    const wanted = await page
      .locator(".numbers input, .my-iron select")
      .evaluateAll((all) => all.map((e) => e.getAttribute("data-parameter")));
    const reached = new Set<string>();
    for (let i = 0; i < 160; i++) {
      await page.keyboard.press("Tab");
      const path = await page.evaluate(() => (document.activeElement as HTMLElement | null)?.dataset.parameter);
      if (path) reached.add(path);
    }
    expect(wanted.length).toBeGreaterThan(20);
    expect([...reached].sort()).toEqual([...new Set(wanted)].sort());
  });

  test("prints on paper whatever the screen shows, without what only a screen can use", async () => {
    const { page } = await openPage(browser, FILE_ADDRESS, { colorScheme: "dark" });
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    expect(await page.locator(".toolbar").isVisible()).toBe(false);
    expect(await page.locator(".body-tools").isVisible()).toBe(false);
    const paper = await page.evaluate(() =>
      getComputedStyle(document.documentElement).getPropertyValue("--paper").trim(),
    );
    expect(paper).toBe("#ffffff");
    await page.context().close();
  });

  test("the printed sheet begins with its drawing, on few pages, each of them used, whatever the window", async (context) => {
    const pdftoppm = requireProgram(context, "pdftoppm");
    for (const [width, height] of SIZES) {
      const { page } = await openPage(browser, FILE_ADDRESS, { viewport: { width, height } });
      await page.locator(".detail-mouth .plot svg").first().waitFor();
      const pages = greyPages(pdftoppm, await page.pdf({ preferCSSPageSize: true, printBackground: true }), 40);
      expect(pages.length, `${width} wide`).toBeLessThanOrEqual(4);
      for (const [i, sheet] of pages.entries()) {
        const inked = inkedRows(sheet);
        expect(inked / sheet.height, `page ${i + 1} of ${pages.length}, ${width} wide`).toBeGreaterThan(
          i < pages.length - 1 ? 0.5 : 0.05,
        );
      }
      await page.context().close();
    }
  });

  test.each([...SIZES, [1440, 900] as const])(
    "no number is cut off by its field, any example, %i × %i",
    async (width, height) => {
      const page = await openSheet({ viewport: { width, height } });
      for (const example of ["workshop-jointer", "figured-finisher", "trestle-jack"]) {
        await actAndWait(page, () => page.getByRole("button", { name: example }).click());
        const outside = await page.evaluate(() =>
          [...document.querySelectorAll(".board")].flatMap((board) => {
            const field = board.getBoundingClientRect();
            return [...board.querySelectorAll(".number > *:not(.auto), .number.reference")].flatMap((number) => {
              const { left, right, top, bottom } = number.getBoundingClientRect();
              const isCut =
                left < field.left - 1 || right > field.right + 1 || top < field.top - 1 || bottom > field.bottom + 1;
              return isCut ? [`${number.getAttribute("data-parameter") ?? number.textContent}`] : [];
            });
          }),
        );
        expect(outside, example).toEqual([]);
      }
    },
  );

  test("another plane is fitted into the body's picture, one that hardly differs stays as it was turned", async () => {
    const page = await openSheet();
    const spots = () =>
      page.evaluate(() => {
        const lines = document.querySelector(".field-body .name-lines")!;
        const { width, height } = lines.getBoundingClientRect();
        const at = [...lines.querySelectorAll("path")].map((path) => /L(\S+) (\S+)m/.exec(path.getAttribute("d")!)!);
        return at.map(([, x, y]) => ({ x: Number(x) / width, y: Number(y) / height }));
      });
    await actAndWait(page, () => page.getByRole("button", { name: "workshop-jointer" }).click());
    await framed(page);
    const places = await spots();
    expect(places.length).toBeGreaterThan(6);
    for (const { x, y } of places) {
      expect(Math.min(x, y)).toBeGreaterThan(0.03);
      expect(Math.max(x, y)).toBeLessThan(0.97);
    }
    await page.locator(".field-body canvas").press("ArrowRight");
    await framed(page);
    const turned = await spots();
    const length = page.getByLabel("plane length");
    await length.fill("600");
    await actAndWait(page, () => length.press("Enter"));
    await framed(page);
    for (const [i, { x }] of (await spots()).entries()) expect(Math.abs(x - turned[i]!.x)).toBeLessThan(0.03);
  });

  test("an open schedule is printed clear of the title block", async (context) => {
    const pdftotext = requireProgram(context, "pdftotext");
    const { page } = await openPage(browser, FILE_ADDRESS);
    await page.getByText("Schedule of every figure").click();
    await page.locator(".schedule-sections dl").last().waitFor();
    const words = wordsOf(pdftotext, await page.pdf({ preferCSSPageSize: true, printBackground: true }));
    const title = words.find(({ text }) => text === "revision")!;
    expect(title).toBeDefined();
    const block = words
      .filter(({ page: of, box }) => of === title.page && box.top >= title.box.top - 1)
      .map(({ text }) => text);
    for (const row of ["caliper", "seen", "relief", "deviation"]) expect(block).not.toContain(row);
    expect(words.filter(({ text }) => text === "caliper").length).toBeGreaterThan(0);
    await page.context().close();
  });
});
