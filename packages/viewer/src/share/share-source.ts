// What is shared of a plane, gathered before the script that shares it is fetched.
import { formatAngle, formatLength, formatValue } from "@lamplane/parameters/units";
import { loadScript, loadStyle } from "../load-script.ts";
import type { StageName } from "../protocol/build-steps.ts";
import type { SheetPlane } from "../protocol/sheet-data.ts";
import { designAddress } from "../state/address.ts";
import { CARD_FIGURES } from "../words/share.ts";
import type { openShareDialog } from "./share-dialog.ts";

export interface ShareSource {
  readonly name: string;
  readonly figures: readonly (readonly [label: string, value: string])[];
  /** Address of this page without what stands after #; undefined where nobody else can open it. */
  readonly page: string | undefined;
  /** From # on, the whole design file; undefined where it is too long for an address. */
  readonly whole: string | undefined;
  /** The same without comments and defaults. */
  readonly short: string | undefined;
  readonly body: Promise<HTMLCanvasElement | undefined>;
}

interface Shared {
  readonly plane: SheetPlane;
  /** Name of the design's file. */
  readonly file: string;
  readonly stage: StageName;
  readonly text: string;
  readonly shortText: string;
  readonly page: string | undefined;
  readonly body: Promise<HTMLCanvasElement | undefined>;
}

declare global {
  /** Opens the dialog; there once its script has run. */
  var openShare: typeof openShareDialog | undefined;
}

/** @throws Error in words where the script cannot be had */
export async function share({ plane, file, stage, text, shortText, page, body }: Shared): Promise<void> {
  await Promise.all([loadScript("share.js"), loadStyle("share.css")]);
  globalThis.openShare!({
    name: plane.design.name,
    figures: cardFigures(plane),
    page,
    whole: designAddress({ name: file, text }, stage),
    short: designAddress({ name: file, text: shortText }, stage),
    body,
  });
}

function cardFigures({ design, figures }: SheetPlane): ShareSource["figures"] {
  const length = (mm: number) => formatLength(mm, design);
  const known = (label: string, key: string, unit: string): ShareSource["figures"] =>
    figures[key] === undefined ? [] : [[label, formatValue(figures[key], unit, design)]];
  return [
    [CARD_FIGURES.iron, `${length(design.iron.width)} × ${length(design.iron.thickness)}`],
    [CARD_FIGURES.bed, formatAngle(design.bed.angle)],
    ...known(CARD_FIGURES.ramp, "rampAngle", "°"),
    [CARD_FIGURES.length, length(design.body.length)],
    ...known(CARD_FIGURES.width, "bodyWidth", "mm"),
    ...known(CARD_FIGURES.height, "bodyHeight", "mm"),
    [CARD_FIGURES.mouth, length(design.mouth.opening)],
    ...known(CARD_FIGURES.wedge, "wedgeAngle", "°"),
  ];
}
