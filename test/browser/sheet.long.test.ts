// The drawing sheet end to end in a real browser, from a folder without any server: what is typed is drawn, judged and kept.
import { readFileSync } from "node:fs";
import { checkPlane } from "@lamplane/bench/checks";
import { distance } from "@lamplane/geometry";
import { readDesign, withValue } from "@lamplane/parameters/design";
import { elevation, figureValue } from "@lamplane/parameters/elevation";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { STAGES } from "../../packages/viewer/src/protocol/build-steps.ts";
import {
  actAndDraw,
  actAndWait,
  buildPage,
  closePages,
  FILE_ADDRESS,
  hasNoBrowser,
  launchBrowser,
  openPage,
  showEverything,
  visit,
  type Watched,
} from "../support/browser.ts";

const EXAMPLES = ["apprentice-smoother", "trestle-jack", "figured-finisher", "workshop-jointer"];
const designOf = (name: string) => {
  const reading = readDesign(readFileSync(`examples/${name}.yaml`, "utf8"), name);
  if (!reading.ok) throw new Error(`${name} is not understood`);
  return reading.design;
};

/** The control of a parameter on the elevation or a detail. */
const control = (page: Page, path: string) => page.locator(`.numbers [data-parameter="${path}"]`).first();
const numberIn = async (page: Page, path: string) => Number(await control(page, path).getAttribute("aria-valuenow"));
const lines = (page: Page) =>
  page.locator(".field-elevation .marks path").evaluateAll((all) => all.map((p) => p.getAttribute("d")));
const picture = (page: Page) => page.locator(".field-body canvas").screenshot();

/** Numbers and words of views and plots that reach out of their boxes, with their text. */
const cutOff = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const inside = (element: Element, box: Element) => {
      const [a, b] = [element.getBoundingClientRect(), box.getBoundingClientRect()];
      return a.left >= b.left - 0.5 && a.right <= b.right + 0.5;
    };
    const told = (element: Element) => element.querySelector("input")?.value ?? element.textContent ?? "";
    return [...document.querySelectorAll(".board, .plot")].flatMap((box) =>
      [...box.querySelectorAll(".number, text")].filter((e) => !inside(e, box)).map(told),
    );
  });

/** Pairs of numbers on one view of which one covers part of the other. */
const covering = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll(".numbers")].flatMap((view) => {
      const told = [...view.querySelectorAll(".number")].map((number) => {
        const { left, right, top, bottom } = number.getBoundingClientRect();
        const name = number.querySelector("input")?.dataset.parameter ?? (number as HTMLElement).dataset.figure;
        return { name, left, right, top, bottom };
      });
      return told.flatMap((a, i) =>
        told
          .slice(i + 1)
          .filter((b) => a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 1 && b.top < a.bottom - 1)
          .map((b) => `${a.name} and ${b.name}`),
      );
    }),
  );

describe.skipIf(hasNoBrowser)("the sheet", () => {
  let browser: Browser;
  let watched: Watched;
  beforeAll(async () => {
    buildPage();
    browser = await launchBrowser();
    watched = await openPage(browser, FILE_ADDRESS);
  });
  afterAll(() => closePages(browser));

  /** The tests' common page, as a first visit finds it. */
  async function openSheet(address: string): Promise<Page> {
    await visit(watched, address);
    return watched.page;
  }
  /** The same without the body's picture, which takes longer than all the rest. */
  async function openDrawing(address: string): Promise<Page> {
    await visit(watched, address, { withoutBody: true });
    return watched.page;
  }

  test("opens every example with one click, as a file, without a complaint and without asking for anything else", async () => {
    const { page, complaints, requests } = await openPage(browser, FILE_ADDRESS);
    const seen = new Set<string>();
    for (const name of EXAMPLES) {
      await actAndWait(page, () => page.click(`[data-example="${name}"]`));
      const design = designOf(name);
      expect(await page.title()).toContain(name);
      expect(await page.locator(".title-block dd").first().textContent()).toBe(name);
      expect(await numberIn(page, "bed.angle")).toBe(design.bed.angle);
      expect(await page.locator(".verdict").textContent()).toMatch(/checks?\b/);
      seen.add((await lines(page)).join());
      seen.add((await picture(page)).toString("base64"));
    }
    expect(seen.size).toBe(2 * EXAMPLES.length);
    expect(complaints).toEqual([]);
    const folder = FILE_ADDRESS.slice(0, FILE_ADDRESS.lastIndexOf("/") + 1);
    expect(
      requests.filter((url) => !url.startsWith(folder) && !url.startsWith("blob:") && !url.startsWith("data:")),
    ).toEqual([]);
    await page.context().close();
  });

  test("follows the bed angle, typed and stepped, in elevation, body, notes and figures", async () => {
    const page = await openSheet(`${FILE_ADDRESS}#from=apprentice-smoother&at=core`);
    const saw = page.locator('.step-figures [data-figure="sawBed"]');
    const before = { lines: await lines(page), picture: await picture(page) };
    await actAndWait(page, async () => {
      await control(page, "bed.angle").fill("40");
      await page.keyboard.press("Enter");
    });
    const plane = elevation(withValue(designOf("apprentice-smoother"), "bed.angle", 40));
    expect(await saw.textContent()).toBe(`${figureValue(plane, "sawBed")}°`);
    expect(await lines(page)).not.toEqual(before.lines);
    expect((await picture(page)).equals(before.picture)).toBe(false);
    const codes = await page.locator(".note").evaluateAll((notes) => notes.map((n) => (n as HTMLElement).dataset.code));
    expect(codes).toEqual(checkPlane(plane).map(({ code }) => code));

    await control(page, "bed.angle").focus();
    await actAndWait(page, () => page.keyboard.press("ArrowUp"));
    await actAndWait(page, () => page.keyboard.press("Shift+ArrowUp"));
    await actAndWait(page, () => page.keyboard.press("ArrowDown"));
    expect(await numberIn(page, "bed.angle")).toBe(45); // 40, then half a degree, ten steps of it, and one back
    for (let i = 0; i < 6; i++) await page.keyboard.press("PageUp");
    await expect.poll(() => numberIn(page, "bed.angle")).toBe(65); // the table's limit
  });

  test("tells what is wrong about a typed value and keeps the last good one", async () => {
    const page = await openDrawing(FILE_ADDRESS);
    const input = control(page, "bed.angle");
    for (const [text, words] of [
      ["90", /35° to 65°/],
      ["steep", /not a number/],
      ["47,5", /decimal sign is a point/],
    ] as const) {
      await input.fill(text);
      await page.keyboard.press("Enter");
      await expect.poll(() => page.locator(".refusal").textContent()).toMatch(words);
      expect(await input.getAttribute("aria-invalid")).toBe("true");
      expect(await numberIn(page, "bed.angle")).toBe(47);
    }
    await page.keyboard.press("Escape");
    expect(await page.locator(".refusal").isHidden()).toBe(true);
  });

  test.each([
    ["as it was", "", '.numbers [data-parameter="bed.angle"]', "47°"],
    ["left to the sheet", "", '.numbers [data-parameter="pin.height"]', "auto"],
    ["blanked", "#at=billet&measured.ironWidth=44", '.step-measures [data-parameter="measured.ironWidth"]', ""],
  ])("a refused value is told no longer once it is %s", async (_, hash, place, text) => {
    const page = await openDrawing(FILE_ADDRESS + hash);
    const input = page.locator(place).first();
    await input.fill("much");
    await page.keyboard.press("Enter");
    expect(await page.locator(".refusal").textContent()).toMatch(/not a number|unit "much"/);
    await input.fill(text);
    await page.keyboard.press("Enter");
    expect(await page.locator(".refusal").isHidden()).toBe(true);
    expect(await input.getAttribute("aria-invalid")).toBe(null);
  });

  test("a cure that comes after the next change is not offered", async () => {
    const context = await browser.newContext();
    await context.addInitScript(() => {
      const held: (() => void)[] = [];
      Object.assign(window, { held });
      const { set } = Object.getOwnPropertyDescriptor(Worker.prototype, "onmessage")!;
      Object.defineProperty(Worker.prototype, "onmessage", {
        set(hear: (event: MessageEvent) => void) {
          set!.call(this, (event: MessageEvent) => {
            if (event.data.kind === "cures") held.push(() => hear(event));
            else hear(event);
          });
        },
      });
    });
    const page = await context.newPage();
    const [holds, release] = [
      () => page.evaluate(() => (window as unknown as { held: unknown[] }).held.length),
      () => page.evaluate(() => (window as unknown as { held: (() => void)[] }).held.shift()!()),
    ];
    await page.goto(FILE_ADDRESS);
    await showEverything(page);
    await expect.poll(holds).toBe(1);
    await release();
    for (const [i, height] of ["25", "24"].entries()) {
      await actAndWait(page, async () => {
        await control(page, "pin.height").fill(height);
        await page.keyboard.press("Enter");
      });
      await expect.poll(holds).toBe(i + 1);
    }
    await release();
    expect(await page.locator(".note .cure").count()).toBe(0);
    await release();
    expect(await page.locator(".note .cure").count()).toBeGreaterThan(0);
    await context.close();
  });

  test("reads lengths with units of their own, and frees and fixes what is solved", async () => {
    const page = await openDrawing(FILE_ADDRESS);
    await actAndDraw(page, async () => {
      await control(page, "body.height").fill("2 1/4 in");
      await page.keyboard.press("Enter");
    });
    expect(await numberIn(page, "body.height")).toBe(57.15);
    const auto = page.locator('.number:has([data-parameter="pin.height"]) .auto').first();
    expect(await auto.getAttribute("aria-pressed")).toBe("true");
    const solved = await numberIn(page, "pin.height");
    await actAndDraw(page, () => auto.click());
    expect(await auto.getAttribute("aria-pressed")).toBe("false");
    expect(await numberIn(page, "pin.height")).toBeCloseTo(solved, 3);
    await actAndDraw(page, () => auto.click());
    expect(await auto.getAttribute("aria-pressed")).toBe("true");
  });

  test("a broken check is mended by its button, with the change that the command would tell", async () => {
    const page = await openDrawing(FILE_ADDRESS);
    await actAndDraw(page, async () => {
      await control(page, "pin.height").fill("25");
      await page.keyboard.press("Enter");
    });
    const broken = elevation(withValue(designOf("apprentice-smoother"), "pin.height", 25));
    const [worst] = checkPlane(broken);
    expect(worst?.severity).toBe("stop");
    const note = page.locator(`.note[data-code="${worst!.code}"]`);
    expect(await note.getAttribute("data-severity")).toBe("stop");
    expect(await page.locator(".leader-stop").count()).toBeGreaterThan(0);
    const { parameter, value } = worst!.cure![0]!;
    await actAndDraw(page, () => note.locator(".cure").click());
    await note.waitFor({ state: "detached" });
    expect(await page.locator('.note[data-severity="stop"]').count()).toBe(0);
    expect(await numberIn(page, parameter)).toBeCloseTo(Number(value), 3);
  });

  test("leader lines end where the trouble is", async () => {
    const page = await openDrawing(`${FILE_ADDRESS}#pin.height=25`);
    const plane = elevation(withValue(designOf("apprentice-smoother"), "pin.height", 25));
    const worst = checkPlane(plane)[0]!;
    const place = plane.points[worst.place as keyof typeof plane.points];
    const ringPlace = () =>
      page.evaluate(() => {
        const box = (selector: string) => document.querySelector(selector)!.getBoundingClientRect();
        const drawing = box(".field-elevation svg");
        const ring = box(".leaders .ring");
        const matrix = document.querySelector(".field-elevation .marks")!.getAttribute("transform")!;
        const [x, y, scale] = matrix.match(/-?[\d.]+/g)!.map(Number) as [number, number, number];
        return {
          x: (ring.x + ring.width / 2 - drawing.x - x) / scale,
          y: -(ring.y + ring.height / 2 - drawing.y - y) / scale,
        };
      });
    // Remedies come a moment later and move the board.
    await expect
      .poll(async () => {
        const { x, y } = await ringPlace();
        return Math.hypot(x - place.x, y - place.y);
      })
      .toBeLessThan(0.5);
  });

  test("the body is opened, cut, turned and seen from standard views", async () => {
    const page = await openSheet(FILE_ADDRESS);
    const pictures = new Set<string>([(await picture(page)).toString("base64")]);
    const add = async () => {
      await page.waitForTimeout(120); // a picture or two at the software renderer's rate
      pictures.add((await picture(page)).toString("base64"));
    };
    await page.locator("#open-body").fill("60");
    await add();
    await page.locator("#open-body").fill("0");
    await page.locator("#cut-body").check();
    await add();
    for (const view of ["side", "toe", "above", "sole"]) {
      await page.click(`[data-view="${view}"]`);
      await add();
    }
    await page.locator(".field-body canvas").focus();
    await page.keyboard.press("ArrowLeft");
    await add();
    await page.keyboard.press("+");
    await add();
    expect(pictures.size).toBe(9);
    expect(await page.locator(".part-names li").allTextContents()).toContain("bed block");
  });

  test("every stage shows its stock and its numbers", async () => {
    const page = await openDrawing(FILE_ADDRESS);
    const seen = new Set<string>();
    for (const stage of STAGES) {
      await actAndDraw(page, () =>
        page.locator(`#stage-${stage}`).evaluate((input) => (input as HTMLInputElement).click()),
      );
      seen.add((await lines(page)).join());
      await expect.poll(() => page.locator(".step-list h3").count()).toBeGreaterThan(0);
    }
    expect(seen.size).toBe(STAGES.length - 1); // a year later it is shaped as before
  });

  test("a measured value changes what is still to come and settles what is done", async () => {
    const page = await openDrawing(`${FILE_ADDRESS}#at=bed`);
    await actAndDraw(page, async () => {
      await page.locator('.step-measures [data-parameter="measured.bedAngle"]').fill("47.6");
      await page.keyboard.press("Enter");
    });
    expect(await page.locator(".lost").textContent()).toContain("47.6");
    expect(await control(page, "bed.angle").getAttribute("readonly")).not.toBeNull();
    expect(await numberIn(page, "bed.angle")).toBe(47.6);
  });

  test("a measured value that is blanked out is gone, from the saved file and the address too", async () => {
    const page = await openDrawing(`${FILE_ADDRESS}#at=bed`);
    const text = `iron: { width: 44, thickness: 4 }\nmeasured:\n  coreWidth: 44.5 # caliper\n  bedAngle: 46\n`;
    await actAndDraw(page, () =>
      page.setInputFiles("#open-file", { name: "elm.yaml", mimeType: "text/yaml", buffer: Buffer.from(text) }),
    );
    const blank = page.locator('.step-measures [data-parameter="measured.bedAngle"]');
    expect(await blank.inputValue()).toBe("46°");
    expect(await page.locator(".lost").textContent()).toContain("bed angle");
    await actAndDraw(page, async () => {
      await blank.fill("");
      await page.keyboard.press("Enter");
    });
    expect(await page.locator(".lost").textContent()).not.toContain("bed angle");
    const [saved] = await Promise.all([page.waitForEvent("download"), page.click("#save")]);
    expect(readFileSync(await saved.path(), "utf8")).toBe(text.replace("  bedAngle: 46\n", ""));
    await page.reload();
    await expect.poll(() => blank.inputValue()).toBe("");
  });

  test("a measured value far from the plan counts, with its doubt beside it; one near it has none", async () => {
    const page = await openDrawing(`${FILE_ADDRESS}#from=apprentice-smoother&at=recess`);
    const row = page.locator(".step-measures > div", { hasText: "recess width" });
    const typed = (text: string) =>
      actAndDraw(page, async () => {
        await row.locator("input").fill(text);
        await page.keyboard.press("Enter");
      });
    await typed("1.9");
    await expect
      .poll(() => row.locator(".doubt").textContent())
      .toMatch(/1\.9 mm is far from the 19 mm expected\. Did you mean 19 mm \(decimal point/);
    expect(await row.locator("input").getAttribute("aria-valuenow")).toBe("1.9");
    await typed("19.3");
    await expect.poll(() => row.locator(".doubt").textContent()).toBe("");
  });

  test("a reload and an opened address bring everything back; undo and redo go there and back", async () => {
    const { page } = await openPage(browser, FILE_ADDRESS);
    await actAndWait(page, () => page.click('[data-example="trestle-jack"]'));
    await actAndWait(page, async () => {
      await control(page, "bed.angle").fill("48");
      await page.keyboard.press("Enter");
    });
    await page.locator("#stage-glue-up").evaluate((input) => (input as HTMLInputElement).click());
    const address = page.url();
    await page.reload();
    await expect.poll(() => numberIn(page, "bed.angle")).toBe(48);
    await expect.poll(() => page.title()).toContain("trestle-jack"); // told with the words, which come after the drawing
    expect(await page.locator("#stage-glue-up").isChecked()).toBe(true);
    const other = await openPage(browser, address);
    expect(await numberIn(other.page, "bed.angle")).toBe(48);
    await actAndWait(other.page, async () => {
      await control(other.page, "bed.angle").fill("50");
      await other.page.keyboard.press("Enter");
    });
    await other.page.click("#undo");
    await expect.poll(() => numberIn(other.page, "bed.angle")).toBe(48);
    await other.page.click("#redo");
    await expect.poll(() => numberIn(other.page, "bed.angle")).toBe(50);
    await page.context().close();
    await other.page.context().close();
  });

  test("dragging a number steps it, and nothing jumps meanwhile", async () => {
    const page = await openDrawing(FILE_ADDRESS);
    const input = control(page, "body.length");
    await input.scrollIntoViewIfNeeded();
    const box = (await input.boundingBox())!;
    const steps = 26 / 5; // px for each step
    const wanted = (await numberIn(page, "body.length")) + Math.trunc(steps);
    const scaleNow = () => page.locator(".field-elevation .marks").getAttribute("transform");
    const scale = await scaleNow();
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 26, y, { steps: 5 });
    await expect.poll(() => numberIn(page, "body.length")).toBe(wanted);
    expect(await scaleNow()).toBe(scale);
    await page.mouse.up();
    await expect.poll(scaleNow).not.toBe(scale);
  });

  test("a file is opened and saved with its comments; one that is not understood is refused with its lines", async () => {
    const page = await openDrawing(FILE_ADDRESS);
    const text = `# mine, from the old elm\niron: { width: 44, thickness: 4 } # by caliper\nbed: { angle: 50 }\n`;
    await actAndDraw(page, () =>
      page.setInputFiles("#open-file", { name: "elm.yaml", mimeType: "text/yaml", buffer: Buffer.from(text) }),
    );
    expect(await numberIn(page, "iron.width")).toBe(44);
    await actAndDraw(page, async () => {
      await control(page, "bed.angle").fill("52");
      await page.keyboard.press("Enter");
    });
    const [saved] = await Promise.all([page.waitForEvent("download"), page.click("#save")]);
    expect(saved.suggestedFilename()).toBe("elm.yaml");
    expect(readFileSync(await saved.path(), "utf8")).toBe(text.replace("angle: 50", "angle: 52"));
    await page.reload();
    await expect.poll(() => numberIn(page, "iron.width")).toBe(44);
    await page.setInputFiles("#open-file", {
      name: "bad.yaml",
      mimeType: "text/yaml",
      buffer: Buffer.from("iron: { width: 44, thicknes: 4 }\n"),
    });
    await expect
      .poll(() => page.locator(".faults").textContent())
      .toMatch(/bad\.yaml line 1, column \d+: iron\.thicknes/);
  });

  test("two places are measured by keyboard", async () => {
    const page = await openDrawing(FILE_ADDRESS);
    await page.keyboard.press("m");
    await page.getByLabel("measure from").selectOption("toe");
    await page.getByLabel("measure to").selectOption("pinCentre");
    const { points } = elevation(designOf("apprentice-smoother"));
    const away = distance(points.toe, points.pinCentre);
    expect(Number.parseFloat((await page.locator(".measure output").textContent())!)).toBeCloseTo(away, 2);
  });

  test("plots stand beside the figures they explain and follow them", async () => {
    const page = await openDrawing(FILE_ADDRESS);
    const plots = page.locator(".field-plot svg");
    await expect.poll(() => plots.count()).toBe(4);
    const words = () => plots.allTextContents();
    const before = await words();
    await actAndDraw(page, async () => {
      await control(page, "mouth.opening").fill("0.4");
      await page.keyboard.press("Enter");
    });
    await expect.poll(async () => (await words()).join()).toContain("wanted: 0.4 mm");
    expect(await words()).not.toEqual(before);
  });

  test("a plot is read under the pointer, by a tap and by the arrow keys, and says so to a screen reader", async () => {
    const { page } = await openPage(browser, FILE_ADDRESS, { hasTouch: true });
    const plot = page.locator(".detail-mouth .plot").first();
    const reading = page.locator(".detail-mouth .plot-reading").first();
    await plot.locator("svg").waitFor();
    await plot.scrollIntoViewIfNeeded();
    expect(await reading.textContent()).toBe("");
    const box = (await plot.locator("svg").boundingBox())!;
    await page.mouse.move(box.x + box.width * 0.6, box.y + box.height / 2);
    expect(await reading.textContent()).toMatch(/^wood taken off .* mm: mouth [\d.]+ mm, wanted 0\.15 mm$/);
    expect(await plot.locator(".plot-read circle").count()).toBe(2);
    await page.mouse.move(box.x + box.width / 2, box.y - 60);
    expect(await reading.textContent(), "the pointer has left").toBe("");
    await page.touchscreen.tap(box.x + box.width * 0.5, box.y + box.height / 2);
    expect(await reading.textContent()).toContain("mouth");
    await plot.focus();
    await page.keyboard.press("End");
    expect(await plot.getAttribute("role")).toBe("slider");
    expect(await plot.getAttribute("aria-valuenow")).toBe(await plot.getAttribute("aria-valuemax"));
    expect(await plot.getAttribute("aria-valuetext")).toContain("mouth 1.66 mm"); // 0.15 and 1 mm of later truings × 1.5099
    await page.keyboard.press("Home");
    expect(await plot.getAttribute("aria-valuetext")).not.toContain("mouth 1.66");
    await page.context().close();
  });

  test("the sole is dragged through the mouth film, and the plot's point goes with it", async () => {
    const page = await openDrawing(FILE_ADDRESS);
    const film = page.locator(".film");
    await film.scrollIntoViewIfNeeded();
    const opening = async () => /mouth (\S+)/.exec((await film.getAttribute("aria-valuetext"))!)![1];
    const runner = page.locator(".plot-runner");
    expect(await opening()).toBe("0.15"); // as the example wants it at the trued sole
    const before = await runner.getAttribute("cy");
    const box = (await page.locator(".film-reach").boundingBox())!;
    const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    await page.mouse.move(middle.x, middle.y);
    await page.mouse.down();
    await page.mouse.move(middle.x, middle.y - 400, { steps: 5 });
    await page.mouse.up();
    expect(await opening()).toBe("1.66"); // 0.15 and 1 mm of later truings × 1.5099
    expect(Number(await runner.getAttribute("cy"))).toBeLessThan(Number(before));
    await film.press("Home");
    expect(await opening()).toBe("still");
  });
  test("no number covers another: every example at every stage, wide and narrow", async () => {
    const { page } = await openPage(browser, FILE_ADDRESS, { withoutBody: true });
    for (const [width, height] of [
      [1440, 900],
      [1024, 768],
    ] as const) {
      await page.setViewportSize({ width, height });
      for (const name of EXAMPLES)
        for (const stage of STAGES) {
          await actAndDraw(page, () => page.evaluate((hash) => location.assign(hash), `#from=${name}&at=${stage}`));
          expect(await covering(page), `${name} at ${stage}, ${width} wide`).toEqual([]);
          expect(await page.locator(`#stage-${stage}`).isChecked()).toBe(true);
        }
    }
    await page.context().close();
  });

  test("on a phone nothing on the sheet is cut off, in mm and in inches, and plots follow a turned screen", async () => {
    for (const example of ["apprentice-smoother", "trestle-jack"]) {
      const options = { viewport: { width: 390, height: 844 } };
      const { page } = await openPage(browser, `${FILE_ADDRESS}#from=${example}`, options);
      await page.locator(".detail-mouth .plot svg").first().waitFor();
      expect(await cutOff(page)).toEqual([]);
      const wide = () => page.locator(".detail-mouth .plot svg").first().getAttribute("viewBox");
      const upright = await wide();
      await page.setViewportSize({ width: 844, height: 390 });
      await expect.poll(wide).not.toBe(upright);
      await page.context().close();
    }
  });

  test("on a phone fewer numbers stand on the views, and the schedule has them all", async () => {
    const { page } = await openPage(browser, FILE_ADDRESS, { viewport: { width: 390, height: 844 }, hasTouch: true });
    const boxes = await page
      .locator(".field-elevation .number")
      .evaluateAll((all) => all.map((e) => e.getBoundingClientRect()).map(({ left, right }) => ({ left, right })));
    expect(boxes.length).toBeGreaterThanOrEqual(5); // the four that can be taken hold of, and what finds a clean place
    for (const { left, right } of boxes) {
      expect(left).toBeGreaterThanOrEqual(0);
      expect(right).toBeLessThanOrEqual(390);
    }
    await page.locator("#schedule summary").click();
    const input = page.locator('.schedule [data-parameter="wedge.tip"]');
    await actAndWait(page, async () => {
      await input.fill("3.5");
      await page.keyboard.press("Enter");
    });
    expect(await input.getAttribute("aria-valuenow")).toBe("3.5");
    await page.context().close();
  });
});
