// The way to the router's path: its script and style are fetched when it is first wanted.
import { loadScript, loadStyle } from "../load-script.ts";

declare global {
  /** Opens the dialog; there once its script has run. */
  var openRouter: ((text: string) => void) | undefined;
}

/** @throws Error in words where the script cannot be had */
export async function openRouterPath(text: string): Promise<void> {
  await Promise.all([loadScript("router.js"), loadStyle("router.css")]);
  globalThis.openRouter!(text);
}
