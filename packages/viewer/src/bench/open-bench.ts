// The way from the sheet to the bench screens, whose script is fetched then.
import { html } from "../elements.ts";
import { loadScript, loadStyle } from "../load-script.ts";

declare global {
  /** Shows the bench screens; there once their script has run. */
  var startBench: ((page: HTMLElement) => Promise<void>) | undefined;
}

export async function openBench(page: HTMLElement): Promise<void> {
  try {
    await Promise.all([loadScript("bench.js"), loadStyle("bench.css")]);
    await globalThis.startBench!(page);
  } catch (error) {
    page.append(html("p", { role: "alert" }, (error as Error).message));
  }
}
