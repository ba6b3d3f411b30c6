// How the page behaves under the hand: the wheel, the focus, what is refused, what is kept, what is said of itself.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { checkPlane, findingWords } from "@lamplane/bench/checks";
import { readDesign, withValue } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import {
  actAndDraw,
  buildPage,
  closePages,
  FILE_ADDRESS,
  hasNoBrowser,
  launchBrowser,
  openPage,
  PAGE,
  visit,
  type Watched,
} from "../support/browser.ts";

const number = (page: Page, path: string) => page.locator(`.field-elevation [data-parameter="${path}"]`);
const now = async (page: Page, path: string) => Number(await number(page, path).getAttribute("aria-valuenow"));
const type = async (page: Page, path: string, text: string) => {
  await number(page, path).fill(text);
  await page.keyboard.press("Enter");
};

describe.skipIf(hasNoBrowser)("the page's manners", () => {
  let browser: Browser;
  let watched: Watched;
  beforeAll(async () => {
    buildPage();
    browser = await launchBrowser();
    watched = await openPage(browser, FILE_ADDRESS);
  });
  afterAll(() => closePages(browser));

  /** The tests' common page, as a first visit finds it. */
  async function openSheet(options = {}): Promise<Page> {
    await visit(watched, FILE_ADDRESS, options);
    return watched.page;
  }

  test("what the plane waits for is at most 250 kB packed; body and guide come later", async () => {
    const { page, requests } = await openPage(browser, FILE_ADDRESS, { asNewcomer: true });
    const drawn = await page.evaluate(() => performance.getEntriesByName("lamplane elevation")[0]!.startTime);
    const later = await page.evaluate(
      (time) =>
        performance
          .getEntriesByType("resource")
          .filter(({ startTime }) => startTime > time)
          .map(({ name }) => name),
      drawn,
    );
    const first = [...new Set(requests)].filter((url) => url.startsWith("file:") && !later.includes(url));
    const names = first.map((url) => new URL(url).pathname.split("/").at(-1)!);
    expect(names).toContain("sheet.js");
    expect(names).not.toContain("body.js");
    const packed = ["index.html", ...names.filter((n) => n !== "index.html" && n !== "guide.js")].map(
      (name) => gzipSync(readFileSync(join(PAGE, name))).length,
    );
    expect(packed.reduce((a, b) => a + b)).toBeLessThanOrEqual(250_000);
    await page.locator(".body-view").scrollIntoViewIfNeeded();
    await expect.poll(() => requests.some((url) => url.endsWith("body.js"))).toBe(true);
    await page.context().close();
  });

  test("a number's card goes with the number, though no pointer leaves it", async () => {
    const page = await openSheet();
    await actAndDraw(page, () => page.evaluate(() => location.assign("#at=bed")));
    await page.locator('.steps [data-figure="bedAngle"]').dispatchEvent("pointerover"); // and no leave, as of a finger
    const card = page.locator("#hint");
    await expect.poll(() => card.isVisible()).toBe(true);
    const text = await card.textContent();
    expect(text).toContain("Angle of the bed to the sole.");
    await actAndDraw(page, () => page.evaluate(() => location.assign("#at=shaped")));
    await expect.poll(async () => (await card.isVisible()) && (await card.textContent()) === text).toBe(false);
  });

  test("what makes a pack is at most 700 kB packed", () => {
    const size = gzipSync(readFileSync(join(PAGE, "pack.js"))).length;
    expect(size).toBeLessThanOrEqual(700_000);
    expect(size, "typefaces and all").toBeGreaterThan(400_000);
  });

  test("a number is scrubbed after it was clicked, and typing in it is left alone", async () => {
    const page = await openSheet({ withoutBody: true });
    const input = number(page, "body.length");
    const before = await now(page, "body.length");
    await input.click();
    const box = (await input.boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const drag = async () => {
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x + 21, y, { steps: 4 });
      await page.mouse.up();
    };
    await drag();
    await expect.poll(() => now(page, "body.length")).toBe(before + 4);
    await page.keyboard.type("30");
    await drag();
    expect(await now(page, "body.length")).toBe(before + 4);
  });

  test("the wheel over the body scrolls the page", async () => {
    const page = await openSheet();
    await page.locator(".field-body canvas").scrollIntoViewIfNeeded();
    const before = await page.evaluate(() => scrollY);
    await page.locator(".field-body canvas").hover();
    await page.mouse.wheel(0, 200);
    await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(before);
  });

  test("a refusal stands at its number and moves nothing", async () => {
    const page = await openSheet({ withoutBody: true });
    const place = () => page.locator(".field-elevation svg").first().boundingBox();
    const before = await place();
    await type(page, "bed.angle", "90");
    const [bubble, input] = await Promise.all([
      page.locator(".refusal").boundingBox(),
      number(page, "bed.angle").boundingBox(),
    ]);
    expect(bubble!.y).toBeGreaterThanOrEqual(input!.y + input!.height);
    expect(bubble!.y - input!.y - input!.height).toBeLessThan(20);
    expect(await place()).toEqual(before);
    expect(await number(page, "bed.angle").getAttribute("aria-describedby")).toBe("refusal");
  });

  test("the checks are one quiet mark that opens; a fault speaks by its name, and its remedy leaves the focus in the page", async () => {
    const page = await openSheet({ withoutBody: true });
    const mark = page.locator(".verdict");
    expect(await mark.textContent()).toMatch(/^\d+ checks pass$/);
    expect(await page.locator(".passed-list").isVisible()).toBe(false);
    await mark.click();
    expect(await page.locator(".passed-list li").count()).toBe(Number.parseInt((await mark.textContent())!, 10));
    await mark.click();
    await actAndDraw(page, () => type(page, "pin.height", "25"));
    await page.locator(".note .cure").first().waitFor();
    expect(await mark.textContent()).toMatch(/^\d+ checks? of \d+ fails?$/);
    expect(await page.locator(".note:visible").count()).toBe(1);
    const note = page.locator(".note").first();
    const code = (await note.getAttribute("data-code"))!;
    const reading = readDesign(readFileSync("examples/apprentice-smoother.yaml", "utf8"), "apprentice-smoother");
    if (!reading.ok) throw new Error("the example is not understood");
    const broken = elevation(withValue(reading.design, "pin.height", 25));
    const { name, value, limit, verdict, advice } = findingWords(broken.design, checkPlane(broken)[0]!);
    expect([value, limit, advice].every((part) => part !== "")).toBe(true);
    expect(await note.locator("strong").textContent()).toBe(name);
    expect(await note.locator(".figures").textContent()).toBe(`${value} (${limit}): ${verdict}`);
    expect(await note.locator(".advice").textContent()).toBe(advice);
    expect(await page.locator(".leaders path.leader[d^=M]").count()).toBe(1);
    await note.locator(".cure").focus();
    await actAndDraw(page, () => page.keyboard.press("Enter"));
    await note.and(page.locator(`[data-code="${code}"]`)).waitFor({ state: "detached" });
    expect(await page.evaluate(() => document.activeElement !== document.body)).toBe(true);
  });

  test("a ramp that turns curved as the bed is raised is announced, and stays so until the bed is another", async () => {
    const page = await openSheet({ withoutBody: true });
    const words = () => page.locator(".announcement").textContent();
    await actAndDraw(page, () => type(page, "bed.angle", "48"));
    expect(await words()).toBe("");
    await actAndDraw(page, () => type(page, "bed.angle", "55"));
    expect(await words()).toMatch(/ramp is curved/);
    await actAndDraw(page, () => type(page, "bed.angle", "47"));
    expect(await words()).toMatch(/straight again/);
  });

  test("undo is grey until there is something to undo; light or dark is kept", async () => {
    const page = await openSheet({ withoutBody: true });
    const undo = page.locator("#undo");
    expect(await undo.getAttribute("aria-disabled")).toBe("true");
    await actAndDraw(page, () => type(page, "bed.angle", "48"));
    expect(await undo.getAttribute("aria-disabled")).toBe("false");
    await undo.focus();
    await actAndDraw(page, () => page.keyboard.press("Enter"));
    expect(await undo.getAttribute("aria-disabled")).toBe("true");
    expect(await page.evaluate(() => document.activeElement!.id)).toBe("undo");
    await page.click("#theme");
    await page.reload();
    expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe("dark");
  });

  test("inches begin with round sizes where nothing was changed, and keep them where something was", async () => {
    const page = await openSheet({ withoutBody: true });
    const width = page.locator('.my-iron [data-parameter="iron.width"]');
    await actAndDraw(page, () => page.locator(".my-iron select").selectOption("in"));
    expect(await width.inputValue()).toBe("1 3/4″");
    await actAndDraw(page, () => page.locator(".my-iron select").selectOption("mm"));
    expect(await width.inputValue()).toBe("48");
    await actAndDraw(page, () => type(page, "bed.angle", "48"));
    await actAndDraw(page, () => page.locator(".my-iron select").selectOption("in"));
    expect(Number(await width.getAttribute("aria-valuenow"))).toBe(48);
  });

  test("a part that is pointed at brings its numbers; they go when the pointer has left", async () => {
    const { page } = await openPage(browser, FILE_ADDRESS, { asNewcomer: true });
    const numbers = page.locator(".field-elevation .number");
    const count = await numbers.count();
    const pin = (await page.locator('.field-elevation [data-part="pin"]').last().boundingBox())!;
    await page.mouse.move(pin.x + pin.width / 2, pin.y + pin.height / 2);
    await expect.poll(() => number(page, "pin.height").count()).toBe(1);
    await page.mouse.move(5, 5);
    await expect.poll(() => numbers.count()).toBe(count);
    await page.context().close();
  });
});
