// The page among spoiled addresses and files, in a real browser: it always shows a plane, and tells what it could not use.
import { mkdtempSync, readFileSync, readlinkSync, renameSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { deflateSync } from "node:zlib";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startViewServer, type ViewServer } from "../../packages/cli/src/view-server.ts";
import { formatAddress } from "../../packages/viewer/src/state/address.ts";
import {
  actAndDraw,
  actAndWait,
  buildPage,
  closePages,
  FILE_ADDRESS,
  hasNoBrowser,
  launchBrowser,
  openPage,
  PAGE,
  showEverything,
  type Watched,
} from "../support/browser.ts";
import { fault } from "../support/faults.ts";

const needs = "a browser";
const refusal = (page: Page) => page.locator(".faults").textContent();
const angle = (page: Page) => page.locator('.numbers [data-parameter="bed.angle"]').first();
const angleNow = (page: Page) => angle(page).getAttribute("aria-valuenow");
const bodyLines = (page: Page) => page.locator(".field-elevation .marks path").count();

describe.skipIf(hasNoBrowser)("the page", () => {
  let browser: Browser;
  beforeAll(async () => {
    buildPage();
    browser = await launchBrowser();
  });
  afterAll(() => closePages(browser));

  describe(
    "a spoiled address",
    fault({ on: "the page's address", survives: "a plane is shown; what was refused is told", needs }),
    () => {
      let watched: Watched;
      beforeAll(async () => {
        watched = await openPage(browser, FILE_ADDRESS);
      });
      afterAll(() => watched.page.context().close());

      const text = (design: string) =>
        formatAddress({ origin: { kind: "text", name: "x.yaml", text: design }, changes: [], stage: "shaped" });
      const packed = (bytes: Uint8Array) => `#from=x.yaml&text=${Buffer.from(bytes).toString("base64url")}`;
      const EXAMPLE = "apprentice-smoother";

      test.each([
        ["garbage", "#\u0000%%%&&==%zz&\u202e", EXAMPLE, /which is no parameter/],
        ["1 MB for a design", `#text=${"x".repeat(1 << 20)}`, EXAMPLE, /too long/],
        [
          "48 MB packed into 48 kB",
          packed(deflateSync(Buffer.alloc(46 << 20)).subarray(2)),
          EXAMPLE,
          /larger than|cannot be read/,
        ],
        [
          "a design with a fault",
          text("iron: { width: wide, thickness: 4 }\n"),
          EXAMPLE,
          /x\.yaml line 1, column 16: iron\.width/,
        ],
        ["a design that is none", text("<script>alert(1)</script>"), EXAMPLE, /x\.yaml line 1/],
        ["__proto__ for an example", "#from=__proto__", EXAMPLE, /no example "__proto__"/],
        ["a file that nobody follows", "#from=file", EXAMPLE, /follows a file/],
        [
          "values out of limits",
          "#from=trestle-jack&bed.angle=999&iron.width=-1",
          "trestle-jack",
          /bed\.angle.*999.*35° to 65°/,
        ],
        [
          "no such example, and a value out of limits",
          "#from=nowhere&bed.angle=999",
          EXAMPLE,
          /no example "nowhere".*bed\.angle.*999/,
        ],
        [
          "no number",
          "#from=trestle-jack&bed.angle=NaN&iron.width=Infinity&sole.allowance=1e999",
          "trestle-jack",
          /bed\.angle: read "NaN"/,
        ],
        ["hidden characters in a text", "#wood.body=oak%E2%80%AE&name=..%2F..%2Fx", EXAMPLE, /hidden character/],
        [
          "markup in every text",
          "#from=figured-finisher&wood.body=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E&name=%3C%2Fscript%3E",
          "figured-finisher",
          /name: read "<\/script>"/,
        ],
      ])("%s", async (_, hash, name, told) => {
        const { page, complaints } = watched;
        complaints.length = 0;
        await page.goto("about:blank");
        await page.goto(FILE_ADDRESS + hash);
        await showEverything(page, true);
        expect(await page.title()).toBe(`${name} · lamplane`);
        expect(await bodyLines(page)).toBeGreaterThan(5);
        expect(await refusal(page)).toMatch(told);
        expect(complaints).toEqual([]);
        expect(await page.locator("img, script:not([src])").count()).toBe(0);
      });

      test("each of them over a sheet that has been drawn: it is kept, with what was changed", async () => {
        const { page, complaints } = watched;
        await page.goto("about:blank");
        await page.goto(`${FILE_ADDRESS}#from=trestle-jack&bed.angle=48`);
        await showEverything(page, true);
        complaints.length = 0;
        for (const [hash, told] of [
          [text("iron: { width: wide, thickness: 4 }\n"), /x\.yaml line 1, column 16/],
          ["#from=trestle-jack&bed.angle=48&iron.width=-1", /iron\.width/],
        ] as const) {
          await actAndDraw(page, () =>
            page.evaluate((to) => {
              location.hash = to;
            }, hash),
          );
          await expect.poll(() => refusal(page)).toMatch(told);
          expect(await page.title()).toBe("trestle-jack · lamplane");
          expect(await angleNow(page)).toBe("48");
          expect(page.url()).toContain("#from=trestle-jack&bed.angle=48");
          expect(page.url()).not.toMatch(/text=|iron/);
        }
        expect(complaints).toEqual([]);
      });
    },
  );

  test(
    "a file that is no design, dropped on the page: binary, 50 MB, empty, one with a fault",
    fault({
      on: "the page",
      survives: "the last good plane with its changes; the file's faults are told; undo still works",
      needs,
    }),
    async () => {
      const { page, complaints } = await openPage(browser, `${FILE_ADDRESS}#from=trestle-jack&bed.angle=48`);
      const drop = (size: number, content: string) =>
        page.evaluate(
          ([length, words]) => {
            const data = new DataTransfer();
            const bytes = Uint8Array.from({ length: Math.min(length, 1 << 16) }, (_, i) => (i * 7919) % 256);
            const parts = words === "" ? [bytes] : [words.repeat(length)];
            data.items.add(new File(length === 0 ? [] : parts, "odd.yaml"));
            document.body.dispatchEvent(new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true }));
          },
          [size, content] as const,
        );
      for (const [size, content, told] of [
        [1000, "", /odd\.yaml line 1, column 1: this is not UTF-8|odd\.yaml line 1/],
        [50 << 20, "#", /larger than 256 kB/],
        [0, "", /the design is empty/],
        [1, "iron: { width: 44, thicknes: 4 }\n", /iron\.thicknes/],
      ] as const) {
        await actAndWait(page, () => drop(size, content));
        await expect.poll(() => refusal(page)).toMatch(told);
        expect(await page.title()).toBe("trestle-jack · lamplane");
        expect(await angleNow(page)).toBe("48");
      }
      await actAndWait(page, async () => {
        await angle(page).fill("50");
        await page.keyboard.press("Enter");
      });
      expect(await page.locator(".faults").isHidden()).toBe(true);
      await actAndWait(page, () => page.click("#undo"));
      expect(await angleNow(page)).toBe("48");
      expect(complaints).toEqual([]);
      await page.context().close();
    },
  );

  test(
    "a file that cannot be read, dropped on the page: a folder, or one that is gone",
    fault({ on: "the page", survives: "the sheet as it was; that the file cannot be read is told", needs }),
    async () => {
      const { page, complaints } = await openPage(browser, `${FILE_ADDRESS}#from=trestle-jack&bed.angle=48`);
      await page.evaluate(() => {
        Blob.prototype.text = () => Promise.reject(new DOMException("gone", "NotReadableError"));
        const data = new DataTransfer();
        data.items.add(new File(["iron:"], "folder"));
        document.body.dispatchEvent(new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true }));
      });
      await expect.poll(() => refusal(page)).toMatch(/folder: cannot be read/);
      expect(await page.title()).toBe("trestle-jack · lamplane");
      expect(await angleNow(page)).toBe("48");
      expect(complaints).toEqual([]);
      await page.context().close();
    },
  );

  test(
    "no storage, no clipboard and no history to write to",
    fault({ on: "the page", survives: "the sheet draws and follows", needs }),
    async () => {
      const context = await browser.newContext({ viewport: { width: 1440, height: 1000 } });
      await context.addInitScript(() => {
        const refuse = () => {
          throw new DOMException("refused", "SecurityError");
        };
        for (const name of ["localStorage", "sessionStorage", "indexedDB", "caches", "cookieStore"])
          Object.defineProperty(window, name, { get: refuse });
        Object.defineProperty(navigator, "clipboard", { value: undefined });
        Object.defineProperty(document, "cookie", { get: refuse, set: refuse });
        history.replaceState = refuse;
        history.pushState = refuse;
      });
      const page = await context.newPage();
      const errors: string[] = [];
      page.on("pageerror", ({ message }) => errors.push(message));
      await page.goto(FILE_ADDRESS);
      await showEverything(page);
      await actAndWait(page, async () => {
        await angle(page).fill("50");
        await page.keyboard.press("Enter");
      });
      expect(await angleNow(page)).toBe("50");
      await page.click("#share");
      expect(await page.locator(".share-address").inputValue()).toMatch(/^#from=apprentice-smoother\.yaml&text=/);
      await page.click("text=Copy the address");
      await expect.poll(() => page.locator(".share .status").textContent()).toMatch(/by hand/);
      expect(errors).toEqual([]);
      await context.close();
    },
  );

  describe(
    "the design file, while `lamplane view` follows",
    fault({
      on: "a followed file",
      survives: "the last good sheet; what is wrong is told; the server lives on and the sheet follows again",
      needs,
    }),
    () => {
      const folder = mkdtempSync(join(tmpdir(), "lamplane-followed-faults-"));
      const file = join(folder, "plane.yaml");
      const link = join(folder, "linked.yaml");
      const design = (degrees: number) =>
        `# ours\niron: { width: 48, thickness: 3.6 }\nbed: { angle: ${degrees} } # sawn so\n`;
      let server: ViewServer;
      let linked: ViewServer;
      let watched: Watched;
      beforeAll(async () => {
        writeFileSync(file, design(47));
        symlinkSync("plane.yaml", link);
        server = await startViewServer({ page: PAGE, file, port: 0 });
        watched = await openPage(browser, server.address);
      });
      afterAll(async () => {
        await watched?.page.context().close();
        await server?.close();
        await linked?.close();
        rmSync(folder, { recursive: true, force: true });
      });
      const shows = (degrees: number) => expect.poll(() => angleNow(watched.page)).toBe(String(degrees));
      const told = (what: RegExp) => expect.poll(() => refusal(watched.page)).toMatch(what);
      const nothingTold = () => expect.poll(() => watched.page.locator(".faults").isHidden()).toBe(true);

      test("is replaced by another", async () => {
        writeFileSync(`${file}~`, design(48));
        renameSync(`${file}~`, file);
        await shows(48);
        await nothingTold();
      });
      test("is cut off half-way, then written whole", async () => {
        writeFileSync(file, design(49).slice(0, 30));
        await told(/plane\.yaml line 2, column \d+/);
        await shows(48);
        writeFileSync(file, design(49));
        await shows(49);
        await nothingTold();
      });
      test("is deleted, changed on the sheet meanwhile, and brought back as it was", async () => {
        rmSync(file);
        await told(/no such file.*keeps what it showed last/);
        await shows(49);
        const { page } = watched;
        await angle(page).fill("51");
        await page.keyboard.press("Enter");
        await shows(51);
        await page.click("#write-back");
        await expect.poll(() => page.locator(".title-block .status").textContent()).toMatch(/Nothing was written/);
        await page.click("#undo");
        await shows(49);
        writeFileSync(file, design(49));
        await nothingTold();
        await shows(49);
      });
      test("is made invalid, looked at anew, and mended", async () => {
        writeFileSync(file, design(900));
        await told(/bed\.angle: read 900; allowed: 35° to 65°/);
        await shows(49);
        writeFileSync(file, "\0\0\0");
        await told(/not UTF-8/);
        writeFileSync(file, design(50));
        await shows(50);
        await nothingTold();
      });
      test("is made invalid, or deleted, while the sheet shows an example: undo leads to the file as it was read last", async () => {
        const { page } = watched;
        const spoil = [() => writeFileSync(file, "iron: {"), () => rmSync(file)];
        for (const [i, spoiled] of spoil.entries()) {
          await actAndWait(page, async () => {
            await angle(page).fill(String(56 + i));
            await page.keyboard.press("Enter");
          });
          await actAndWait(page, () => page.click("[data-example=trestle-jack]"));
          expect(await page.title()).toBe("trestle-jack · lamplane");
          spoiled();
          await actAndWait(page, () => page.click("#undo"));
          await shows(56 + i);
          await told(/line 1|no such file/);
          await expect.poll(() => page.title()).toBe("plane · lamplane");
          await page.click("#write-back");
          await expect.poll(() => page.locator(".title-block .status").textContent()).toMatch(/Nothing was written/);
          await actAndWait(page, () => page.click("#undo"));
          writeFileSync(file, design(50));
          await nothingTold();
          await shows(50);
        }
      });
      test("is written back while another figure is typed: that one stays on the sheet, and out of the file", async () => {
        const { page } = watched;
        let letOn = () => {};
        const held = new Promise<void>((resolve) => {
          letOn = resolve;
        });
        await page.route("**/followed/design", async (route) => {
          if (route.request().method() === "PUT") await held;
          await route.continue();
        });
        const type = (degrees: number) =>
          actAndWait(page, async () => {
            await angle(page).fill(String(degrees));
            await page.keyboard.press("Enter");
          });
        await type(58);
        const asked = page.waitForRequest((request) => request.method() === "PUT");
        await page.click("#write-back");
        await asked;
        await type(59);
        letOn();
        await expect.poll(() => page.locator(".title-block .status").textContent()).toMatch(/now holds these figures/);
        expect(readFileSync(file, "utf8")).toBe(design(58));
        await expect.poll(() => page.url()).toContain("bed.angle=59");
        await shows(59);
        await page.unroute("**/followed/design");
        await page.click("#write-back");
        await expect.poll(() => readFileSync(file, "utf8")).toBe(design(59));
        await expect.poll(() => page.url()).not.toContain("bed.angle");
      });
      test("changes a hundred times without a pause", async () => {
        for (let i = 0; i < 100; i++) {
          writeFileSync(file, i % 3 === 1 ? "iron: {" : design(40 + (i % 10)));
          await new Promise((resolve) => setTimeout(resolve, i % 10)); // ms: some within one reading, some apart
        }
        writeFileSync(file, design(53));
        await shows(53);
        await nothingTold();
      });
      test("is lost with the server, and found with the next at the same address", async () => {
        const { port, pathname } = new URL(server.address);
        await server.close();
        await expect.poll(() => watched.page.locator(".title-block .status").textContent()).toMatch(/does not answer/);
        await shows(53);
        writeFileSync(file, design(54));
        server = await startViewServer({ page: PAGE, file, port: Number(port), secret: pathname.slice(1, -1) });
        await shows(54);
      });
      test("is a symbolic link: what it leads to is followed and written, and it stays a link", async () => {
        linked = await startViewServer({ page: PAGE, file: link, port: 0 });
        const { page, complaints } = await openPage(browser, linked.address);
        await actAndWait(page, async () => writeFileSync(file, design(55)));
        expect(await angleNow(page)).toBe("55");
        await actAndWait(page, async () => {
          await angle(page).fill("56");
          await page.keyboard.press("Enter");
        });
        await page.click("#write-back");
        await expect.poll(() => readFileSync(file, "utf8")).toBe(design(56));
        expect(readlinkSync(link)).toBe("plane.yaml");
        expect(complaints).toEqual([]);
        await page.context().close();
      });
    },
  );
});
