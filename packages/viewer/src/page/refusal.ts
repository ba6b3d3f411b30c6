// What was not understood: a value that was typed, or a file that was opened. The sheet keeps showing the last good design.
import type { Fault } from "@lamplane/parameters/design";
import { html } from "../elements.ts";
import { nameOf } from "../state/format.ts";

export interface Refusal {
  readonly element: HTMLElement;
  ofValue(path: string, why: string | undefined): void;
  /** What was opened, typed or found in the address and could not be used; told until something else is done. */
  ofDeed(words: readonly string[]): void;
  /** What is wrong with the file that is followed; told until it is mended. */
  ofFile(words: readonly string[]): void;
}

/** Faults in words, each with its place. */
export const faultWords = (faults: readonly Fault[]): string[] =>
  faults.map(({ file, line, column, path, message }) =>
    [line > 0 ? `${file} line ${line}, column ${column}` : "", path, message].filter((part) => part !== "").join(": "),
  );

const MOST = 8; // faults shown at once: the rest are told when these are mended

export function createRefusal(): Refusal {
  const list = html("ul");
  const element = html(
    "section",
    { class: "refusal", role: "alert", "aria-label": "Not understood", hidden: true },
    list,
  );
  let [ofFile, ofDeed, ofValue]: [readonly string[], readonly string[], string | undefined] = [[], [], undefined];
  const show = () => {
    const lines = [...(ofValue === undefined ? [] : [ofValue]), ...shortened(ofDeed), ...shortened(ofFile)];
    list.replaceChildren(...lines.map((line) => html("li", {}, line)));
    element.hidden = lines.length === 0;
  };
  return {
    element,
    ofValue(path, why) {
      const words = why === undefined ? undefined : `${nameOf(path)}: ${why}`;
      if (words === ofValue) return;
      ofValue = words;
      show();
    },
    ofDeed(words) {
      if (words.length === 0 && ofDeed.length === 0) return;
      ofDeed = words;
      show();
    },
    ofFile(words) {
      if (words.length === 0 && ofFile.length === 0) return;
      ofFile = words;
      show();
    },
  };
}

const shortened = (words: readonly string[]): readonly string[] =>
  words.length > MOST ? [...words.slice(0, MOST), `and ${words.length - MOST} more`] : words;
