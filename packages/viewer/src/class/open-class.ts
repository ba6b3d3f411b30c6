// The way to the class screen, whose script is fetched then.
import { html } from "../elements.ts";
import { loadScript, loadStyle } from "../load-script.ts";

declare global {
  /** Shows the class screen; there once its script has run. */
  var startClass: ((page: HTMLElement) => Promise<void>) | undefined;
}

export async function openClass(page: HTMLElement): Promise<void> {
  try {
    await Promise.all([loadScript("class.js"), loadStyle("class.css")]);
    await globalThis.startClass!(page);
  } catch (error) {
    page.append(html("p", { role: "alert" }, (error as Error).message));
  }
}
