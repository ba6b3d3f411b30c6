// `pnpm gallery`: the pictures of README.md and gallery.md, made by the command and the page themselves. Wants Chromium and pdftoppm.
import { execFileSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { CHROMIUM, CHROMIUM_FLAGS, TO_GET_CHROMIUM } from "../test/support/chromium.js";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const GALLERY = here("gallery");
const PAGE = new URL("../packages/viewer/dist/index.html", import.meta.url).href;
const DESIGN = here("apprentice-smoother.yaml");
const SHOP = here("shops/hobby-router.yaml");
const CLASS = ["school-roster.yaml", "school-smoother.yaml"].map((file) => here(`class/${file}`));
/** What a picture may weigh, bytes. */
const HEAVIEST = 200_000;
const WHOLE_PAGE = [0, 0, 100, 100];
/** Pages of the papers, each found by words that only it carries; the crop is in hundredths of the page: left, top, width, height. */
const PAGES = [
  { name: "layout-core", file: "layout.pdf", words: "Core, seen from", dpi: 100, crop: [0, 3, 100, 87] },
  { name: "layout-cheek", file: "layout.pdf", words: "Right cheek, inside up", dpi: 100, crop: [0, 3, 100, 64] },
  { name: "traveller-glue-up", file: "traveller.pdf", words: "10 Glue up", dpi: 100, crop: [0, 0, 100, 95] },
  { name: "traveller-jigs", file: "traveller.pdf", words: "6 Rout the recess", dpi: 100, crop: [0, 0, 100, 93] },
  { name: "card", file: "card.pdf", words: "Key figures", dpi: 75, crop: WHOLE_PAGE },
  { name: "nested", file: "nested.pdf", words: "Sheet 1", dpi: 75, crop: [0, 0, 100, 92] },
];
const CLASS_PAGES = [
  { name: "class-set-up", file: "class.pdf", words: "Work the pages in order", dpi: 75, crop: [0, 0, 100, 60] },
  { name: "class-board", file: "class.pdf", words: "short beech: 560", dpi: 75, crop: WHOLE_PAGE },
];
/** The traveller's steps, a small page each. */
const STEP_PAGES = [
  "Choose the wood",
  "Measure the iron",
  "Saw and mill core and cheeks",
  "Cut ramp and bed",
  "True the bed",
  "Rout the recess",
  "Bore the pin hole",
  "Make wedge and cross pin",
  "Rehearse the glue-up dry",
  "Glue up",
  "True the sole",
  "Open the mouth",
  "Trim and shape",
  "Oil it, set it, take the first shaving",
  "Look again after a season",
].map((title, i) => ({
  name: `step-${String(i + 1).padStart(2, "0")}`,
  file: "traveller.pdf",
  words: `${i + 1} ${title}`,
  dpi: 60,
  crop: WHOLE_PAGE,
}));

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
  const info = poppler("pdfinfo", "-f", page, "-l", page, pdf);
  const [, width, height] = /Page +\d+ size: +([\d.]+) x ([\d.]+)/.exec(info).map(Number);
  return /Page +\d+ rot: +(90|270)/.test(info) ? [height, width] : [width, height];
}

function drawPage(folder, { name, file, words, dpi, crop }) {
  const pdf = join(folder, file);
  const page = pageWith(pdf, words);
  const [width, height] = pageSize(pdf, page).map((points) => (points / 72) * dpi);
  const [x, y, w, h] = crop.map((part, i) => String(Math.round(((i % 2 ? height : width) * part) / 100)));
  const where = ["-f", page, "-l", page, "-x", x, "-y", y, "-W", w, "-H", h];
  poppler("pdftoppm", "-png", "-gray", "-r", String(dpi), ...where, "-singlefile", pdf, join(GALLERY, name));
}

const picture = (name) => join(GALLERY, `${name}.png`);
const DESKTOP = { width: 1280, height: 900 };
const PHONE = { width: 390, height: 844 };

/** Screens of the page: each opens at an address, is brought to what it shows, and is taken whole or in part. */
const SCREENS = [
  { name: "sheet", address: "#from=apprentice-smoother", size: DESKTOP },
  { name: "sheet-phone", address: "#from=apprentice-smoother", size: PHONE },
  { name: "bench-phone", address: "#bench&from=apprentice-smoother&step=cuts", size: PHONE },
  {
    name: "body-apart",
    address: "#from=apprentice-smoother",
    size: DESKTOP,
    part: ".field-body .board",
    async prepare(page) {
      await page.locator("#open-body").scrollIntoViewIfNeeded();
      await page.waitForFunction(() => performance.getEntriesByName("lamplane solid").length > 0);
      await page.locator("#open-body").fill("55");
    },
  },
  { name: "mouth", address: "#from=apprentice-smoother", size: DESKTOP, part: ".field-mouth" },
  {
    name: "router-path",
    address: "#from=apprentice-smoother",
    size: DESKTOP,
    async prepare(page) {
      await page.locator("#more > summary").click();
      await page.setInputFiles("#open-file", [carriedDesign]);
      await page.waitForFunction(() => document.title.includes("apprentice"));
      await page.click("#router");
      await page.waitForSelector("dialog.router[data-drawn]");
      await page.locator(".router-slider").fill("60");
    },
  },
  {
    name: "class-page",
    address: "#class",
    size: DESKTOP,
    async prepare(page) {
      await page.locator("#open-roster").setInputFiles(CLASS);
      await page.locator(".class-planes").waitFor();
    },
  },
];

/** A screen is drawn when its typefaces are there and what moves has come to rest. */
async function waitForRest(page) {
  await page.evaluate(() => document.fonts.ready);
  await page.waitForTimeout(1500);
}

async function drawScreens() {
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: CHROMIUM_FLAGS });
  try {
    for (const { name, address, size, part, prepare } of SCREENS) {
      const page = await browser.newPage({ viewport: size, hasTouch: size === PHONE });
      await page.goto(`${PAGE}${address}`);
      await waitForRest(page);
      await prepare?.(page);
      await waitForRest(page);
      await (part ? page.locator(part) : page).screenshot({ path: picture(name) });
      await page.close();
    }
  } finally {
    await browser.close();
  }
}

if (CHROMIUM === undefined) throw new Error(TO_GET_CHROMIUM);
const folder = mkdtempSync(join(tmpdir(), "lamplane-gallery-"));
/** The example with router, cutters and sheets of the shop in its own file. */
const carriedDesign = join(folder, "apprentice-smoother.yaml");
try {
  mkdirSync(GALLERY, { recursive: true });
  const lamplane = (...args) => execFileSync(process.execPath, [here("../packages/cli/bin/lamplane.js"), ...args]);
  lamplane("build", DESIGN, "--shop", SHOP, "--out", folder);
  lamplane("class", CLASS[0], "--out", join(folder, "class"), "--plan");
  const shop = readFileSync(SHOP, "utf8");
  writeFileSync(carriedDesign, `${readFileSync(DESIGN, "utf8")}\n${shop.slice(shop.indexOf("router:"))}`);
  const pack = join(folder, "apprentice-smoother");
  for (const page of [...PAGES, ...STEP_PAGES]) drawPage(pack, page);
  for (const page of CLASS_PAGES) drawPage(join(folder, "class"), page);
  copyFileSync(join(pack, "plots/mouth-over-life.svg"), join(GALLERY, "mouth-over-life.svg"));
  await drawScreens();
} finally {
  rmSync(folder, { recursive: true });
}
for (const file of readdirSync(GALLERY)) {
  const { size } = statSync(join(GALLERY, file));
  if (size > HEAVIEST) throw new Error(`${file} has ${size} bytes; at most ${HEAVIEST} may be`);
  console.log(file, size);
}
