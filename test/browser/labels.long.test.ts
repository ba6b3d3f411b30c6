// No number, word or halo on a drawing rubs out an outline, covers another or is cut off: counted on the pixels that are painted.
import { writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import { setValue } from "@lamplane/parameters/design";
import { rowsOf, TABLE } from "@lamplane/parameters/table";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { STAGES } from "../../packages/viewer/src/protocol/build-steps.ts";
import { formatAddress } from "../../packages/viewer/src/state/address.ts";
import {
  actAndDraw,
  buildPage,
  closePages,
  FILE_ADDRESS,
  hasNoBrowser,
  launchBrowser,
  openPage,
} from "../support/browser.ts";
import { randomDesigns } from "../support/designs.ts";
import { extent, IS_FULL, sampled } from "../support/extent.ts";

const EXAMPLES = ["apprentice-smoother", "trestle-jack", "figured-finisher", "workshop-jointer"];
const WIDTHS = [390, 834, 1440, 1920];
const UNITS = ["mm", "in"] as const;
const RANDOM = extent(12, 200); // half of them in inches
const PER_DESIGN = 10_000; // ms on a busy machine: remedies of a plane with many faults take seconds

/** Outlines alone, in one colour and with hard edges; then the labels over them. */
const PROBE = `
  .probed .marks path, .probed .window { fill: none !important; stroke: none !important; }
  .probed .marks .line-outline { stroke: #f0f !important; shape-rendering: crispEdges; }
  .probed .dimension-lines, .probed .dimension-arrows, .probed .grips { visibility: hidden; }
  .probed.bare .numbers, .probed.bare .names { visibility: hidden; }
  .probed .numbers .number > * { pointer-events: none; }
`;

/** Px round a label's box in which it may paint; further away the browser alone draws a curve's pixel otherwise. */
const HALO = 8;

interface Faults {
  /** Pixels of outlines that a label takes away. */
  readonly covered: number;
  readonly outlines: number;
}

interface Field {
  /** Left, top, right and bottom on the whole page, px. */
  readonly field: Box;
  readonly labels: readonly Box[];
}
type Box = readonly [number, number, number, number];

const fieldsOf = (page: Page, boards: readonly string[]): Promise<Field[]> =>
  page.evaluate(
    (selectors) =>
      selectors.map((selector) => {
        const boxOf = (element: Element) => {
          const { left, top, right, bottom } = element.getBoundingClientRect();
          return [left + scrollX, top + scrollY, right + scrollX, bottom + scrollY] as const;
        };
        const board = document.querySelector(selector)!;
        board.classList.add("probed");
        return {
          field: boxOf(board),
          labels: [...board.querySelectorAll(".number > *, .number, .names text")].map(boxOf),
        };
      }),
    boards,
  );

/** What the labels take away of each board: one picture with them and one without, of all boards together. */
async function coveredPixels(page: Page, names: readonly string[]): Promise<Faults[]> {
  const boards = names.map((name) => `.field-${name} .board`);
  const fields = await fieldsOf(page, boards);
  const end = (k: 0 | 1 | 2 | 3) => fields.map(({ field }) => field[k]);
  const [x, y] = [Math.floor(Math.min(...end(0))), Math.floor(Math.min(...end(1)))];
  const clip = { x, y, width: Math.ceil(Math.max(...end(2))) - x, height: Math.ceil(Math.max(...end(3))) - y };
  const picture = async (bare: boolean) => {
    await page.evaluate((isBare) => {
      for (const board of document.querySelectorAll(".probed")) board.classList.toggle("bare", isBare);
    }, bare);
    const png = await page.screenshot({ clip, fullPage: true, animations: "disabled", caret: "hide" });
    return png.toString("base64");
  };
  const [without, withLabels] = [await picture(true), await picture(false)];
  // Plots come after the remedies, and move what stands below them.
  if (!isDeepStrictEqual(await fieldsOf(page, boards), fields)) return coveredPixels(page, names);
  return page.evaluate(
    async ([a, b, boxes, { x: fromX, y: fromY }, reach]) => {
      for (const board of document.querySelectorAll(".probed")) board.classList.remove("probed", "bare");
      const pixels = async (base64: string) => {
        const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
        const png = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
        const context = new OffscreenCanvas(png.width, png.height).getContext("2d")!;
        context.drawImage(png, 0, 0);
        return context.getImageData(0, 0, png.width, png.height);
      };
      const [{ data: bare, width }, { data: labelled }] = [await pixels(a), await pixels(b)];
      const isOutline = (data: Uint8ClampedArray, i: number) =>
        data[i] === 255 && data[i + 1] === 0 && data[i + 2] === 255;
      return boxes.map(({ field: [left, top, right, bottom], labels }) => {
        let [outlines, covered] = [0, 0];
        for (let py = Math.ceil(top); py < bottom - 0.5; py++)
          for (let px = Math.ceil(left); px < right - 0.5; px++) {
            const i = 4 * ((py - fromY) * width + px - fromX);
            if (!isOutline(bare, i)) continue;
            outlines += 1;
            const isNear = labels.some(
              ([l, t, r, o]) => px >= l - reach && px <= r + reach && py >= t - reach && py <= o + reach,
            );
            if (isNear && !isOutline(labelled, i)) covered += 1;
          }
        return { outlines, covered };
      });
    },
    [without, withLabels, fields, clip, HALO] as const,
  );
}

/** Labels of a board that cover one another, or reach out of it. */
const clashes = (board: Locator): Promise<string[]> =>
  board.evaluate((element) => {
    const field = element.getBoundingClientRect();
    const told = [
      ...element.querySelectorAll(
        ".number > :not(.auto), .number.reference, .number .auto, .grip > path, .board.is-all .names text",
      ),
    ]
      .map((e) => ({ e, box: e.getBoundingClientRect() }))
      .filter(({ e, box }) => box.width > 0 && (e as Element).checkVisibility({ visibilityProperty: true }))
      .map(({ e, box }) => ({
        of: e.closest(".number, .grip, text"),
        name:
          e.getAttribute("data-parameter") ??
          e.closest("[data-grip]")?.getAttribute("data-grip") ??
          e.textContent ??
          "",
        box,
      }));
    const cut = told
      .filter(
        ({ box }) =>
          box.left < field.left - 1 ||
          box.right > field.right + 1 ||
          box.top < field.top - 1 ||
          box.bottom > field.bottom + 1,
      )
      .map(({ name }) => `${name} is cut off`);
    const covering = told.flatMap((a, i) =>
      told
        .slice(i + 1)
        .filter((b) => a.of !== b.of && a.box.left < b.box.right - 1 && b.box.left < a.box.right - 1)
        .filter((b) => a.box.top < b.box.bottom - 1 && b.box.top < a.box.bottom - 1)
        .map((b) => `${a.name} covers ${b.name}`),
    );
    return [...cut, ...covering];
  });

/** Leader lines that run through a number. */
const struckNumbers = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll(".board")].flatMap((board) => {
      const numbers = [...board.querySelectorAll(".number")];
      return [...board.querySelectorAll<SVGPathElement>(".dimension-lines path")].flatMap((line) => {
        const matrix = line.getScreenCTM()!;
        const long = line.getTotalLength();
        const spots = Array.from({ length: Math.ceil(long / 2) }, (_, i) =>
          line.getPointAtLength(2 * i).matrixTransform(matrix),
        );
        return numbers
          .filter((number) => {
            const { left, right, top, bottom } = number.getBoundingClientRect();
            return spots.some(({ x, y }) => x > left + 4 && x < right - 4 && y > top + 5 && y < bottom - 5);
          })
          .map((number) => number.querySelector("input")?.dataset.parameter ?? number.textContent ?? "");
      });
    }),
  );

async function judge(page: Page, what: string, names: readonly string[], faults: string[]) {
  const counts = await coveredPixels(page, names);
  for (const [i, name] of names.entries()) {
    const board = page.locator(`.field-${name} .board`);
    const { covered, outlines } = counts[i]!;
    if (outlines < 100) faults.push(`${what}, ${name}: only ${outlines} pixels of outlines are seen`);
    if (covered > 0) faults.push(`${what}, ${name}: ${covered} of ${outlines} pixels of outlines covered`);
    for (const clash of await clashes(board)) faults.push(`${what}, ${name}: ${clash}`);
  }
}

/** Waits for the remedies too: as they come the board moves, and two pictures of it would differ. */
async function goTo(page: Page, hash: string) {
  await actAndDraw(page, () => page.evaluate((to) => location.assign(to), hash));
  await page.waitForFunction(() => document.querySelector(".note .cures:empty") === null);
}

describe.skipIf(hasNoBrowser)("labels", () => {
  let browser: Browser;
  beforeAll(async () => {
    buildPage();
    browser = await launchBrowser();
  });
  afterAll(() => closePages(browser));

  for (const width of WIDTHS)
    test(`rub nothing out: every example at every step, mm and inches, ${width} wide`, async () => {
      const { page } = await openPage(browser, FILE_ADDRESS, { viewport: { width, height: 900 }, withoutBody: true });
      await page.addStyleTag({ content: PROBE });
      const faults: string[] = [];
      for (const [i, example] of EXAMPLES.entries())
        for (const [k, stage] of sampled(STAGES, 3).entries())
          for (const units of IS_FULL ? UNITS : [UNITS[(i + k + width) % 2]!]) {
            const what = `${example} at ${stage} in ${units}`;
            await goTo(page, `#from=${example}&at=${stage}&units=${units}`);
            const isOther = stage === "billet" || stage === "shaped";
            await judge(page, what, isOther ? ["elevation", "mouth", "stack", "end"] : ["elevation"], faults);
            for (const struck of await struckNumbers(page)) faults.push(`${what}: a line through ${struck}`);
            const wide = await page.evaluate(() => document.documentElement.scrollWidth);
            if (wide > width) faults.push(`${what}: the page is ${wide} px wide`);
          }
      writeFileSync(join(tmpdir(), `lamplane-labels-${width}.txt`), faults.join("\n"));
      expect(faults).toEqual([]);
      await page.context().close();
    });

  test.each(["mm", "in"] as const)(
    "rub nothing out: random designs in %s",
    async (units) => {
      const { page } = await openPage(browser, FILE_ADDRESS, {
        viewport: { width: 1440, height: 900 },
        withoutBody: true,
      });
      await page.addStyleTag({ content: PROBE });
      const faults: string[] = [];
      for (const [i, { design }] of randomDesigns(units === "mm" ? 41 : 42, RANDOM / 2).entries()) {
        const text = rowsOf(TABLE).reduce((yaml, { path, row }) => {
          const value = path.split(".").reduce<unknown>((at, key) => (at as Record<string, unknown>)?.[key], design);
          if (
            row.kind !== "number" ||
            typeof value !== "number" ||
            path.startsWith("measured") ||
            row.quantity === "count"
          )
            return yaml;
          return setValue(yaml, path, value);
        }, "iron: { width: 48, thickness: 3.6 }\n");
        const origin = { kind: "text", name: "random.yaml", text } as const;
        await goTo(page, formatAddress({ origin, changes: [["units", units]], stage: "first-shaving" }));
        await judge(page, `design ${i} ${units}`, ["elevation", "mouth", "stack", "end"], faults);
      }
      writeFileSync(join(tmpdir(), `lamplane-labels-random-${units}.txt`), faults.join("\n"));
      expect(faults).toEqual([]);
      await page.context().close();
    },
    PER_DESIGN * RANDOM,
  );

  test("a patch over an outline is seen by this test", async () => {
    const { page } = await openPage(browser, FILE_ADDRESS, { withoutBody: true });
    await page.addStyleTag({
      content: `${PROBE} .field-elevation .number { background: white; padding: 60px; margin: -60px; }`,
    });
    const [count] = await coveredPixels(page, ["elevation"]);
    expect(count!.outlines).toBeGreaterThan(1000);
    expect(count!.covered).toBeGreaterThan(100);
    await page.context().close();
  });
});
