// The plane that a page opens on, as the worker would compute it: the build writes it into the page, whose first picture then waits for no worker.
import { asBuiltPlane } from "@lamplane/bench";
import { readDesign } from "@lamplane/parameters/design";
import { FIRST_SHOWN } from "../protocol/build-steps.ts";
import type { SheetPlane } from "../protocol/sheet-data.ts";
import { EXAMPLES } from "../state/examples.ts";
import { faultTexts } from "../state/fault-texts.ts";
import { FILES } from "../words/page.ts";
import { sheetPlane } from "./sheet-plane.ts";

/** @throws Error with the faults of the first example, should it have any */
export function openingPlane(): SheetPlane {
  const [name, text] = Object.entries(EXAMPLES)[0]!;
  const reading = readDesign(text, `${name}.yaml`, { open: () => ({ problem: FILES.shop }) });
  if (!reading.ok) throw new Error(faultTexts(reading.faults).join("\n"));
  return sheetPlane(reading.design, asBuiltPlane(reading.design), FIRST_SHOWN);
}
