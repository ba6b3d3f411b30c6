// The layout pictures of a plane, in the order of the work; a picture more is one more entry of the list.
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Picture } from "../picture/picture.ts";
import { bedFaceLayout } from "./bed-face.ts";
import { cheekLayout } from "./cheek.ts";
import { coreLayout } from "./core.ts";
import { pinLayout } from "./pin.ts";
import { wedgeLayout } from "./wedge.ts";

const LAYOUTS: readonly ((e: Elevation) => Picture)[] = [
  coreLayout,
  bedFaceLayout,
  (e) => cheekLayout(e, "right"),
  (e) => cheekLayout(e, "left"),
  wedgeLayout,
  pinLayout,
];

/** Every picture to be pasted on wood, true size, as the pieces are before glue-up (the blank), whatever the design's stage. */
export const layoutPictures = (e: Elevation): Picture[] => LAYOUTS.map((layout) => layout(e));
