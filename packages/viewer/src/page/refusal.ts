// What was not understood: a value that was typed, or a file that was opened. The sheet keeps showing the last good design.
import type { Fault } from "@lamplane/parameters/design";
import { nameOf } from "../state/format.ts";
import { html } from "./elements.ts";

export interface Refusal {
  readonly element: HTMLElement;
  ofValue(path: string, why: string | undefined): void;
  ofDesign(faults: readonly Fault[]): void;
}

const MOST = 8; // faults shown at once: the rest are told when these are mended

export function createRefusal(): Refusal {
  const list = html("ul");
  const element = html(
    "section",
    { class: "refusal", role: "alert", "aria-label": "Not understood", hidden: true },
    list,
  );
  let [ofDesign, ofValue]: [string[], string | undefined] = [[], undefined];
  const show = () => {
    const lines = [...(ofValue === undefined ? [] : [ofValue]), ...ofDesign];
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
    ofDesign(faults) {
      if (faults.length === 0 && ofDesign.length === 0) return;
      ofDesign = faults
        .slice(0, MOST)
        .map(({ file, line, column, path, message }) =>
          [line > 0 ? `${file} line ${line}, column ${column}` : "", path, message]
            .filter((part) => part !== "")
            .join(": "),
        );
      if (faults.length > MOST) ofDesign.push(`and ${faults.length - MOST} more`);
      show();
    },
  };
}
