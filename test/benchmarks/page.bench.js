// The page in a real browser: first picture, redraws while a number is stepped, sizes. Measured in the page, printed here.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { chromium } from "playwright-core";
import { summary } from "./measure.js";

export const title = "The page: first picture and redraws";

const PAGE = fileURLToPath(new URL("../../packages/viewer/dist", import.meta.url));
const CHROMIUM = "/usr/bin/chromium";
// As on a machine without a graphics processor: the page is put together by the main processor, only 3D is drawn through SwiftShader.
const FLAGS = ["--no-sandbox", "--disable-quic", "--enable-unsafe-swiftshader"];
const COLD_RUNS = 5;
const STEPS = 60;
const BETWEEN = 60; // ms from one step to the next: a key held down repeats about as fast
const SHOWN = ["apprentice-smoother", "figured-finisher", "workshop-jointer"];

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
  return [{ of: "from a cold browser", rows: await cold(address), notes }, ...(await redraws(address))];
}

const sizes = () =>
  readdirSync(PAGE)
    .map((name) => {
      const bytes = readFileSync(`${PAGE}/${name}`);
      return `${name} ${Math.round(bytes.length / 1000)} kB (${Math.round(gzipSync(bytes).length / 1000)} kB gzip)`;
    })
    .join(", ");

async function cold(address) {
  const [elevation, body] = [[], []];
  for (let run = 0; run < COLD_RUNS; run++) {
    const browser = await launched();
    const page = await opened(browser, address);
    elevation.push(await firstEnd(page, "elevation"));
    body.push(await firstEnd(page, "solid"));
    await browser.close();
  }
  return [
    { what: "to the first elevation", ...summary(elevation) },
    { what: "to the first body", ...summary(body) },
  ];
}

async function redraws(address) {
  const browser = await launched();
  const groups = [];
  for (const example of SHOWN) {
    const page = await opened(browser, `${address}#from=${example}`);
    await page.evaluate(() => document.documentElement.setAttribute("data-exact", ""));
    await page.locator('.numbers [data-parameter="bed.angle"]').first().focus();
    await page.evaluate(() => performance.clearMeasures());
    for (let i = 0; i < STEPS; i++) {
      await page.keyboard.press(i % 20 < 10 ? "ArrowUp" : "ArrowDown");
      await page.waitForTimeout(BETWEEN);
    }
    const rows = [
      { what: "a step of the bed angle to its redrawn elevation", ...summary(await durations(page, "elevation")) },
      { what: "the same to its notes and bench steps", ...summary(await durations(page, "words")) },
      { what: "the same to its redrawn body", ...summary(await durations(page, "solid")) },
    ];
    groups.push({ of: example, rows });
    await page.close();
  }
  await browser.close();
  return groups;
}

const launched = () => chromium.launch({ executablePath: CHROMIUM, args: FLAGS });

async function opened(browser, address) {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(address);
  await page.waitForFunction(() => performance.getEntriesByName("lamplane solid").length > 0);
  await page.waitForTimeout(500);
  return page;
}

const firstEnd = (page, what) =>
  page.evaluate((name) => {
    const [first] = performance.getEntriesByName(name);
    return first.startTime + first.duration;
  }, `lamplane ${what}`);

const durations = (page, what) =>
  page.evaluate((name) => performance.getEntriesByName(name).map(({ duration }) => duration), `lamplane ${what}`);
