// The page in a real browser beside its budgets: first load, first picture, redraws while a number is stepped, a pack. Printed here.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { chromium } from "playwright-core";
import { summary } from "./measure.js";
import { busiestTime, fetchedUntil, scriptTimes, timeUntil, traced } from "./script-time.js";

export const title = "The page: first picture, redraws, a pack";

const PAGE = fileURLToPath(new URL("../../packages/viewer/dist", import.meta.url));
const CHROMIUM = "/usr/bin/chromium";
// As on a machine without a graphics processor: the page is put together by the main processor, only 3D is drawn through SwiftShader.
const FLAGS = ["--no-sandbox", "--disable-quic", "--enable-unsafe-swiftshader"];
const COLD_RUNS = 5;
const SLOWER = 4; // a phone's processor beside a desk's
const STEPS = 40;
const BETWEEN = 60; // ms from one step to the next: a key held down repeats about as fast
const SHOWN = ["apprentice-smoother", "figured-finisher", "workshop-jointer"];
const PACKS = 3;

export async function measured() {
  const notes = [`sizes: ${sizes()}`];
  if (!existsSync(CHROMIUM))
    return [
      {
        of: "page",
        rows: [],
        notes: [...notes, "no timings without a browser; to have one: apt-get install chromium"],
      },
    ];
  const address = pathToFileURL(`${PAGE}/index.html`).href;
  return [await cold(address, notes), ...(await redraws(address)), await packs(address)];
}

const gzipped = (name) => gzipSync(readFileSync(`${PAGE}/${name}`)).length / 1000;
const kB = (size) => `${Math.round(size)} kB`;

const sizes = () =>
  readdirSync(PAGE)
    .map((name) => `${name} ${kB(readFileSync(`${PAGE}/${name}`).length / 1000)} (${kB(gzipped(name))} gzip)`)
    .join(", ");

/** What is fetched until the plane is drawn, and the time that it takes. */
async function cold(address, notes) {
  const [times, slow, script, fetched] = [[], [], [], new Set()];
  for (let run = 0; run < COLD_RUNS; run++)
    for (const [rate, list] of [
      [1, times],
      [SLOWER, slow],
    ]) {
      const browser = await launched();
      const page = await newPage(browser);
      const session = await page.context().newCDPSession(page);
      await session.send("Emulation.setCPUThrottlingRate", { rate });
      const events = await traced(browser, page, async () => {
        await page.goto(address);
        await drawn(page, "elevation");
      });
      if (rate === 1) script.push(timeUntil(events, "lamplane elevation"));
      for (const name of fetchedUntil(events, "lamplane elevation")) fetched.add(name);
      list.push(await firstEnd(page, "elevation"));
      await browser.close();
    }
  const first = [...fetched].filter((name) => existsSync(`${PAGE}/${name}`));
  const size = first.reduce((sum, name) => sum + gzipped(name), 0);
  return {
    of: "from a cold browser to the drawn plane (1.0 s wanted with a processor four times slower)",
    rows: [
      { what: "to the first elevation", ...summary(times) },
      { what: "  of that, script on all threads", ...summary(script) },
      { what: `the same, page's thread ${SLOWER} times slower`, ...summary(slow) },
    ],
    notes: [`first load (250 kB wanted): ${kB(size)} gzip in ${first.join(", ")}`, ...notes],
  };
}

/** Time by the clock, and what scripts and layout of it take of the processor: the second is the same on a busy machine. */
async function redraws(address) {
  const browser = await launched();
  const groups = [];
  for (const example of SHOWN) {
    const page = await opened(browser, `${address}#from=${example}`);
    await page.evaluate(() => document.documentElement.setAttribute("data-exact", ""));
    await page.locator('.numbers [data-parameter="bed.angle"]').first().focus();
    await page.evaluate(() => performance.clearMeasures());
    const events = await traced(browser, page, async () => {
      for (let i = 0; i < STEPS; i++) {
        await page.keyboard.press(i % 20 < 10 ? "ArrowUp" : "ArrowDown");
        await page.waitForTimeout(BETWEEN);
      }
    });
    const rows = [
      { what: "a step of the bed angle to its redrawn elevation", ...summary(await durations(page, "elevation")) },
      { what: "  of that, script (8 ms wanted)", ...summary(scriptTimes(events, "lamplane elevation", 0)) },
      { what: "the same to its notes and bench steps", ...summary(await durations(page, "words")) },
      { what: "the same to its redrawn body", ...summary(await durations(page, "solid")) },
      { what: "  of that, script (16 ms wanted)", ...summary(scriptTimes(events, "lamplane solid", 1)) },
    ];
    groups.push({ of: example, rows });
    await page.close();
  }
  await browser.close();
  return groups;
}

/** From the click to the file, on a page that has not fetched what makes it. */
async function packs(address) {
  const [times, script] = [[], []];
  for (let run = 0; run < PACKS; run++) {
    const browser = await launched();
    const page = await newPage(browser);
    await page.goto(address);
    await drawn(page, "words");
    const events = await traced(browser, page, async () => {
      const begin = performance.now();
      await Promise.all([page.waitForEvent("download"), page.locator(".whole-pack").click()]);
      times.push(performance.now() - begin);
    });
    script.push(busiestTime(events));
    await browser.close();
  }
  return {
    of: "a pack",
    rows: [
      { what: "from the click to the file (4 s wanted)", ...summary(times) },
      { what: "  of that, script", ...summary(script) },
    ],
    notes: [`script that makes it (700 kB wanted): ${kB(gzipped("pack.js"))} gzip`],
  };
}

const launched = () => chromium.launch({ executablePath: CHROMIUM, args: FLAGS });
const newPage = (browser) => browser.newPage({ viewport: { width: 1440, height: 900 } });

const drawn = (page, what) =>
  page.waitForFunction((name) => performance.getEntriesByName(name).length > 0, `lamplane ${what}`);

async function opened(browser, address) {
  const page = await newPage(browser);
  await page.goto(address);
  await page.locator(".body-view").scrollIntoViewIfNeeded();
  await drawn(page, "solid");
  await page.evaluate(() => scrollTo(0, 0));
  await page.waitForTimeout(1500); // plots and guide come late, and once
  return page;
}

const firstEnd = (page, what) =>
  page.evaluate((name) => {
    const [first] = performance.getEntriesByName(name);
    return first.startTime + first.duration;
  }, `lamplane ${what}`);

const durations = (page, what) =>
  page.evaluate((name) => performance.getEntriesByName(name).map(({ duration }) => duration), `lamplane ${what}`);
