// `pnpm gallery`: the README's pictures, made by the command and the page themselves. Wants Chromium and poppler's pdftoppm.
import { execFileSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { CHROMIUM, CHROMIUM_FLAGS, TO_GET_CHROMIUM } from "../test/support/chromium.js";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const GALLERY = here("gallery");
const PAGE = new URL("../packages/viewer/dist/index.html", import.meta.url).href;
const DESIGN = "apprentice-smoother";
/** What a README's picture may weigh, bytes. */
const HEAVIEST = 200_000;
/** Pages of the pack, by words that only they carry; the crop is in hundredths of the page: left, top, width, height. */
const PAGES = [
  { name: "layout-core", file: "layout.pdf", words: "Core, seen from", dpi: 100, crop: [0, 3, 100, 87] },
  { name: "layout-cheek", file: "layout.pdf", words: "Right cheek, inside up", dpi: 100, crop: [0, 3, 100, 64] },
  { name: "traveller-glue-up", file: "traveller.pdf", words: "10 Glue up", dpi: 100, crop: [0, 0, 100, 95] },
  { name: "traveller-jigs", file: "traveller.pdf", words: "6 Rout the recess", dpi: 100, crop: [0, 0, 100, 93] },
];

const poppler = (program, ...args) => execFileSync(program, args, { encoding: "utf8" });

/** The page's number on which the words stand. */
function pageWith(pdf, words) {
  const pages = poppler("pdftotext", "-layout", pdf, "-").split("\f");
  const at = pages.findIndex((text) => text.replace(/ +/g, " ").includes(words));
  if (at < 0) throw new Error(`${pdf} has no page with "${words}"`);
  return String(at + 1);
}

/** Size of a page in points, as it is turned. */
function pageSize(pdf, page) {
  const told = poppler("pdfinfo", "-f", page, "-l", page, pdf);
  const [, width, height] = /Page +\d+ size: +([\d.]+) x ([\d.]+)/.exec(told).map(Number);
  return /Page +\d+ rot: +(90|270)/.test(told) ? [height, width] : [width, height];
}

function drawPage(pack, { name, file, words, dpi, crop }) {
  const pdf = join(pack, file);
  const page = pageWith(pdf, words);
  const [width, height] = pageSize(pdf, page).map((points) => (points / 72) * dpi);
  const [x, y, w, h] = crop.map((part, i) => String(Math.round(((i % 2 ? height : width) * part) / 100)));
  const where = ["-f", page, "-l", page, "-x", x, "-y", y, "-W", w, "-H", h];
  poppler("pdftoppm", "-png", "-gray", "-r", String(dpi), ...where, "-singlefile", pdf, join(GALLERY, name));
}

/** The sheet as it opens, the body taken apart along its glue lines, and the mouth enlarged. */
async function drawViewer() {
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: CHROMIUM_FLAGS });
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 1080 } });
    await page.goto(`${PAGE}#from=${DESIGN}`);
    await settled(page);
    await page.screenshot({ path: join(GALLERY, "sheet.png") });
    await page.locator("#open-body").scrollIntoViewIfNeeded();
    await page.waitForFunction(() => performance.getEntriesByName("lamplane solid").length > 0);
    await page.locator("#open-body").fill("55");
    await settled(page);
    await page.locator(".field-body .board").screenshot({ path: join(GALLERY, "body-apart.png") });
    await page.locator(".field-mouth").screenshot({ path: join(GALLERY, "mouth.png") });
  } finally {
    await browser.close();
  }
}

/** Two pictures of the screen after all typefaces are there; the body eases into its place meanwhile. */
const settled = async (page) => {
  await page.evaluate(() => document.fonts.ready);
  await page.waitForTimeout(1500);
};

if (CHROMIUM === undefined) throw new Error(TO_GET_CHROMIUM);
const folder = mkdtempSync(join(tmpdir(), "lamplane-gallery-"));
try {
  mkdirSync(GALLERY, { recursive: true });
  const lamplane = here("../packages/cli/bin/lamplane.js");
  execFileSync(process.execPath, [lamplane, "build", here(`${DESIGN}.yaml`), "--out", folder]);
  const pack = join(folder, DESIGN);
  for (const page of PAGES) drawPage(pack, page);
  copyFileSync(join(pack, "plots/mouth-over-life.svg"), join(GALLERY, "mouth-over-life.svg"));
  await drawViewer();
} finally {
  rmSync(folder, { recursive: true });
}
for (const file of readdirSync(GALLERY)) {
  const { size } = statSync(join(GALLERY, file));
  if (size > HEAVIEST) throw new Error(`${file} has ${size} bytes; at most ${HEAVIEST} may be`);
  console.log(file, size);
}
