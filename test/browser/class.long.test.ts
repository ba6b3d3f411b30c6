// A class in a real browser: a roster opened by picker and by drop, its planes with their state, each opened and back, against the command.
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startViewServer } from "../../packages/cli/src/view-server.ts";
import { buildPage, closePages, FILE_ADDRESS, hasNoBrowser, launchBrowser, PAGE } from "../support/browser.ts";
import { ClassFolder } from "../support/class-folder.ts";
import { runCommand } from "../support/running.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const SCHOOL = ["examples/class/school-roster.yaml", "examples/class/school-smoother.yaml"];
const school = new ClassFolder();

describe.skipIf(hasNoBrowser)("the class screen", () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    await buildPage();
    browser = await launchBrowser();
  }, 300_000);
  afterAll(() => closePages(browser));

  const complaints: string[] = [];
  async function newPage(address = FILE_ADDRESS, options = {}): Promise<Page> {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options });
    page = await context.newPage();
    page.on("pageerror", ({ message }) => complaints.push(message));
    await page.goto(address);
    return page;
  }
  const open = async (files: string[]) => {
    await page.locator("#open-file, #open-roster").first().setInputFiles(files);
    await page.locator(".class-planes, .class .faults:not([hidden])").first().waitFor();
  };
  const card = (name: string) => page.locator(".plane", { has: page.getByText(name, { exact: true }) });
  const classShown = () => page.locator(".class-planes").waitFor();
  const planeShown = () =>
    page.waitForFunction(() => performance.getEntriesByName("lamplane elevation").length > 0, undefined, {
      timeout: 60_000,
    });
  async function download(button: string): Promise<Buffer> {
    const [file] = await Promise.all([page.waitForEvent("download"), page.getByText(button, { exact: true }).click()]);
    return readFileSync(await file.path());
  }

  test("a school's roster from the disk: twelve planes, the set-ups, and the command's sheet byte for byte", async () => {
    await newPage();
    await open(SCHOOL);
    expect(await page.locator(".class-status").textContent()).toBe("12 planes: 0 built, 0 stuck.");
    expect(await page.locator(".plane .plane-drawing path").count()).toBeGreaterThan(12 * 5);
    const { out, exit } = await runCommand("class", SCHOOL[0]!, "--out", school.packs, "--plan");
    expect(exit).toBe(0);
    for (const line of await page.locator(".class-about li").allTextContents()) expect(out).toContain(line);
    expect(await card("ida").locator(".plane-size").textContent()).toBe("iron 44.6 × 3.4 mm, core 46 mm");
    for (const name of ["class.pdf", "class.csv"])
      expect((await download(name)).equals(readFileSync(school.at("packs", name))), name).toBe(true);
    await page.context().close();
  }, 240_000);

  test("a plane is opened by a click and by the keyboard, and the way back brings what was measured", async () => {
    await newPage();
    await open(SCHOOL);
    await card("carla").locator("a").click();
    await planeShown();
    expect(await page.locator(".opening input").first().inputValue()).toBe("48");
    await page.evaluate(() => {
      location.hash += "&measured.ironWidth=48&measured.ironThickness=3.62";
    });
    await expect.poll(() => page.locator("#undo").getAttribute("aria-disabled")).toBeTruthy();
    await page.locator("#to-class").click();
    await classShown();
    expect(await card("carla").locator(".plane-step").textContent()).toBe("3/15 Saw and mill core and cheeks");
    expect(await card("carla").locator(".plane-measured").textContent()).toBe("measured: 2, last iron width 48 mm");
    await card("dora").locator("a").focus();
    await page.keyboard.press("Enter");
    await planeShown();
    expect(await page.locator(".opening input").first().inputValue()).toBe("51");
    await page.goBack();
    await classShown();
    expect(await page.locator(".plane").count()).toBe(12);
    await page.context().close();
  }, 240_000);

  test("planes' own files bring the state that --status has; one is stuck, and says on what", async () => {
    school.writeRoster("name,iron.width\nanna,50.8\nben,50.2\ncarla,50\n");
    await school.run("--plan");
    await runCommand("measured", school.planeFile("ben"), "ironWidth=50.2", "ironThickness=3.2");
    await runCommand("measured", school.planeFile("carla"), "ironThickness=9", "--read-twice");
    const { out } = await school.run("--status");
    await newPage();
    await open([school.roster, school.base, ...["anna", "ben", "carla"].map(school.planeFile)]);
    expect(out).toContain(await page.locator(".class-status").textContent());
    for (const name of ["anna", "ben", "carla"]) {
      const own = card(name);
      const line = out.split("\n").find((each) => each.includes(` ${name} `))!;
      expect(line).toContain(await own.locator(".plane-step span").textContent());
      expect(line).toContain((await own.locator(".plane-measured").textContent())!.replace("measured: ", ""));
      for (const note of await own.locator(".plane-note").allTextContents()) expect(out).toContain(`${name}: ${note}`);
    }
    expect(await page.locator(".is-stuck").count()).toBe(1);
    expect(await card("carla").locator(".plane-note").first().textContent()).toMatch(/9 mm is far from/);
    await page.context().close();
  }, 240_000);

  test("a base that is missing is asked for and added; faults stand at their line and column; files may be dropped", async () => {
    school.writeRoster("name,iron.width\nanna,50.8\nben,500\n");
    await newPage();
    await open([school.roster]);
    expect(await page.locator(".faults li").allTextContents()).toEqual([
      "class.csv names no base design. Add the file of the base design.",
    ]);
    await page.locator("#add-files").setInputFiles([school.base]);
    await classShown();
    expect(await page.locator(".class-status").textContent()).toBe("2 planes: 0 built, 0 stuck, 1 with faults.");
    expect(await card("ben").locator(".plane-note").textContent()).toBe(
      "class.csv line 3, column 5: iron.width: read 500; allowed: 8 mm to 120 mm",
    );
    const data = await page.evaluateHandle(
      (base) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File(['name,iron.width\n"anna,50\n'], "other.csv"));
        transfer.items.add(new File([base], "base.yaml"));
        return transfer;
      },
      readFileSync(school.base, "utf8"),
    );
    await page.dispatchEvent("body", "drop", { dataTransfer: data });
    await expect
      .poll(() => page.locator(".faults li").allTextContents())
      .toEqual([
        'other.csv line 2, column 1: a quote opens here and is never closed; write ", and "" for a quote within',
      ]);
    await page.context().close();
  }, 240_000);

  test.each([
    [390, "light"],
    [390, "dark"],
    [1440, "light"],
    [1440, "dark"],
  ] as const)(
    "at %i px, %s: axe finds nothing, nothing is wider than the page",
    async (width, colorScheme) => {
      await newPage(FILE_ADDRESS, { viewport: { width, height: 844 }, colorScheme });
      school.writeRoster("name,iron.width,measured.ironThickness\nanna,50.8,\nben,500,\ncarla,50,9\n");
      await open([school.roster, school.base]);
      await page.evaluate(AXE);
      const found = await page.evaluate(async () => {
        const { violations } = await (
          globalThis as never as { axe: { run(): Promise<{ violations: { id: string }[] }> } }
        ).axe.run();
        return violations.map(({ id }) => id);
      });
      expect(found).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
      await page.context().close();
    },
    240_000,
  );

  test("core widths may be more than the fewest, and sheets are laid out: the command's files byte for byte", async () => {
    writeFileSync(
      school.at("shop.yaml"),
      "sheets:\n  - { name: thin, material: wood, length: 300, width: 170, thickness: 8, count: 3 }\n",
    );
    writeFileSync(school.base, `shop: shop.yaml\n${readFileSync("examples/class/school-smoother.yaml", "utf8")}`);
    school.writeRoster("name,iron.width\nanna,50.8\nben,50\ncarla,48\ndora,47.4\n");
    const { out } = await school.run("--plan", "--groups", "3");
    await newPage();
    await open([school.roster, school.base, school.at("shop.yaml")]);
    expect(await page.locator("#core-widths option").allTextContents()).toEqual(["2, the fewest", "3", "4"]);
    await page.locator("#core-widths").selectOption("3");
    await expect
      .poll(() => page.locator(".class-about").textContent(), { timeout: 60_000 })
      .toContain("3 core widths:");
    for (const line of await page.locator(".class-about li").allTextContents()) expect(out).toContain(line.trim());
    for (const name of ["class.pdf", "class.csv", "class-sheets.zip"])
      expect((await download(name)).equals(readFileSync(school.at("packs", name))), name).toBe(true);
    await card("ben").locator("a").click();
    await planeShown();
    await page.locator("#to-class").click();
    await classShown();
    expect(await page.locator("#core-widths").inputValue()).toBe("3");
    await page.context().close();
  }, 240_000);

  test("under `lamplane view` the class follows its files on the disk", async () => {
    school.writeRoster("name,iron.width\nanna,50.8\nben,50.2\n");
    await school.run("--plan");
    const followedClass = { roster: school.roster, base: school.base, out: school.packs };
    const server = await startViewServer({ page: PAGE, followedClass, port: 0 });
    try {
      await newPage(server.address);
      await classShown();
      expect(await page.locator(".class-status").textContent()).toBe("2 planes: 0 built, 0 stuck.");
      await runCommand("measured", school.planeFile("ben"), "ironWidth=50.2", "ironThickness=3.2");
      await expect
        .poll(() => card("ben").locator(".plane-measured").textContent(), { timeout: 20_000 })
        .toBe("measured: 2, last iron width 50.2 mm");
      writeFileSync(school.roster, "name,iron.width\nanna,50.8\nben,50.2\ncarla,44\n");
      await expect.poll(() => page.locator(".plane").count(), { timeout: 20_000 }).toBe(3);
      rmSync(school.planeFile("ben"));
      await expect
        .poll(() => card("ben").locator(".plane-measured").textContent(), { timeout: 20_000 })
        .toBe("measured: nothing");
    } finally {
      await page.context().close();
      await server.close();
    }
  }, 240_000);

  test("under `lamplane view` what is changed on a plane's page is written into its row and its own file", async () => {
    const roster =
      "# ours\nplanes:\n  - { name: anna, iron: { width: 50.8 } } # hers\n  - { name: ben, iron: { width: 50.2 } }\n";
    const file = school.at("class.yaml");
    writeFileSync(file, roster);
    const followedClass = { roster: file, base: school.base, out: school.packs };
    const server = await startViewServer({ page: PAGE, followedClass, port: 0 });
    const status = () => page.locator(".title-block .status").textContent();
    const change = (changes: string) =>
      page.evaluate((more) => {
        location.hash += more;
      }, changes);
    try {
      await newPage(server.address);
      await classShown();
      await card("anna").locator("a").click();
      await planeShown();
      expect(await page.locator("#write-back").isDisabled()).toBe(true);
      await change("&bed.angle=50&measured.ironWidth=50.7");
      await expect.poll(() => page.locator("#write-back").isDisabled()).toBe(false);
      await page.locator("#to-class").click();
      expect(await status()).toMatch(/not written back/);
      await page.locator("#write-back").click();
      await expect.poll(status, { timeout: 20_000 }).toMatch(/^Written into anna\.yaml and class\.yaml\./);
      expect(readFileSync(file, "utf8")).toBe(roster.replace("50.8 }", "50.8 }, bed: { angle: 50 }"));
      expect(school.design("anna").measured.ironWidth).toBe(50.7);
      await expect.poll(() => page.locator("#write-back").isDisabled(), { timeout: 20_000 }).toBe(true);
      await page.reload();
      await planeShown();

      await change("&iron.thickness=3.3");
      await expect.poll(() => page.locator("#write-back").isDisabled()).toBe(false);
      const renamed = readFileSync(file, "utf8").replace("anna", "anne");
      writeFileSync(file, renamed);
      await expect
        .poll(() => page.locator(".faults:not([hidden])").allTextContents(), { timeout: 20_000 })
        .toEqual([expect.stringContaining("class.yaml has no plane anna now")]);
      await page.locator("#write-back").click();
      await expect.poll(status).toMatch(/Nothing was written/);
      expect(readFileSync(file, "utf8")).toBe(renamed);
      writeFileSync(file, renamed.replace("anne", "anna"));
      await expect.poll(() => page.locator(".faults:not([hidden])").count(), { timeout: 20_000 }).toBe(0);
      await page.locator("#write-back").click();
      await expect.poll(() => readFileSync(file, "utf8"), { timeout: 20_000 }).toContain("thickness: 3.3");
      await page.locator("#to-class").click();
      await classShown();
      expect(await card("anna").locator(".plane-measured").textContent()).toBe("measured: 1, last iron width 50.7 mm");
      expect(await page.locator(".plane").count()).toBe(2);
    } finally {
      await page.context().close();
      await server.close();
    }
  }, 240_000);

  test("no page complained", () => expect(complaints).toEqual([]));
});
