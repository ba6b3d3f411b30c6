// A real browser for the tests of the page: Debian's Chromium, headless, drawing 3D in software. Without one they are skipped.
import { fileURLToPath, pathToFileURL } from "node:url";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { CHROMIUM, CHROMIUM_FLAGS, TO_GET_CHROMIUM } from "./chromium.js";

if (CHROMIUM === undefined) {
  if (process.env.CI === "true") throw new Error(TO_GET_CHROMIUM);
  console.warn(`tests of the page are skipped: ${TO_GET_CHROMIUM}`);
}
/** For `describe.skipIf`: no browser here, and none demanded. */
export const hasNoBrowser = CHROMIUM === undefined;

export { buildPage } from "./built.ts";

/** Folder of the page as built. */
export const PAGE = fileURLToPath(new URL("../../packages/viewer/dist", import.meta.url));
/** Address of the page as a file: no server at all. */
export const FILE_ADDRESS = pathToFileURL(`${PAGE}/index.html`).href;

let shared: Promise<Browser> | undefined;

/** The browser of all test files that a process runs; it ends with the process. */
export async function launchBrowser(): Promise<Browser> {
  const isGone = shared !== undefined && !(await shared).isConnected();
  if (isGone || shared === undefined) shared = chromium.launch({ executablePath: CHROMIUM!, args: CHROMIUM_FLAGS });
  return shared;
}

/** Closes what a test file has left open; the browser stays for the next file. */
export async function closePages(browser: Browser | undefined): Promise<void> {
  await Promise.all((browser?.contexts() ?? []).map((context) => context.close()));
}

/** A page, and everything that it complained of or asked for. */
export interface Watched {
  readonly page: Page;
  readonly complaints: string[];
  readonly requests: string[];
}

/** Where no graphics processor puts the page together, Chromium itself reads every 3D picture back, and says that it is slow. */
const BROWSERS_OWN = /GL Driver Message.*GPU stall due to ReadPixels/;

const NO_BODY = ".body-view { display: none; }";

type OpeningOptions = BrowserContextOptions & { readonly asNewcomer?: boolean; readonly withoutBody?: boolean };

/**
 * Nothing moves from step to step unless a test asks for it (`reducedMotion: "no-preference"`).
 * @param options.asNewcomer leaves the page as it opens; otherwise everything on it is opened and shown first
 * @param options.withoutBody shows every number and no body, whose picture takes longer than all the rest
 */
export async function openPage(
  browser: Browser,
  address: string,
  { asNewcomer = false, withoutBody = false, ...options }: OpeningOptions = {},
): Promise<Watched> {
  const context = await browser.newContext({
    viewport: { width: 1440, height: 1000 },
    reducedMotion: "reduce",
    ...options,
  });
  const page = await context.newPage();
  const watched: Watched = { page, complaints: [], requests: [] };
  page.on("console", (message) => {
    if ((message.type() === "error" || message.type() === "warning") && !BROWSERS_OWN.test(message.text()))
      watched.complaints.push(message.text());
  });
  page.on("pageerror", (error) => watched.complaints.push(error.message));
  page.on("request", (request) => watched.requests.push(request.url()));
  await page.goto(address);
  if (withoutBody) await page.addStyleTag({ content: NO_BODY });
  if (asNewcomer || withoutBody) await waitForRedraw(page, { ...NOTHING, solid: -1 });
  if (withoutBody) await page.locator(".all-dimensions").click();
  if (asNewcomer || withoutBody) return watched;
  await showEverything(page);
  return watched;
}

/** Every number of the elevation, the seldom commands, and the body, which is fetched when it comes into view. */
export async function showEverything(page: Page, withoutBody = false): Promise<void> {
  if (withoutBody) await page.addStyleTag({ content: NO_BODY });
  await page.locator(".all-dimensions[aria-pressed=false]").click();
  await page.locator("#more > summary").click();
  if (!withoutBody) await page.locator(".body-view").scrollIntoViewIfNeeded();
  await waitForRedraw(page, withoutBody ? { ...NOTHING, solid: -1 } : NOTHING);
  await page.evaluate(() => scrollTo(0, 0));
}

/** Opens an address in a page that other tests have used, as a first visit finds it; a page of its own takes twice as long. */
export async function visit(
  { page, complaints, requests }: Watched,
  address: string,
  { withoutBody = false } = {},
): Promise<void> {
  await page.evaluate(() => {
    localStorage.clear();
    sessionStorage.clear();
  });
  await page.goto("about:blank"); // or another hash of the same address would keep what is drawn
  complaints.length = 0;
  requests.length = 0;
  await page.goto(address);
  await showEverything(page, withoutBody);
}

const DRAWN = ["elevation", "words", "solid"] as const;
type Counts = Readonly<Record<(typeof DRAWN)[number], number>>;

const NOTHING: Counts = { elevation: 0, words: 0, solid: 0 };

/** How often the page has redrawn its elevation, the words beside it, or its body. */
export const countRedraws = (page: Page, what: keyof Counts): Promise<number> =>
  page.evaluate((name) => performance.getEntriesByName(name).length, `lamplane ${what}`);

/** Waits until elevation, words and body have been drawn more often than before. */
export async function waitForRedraw(page: Page, before: Counts = NOTHING): Promise<void> {
  await page.waitForFunction(
    (counts) =>
      Object.entries(counts).every(([what, n]) => performance.getEntriesByName(`lamplane ${what}`).length > n),
    before,
  );
}

/** Does something to the page and waits until everything on it has followed. */
export async function actAndWait(page: Page, act: () => Promise<unknown>): Promise<void> {
  const [elevation, words, solid] = await Promise.all(DRAWN.map((what) => countRedraws(page, what)));
  await act();
  await waitForRedraw(page, { elevation: elevation!, words: words!, solid: solid! });
}

/** Does something and waits for the drawing and its words; the body may be out of sight. */
export async function actAndDraw(page: Page, act: () => Promise<unknown>): Promise<void> {
  const [elevation, words] = await Promise.all([countRedraws(page, "elevation"), countRedraws(page, "words")]);
  await act();
  await waitForRedraw(page, { elevation, words, solid: -1 });
}
