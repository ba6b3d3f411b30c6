// What was not understood of a file or an address. The sheet keeps showing the last good design.
import { html } from "../elements.ts";
import { SHEET } from "../words/page.ts";

export interface FaultList {
  readonly element: HTMLElement;
  /** What was opened, typed or found in the address and could not be used; shown until something else is done. */
  showActionFaults(words: readonly string[]): void;
  /** What is wrong with the file that is followed; shown until it is mended. */
  showFileFaults(words: readonly string[]): void;
}

const MOST = 8; // faults shown at once: the rest are shown when these are mended

export function createFaultList(): FaultList {
  const list = html("ul");
  const element = html("section", { class: "faults", role: "alert", "aria-label": SHEET.faults, hidden: true }, list);
  let [ofFile, ofAction]: [readonly string[], readonly string[]] = [[], []];
  const show = () => {
    const lines = [...limitLines(ofAction), ...limitLines(ofFile)];
    list.replaceChildren(...lines.map((line) => html("li", {}, line)));
    element.hidden = lines.length === 0;
  };
  return {
    element,
    showActionFaults(words) {
      if (words.length === 0 && ofAction.length === 0) return;
      ofAction = words;
      show();
    },
    showFileFaults(words) {
      if (words.length === 0 && ofFile.length === 0) return;
      ofFile = words;
      show();
    },
  };
}

const limitLines = (words: readonly string[]): readonly string[] =>
  words.length > MOST ? [...words.slice(0, MOST), `and ${words.length - MOST} more`] : words;
