// The plane that the page was built with: the picture of a page that opens on its first example, before any worker has started.
import { FIRST_SHOWN } from "../protocol/build-steps.ts";
import type { SheetPlane } from "../protocol/sheet-data.ts";
import { EXAMPLES } from "../state/examples.ts";
import type { SheetState } from "../state/store.ts";

/** JSON of `worker/opening-plane.ts`, computed by the build. */
declare const OPENING_PLANE: string;
const text = OPENING_PLANE;

/** Undefined where the page opens on anything else. */
export function embeddedPlane({ origin, changes, stage }: SheetState): SheetPlane | undefined {
  const isOpening = origin.kind === "example" && origin.name === Object.keys(EXAMPLES)[0];
  return isOpening && changes.size === 0 && stage === FIRST_SHOWN ? JSON.parse(text) : undefined;
}

/** Whether a worker has computed just that plane. */
export const isEmbeddedPlane = (plane: SheetPlane): boolean => JSON.stringify(plane) === text;
