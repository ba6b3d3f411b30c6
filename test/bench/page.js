// The page's timings in a real browser: first picture, redraws while a number is stepped, sizes. Measured in the page, printed here.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { chromium } from "playwright-core";

const PAGE = fileURLToPath(new URL("../../packages/viewer/dist", import.meta.url));
const CHROMIUM = "/usr/bin/chromium";
// As on a machine without a graphics processor: the page is put together by the main processor, only 3D is drawn through SwiftShader.
const FLAGS = ["--no-sandbox", "--disable-quic", "--enable-unsafe-swiftshader"];
const COLD_RUNS = 5;
const STEPS = 60;
const BETWEEN = 60; // ms from one step to the next: a key held down repeats about as fast

const line = (what, times) => {
  const sorted = [...times].sort((a, b) => a - b);
  const ms = (t) => t.toFixed(1).padStart(9);
  console.log(
    `${what.padEnd(58)}${ms(sorted[sorted.length >> 1])} ms  (${ms(sorted[0]).trim()} to ${ms(sorted.at(-1)).trim()})`,
  );
};

const sizes = readdirSync(PAGE).map((name) => {
  const bytes = readFileSync(`${PAGE}/${name}`);
  return `${name} ${Math.round(bytes.length / 1000)} kB (${Math.round(gzipSync(bytes).length / 1000)} kB gzip)`;
});
console.log(`\npage: ${sizes.join(", ")}`);

async function timings() {
  const address = pathToFileURL(`${PAGE}/index.html`).href;
  const [elevation, body] = [[], []];
  for (let run = 0; run < COLD_RUNS; run++) {
    const browser = await launched();
    const page = await opened(browser, address);
    elevation.push(await firstEnd(page, "elevation"));
    body.push(await firstEnd(page, "solid"));
    await browser.close();
  }
  line("page: cold browser to the first elevation", elevation);
  line("page: cold browser to the first body", body);
  const browser = await launched();
  for (const example of ["apprentice-smoother", "figured-finisher", "workshop-jointer"]) {
    const page = await opened(browser, `${address}#from=${example}`);
    await page.evaluate(() => document.documentElement.setAttribute("data-exact", ""));
    const input = page.locator('.numbers [data-parameter="bed.angle"]').first();
    await input.focus();
    await page.evaluate(() => performance.clearMeasures());
    for (let i = 0; i < STEPS; i++) {
      await page.keyboard.press(i % 20 < 10 ? "ArrowUp" : "ArrowDown");
      await page.waitForTimeout(BETWEEN);
    }
    for (const what of ["elevation", "solid"])
      line(`page: ${example}, a step to its redrawn ${what === "solid" ? "body" : what}`, await durations(page, what));
    await page.close();
  }
  await browser.close();
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

if (!existsSync(CHROMIUM)) console.log("page: no timings without a browser; to have one: apt-get install chromium");
else await timings();
