// The title block: what is drawn, at which scale, in which unit, and how it is shared.
import { formatScale, toMillimetres } from "@lamplane/parameters/units";
import { html } from "../elements.ts";
import type { SheetPlane } from "../protocol/sheet-data.ts";
import { formatOnDrawing } from "../state/format.ts";
import { TITLE_BLOCK } from "../words/page.ts";
import { SHARE } from "../words/share.ts";

export interface TitleBlock {
  readonly element: HTMLElement;
  show(plane: SheetPlane, perMm: number | undefined): void;
  say(words: string): void;
}

const CSS_PIXELS_PER_MM = 96 / toMillimetres(1, "in"); // CSS Values 4: 1in is 96px

export function createTitleBlock(share: () => void): TitleBlock {
  const cell = (label: string) => {
    const value = html("dd");
    return { value, pair: html("div", {}, html("dt", {}, label), value) };
  };
  const [name, units, scale, size, revision] = TITLE_BLOCK.labels.map(cell) as unknown as [
    Cell,
    Cell,
    Cell,
    Cell,
    Cell,
  ];
  const sharing = html("button", { type: "button", id: "share", title: SHARE.openHelp }, SHARE.open);
  sharing.addEventListener("click", share);
  const status = html("p", { class: "status", role: "status", "aria-live": "polite" });
  const revisionText = html("span");
  revision.value.append(revisionText, sharing);
  const element = html(
    "footer",
    { class: "title-block" },
    html("dl", {}, ...[name, units, scale, size, revision].map(({ pair }) => pair)),
    status,
  );
  return {
    element,
    say: (words) => {
      status.textContent = words;
    },
    show({ design, figures }, perMm) {
      name.value.textContent = design.name;
      units.value.textContent =
        design.units === "mm" ? TITLE_BLOCK.inMillimetres : TITLE_BLOCK.inInches(design.shop.smallestFraction);
      scale.value.textContent = perMm === undefined ? "" : scaleText(perMm / CSS_PIXELS_PER_MM);
      const style = design;
      const sizes = [design.body.length, figures.bodyWidth ?? 0, design.body.height];
      size.value.textContent = `${sizes.map((mm) => formatOnDrawing(mm, "mm", style)).join(" × ")}${style.units === "mm" ? " mm" : ""}`;
      revisionText.textContent = shortHash(JSON.stringify(design));
    },
  };
}

interface Cell {
  readonly value: HTMLElement;
  readonly pair: HTMLElement;
}

const scaleText = (scale: number): string => formatScale(scale, " : ", "scaled");

/** Eight signs that differ wherever two designs differ, whatever they began from (FNV-1a, 32 bits). */
function shortHash(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return hash.toString(16).padStart(8, "0");
}
