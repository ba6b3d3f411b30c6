// Throat spacer: fills the throat at glue-up between bed and ramp, straddles the cross pin, and hangs by a flange from the blank's top.
// Its flanks have no clearance: they touch both blocks, and that sets the gap.

import { point } from "@lamplane/geometry";
import type { Elevation } from "../elevation/elevation.ts";
import { glueGap } from "../elevation/glue-gap.ts";
import { isPlacedByContact } from "../elevation/glue-up.ts";
import { formatBareLength, formatLength } from "../units.ts";
import { FLAT_PRINT, type JigResult, poseAsDrawn } from "./jig.ts";
import { cutEntry, nameLabel, noteEntry } from "./lines.ts";
import { legWindow, NECK, spacerLayout, spacerObstacle, spacerOutline, tabHole, tabMiddle } from "./spacer-outline.ts";

/** Its width, as a share of the core's: broad enough to keep the blocks parallel, out of reach of the glue at the cheeks. */
const SHARE_OF_CORE = 0.6;
/** How far the neck stands off the blocks' upper arrises, mm; more where a cutter leaves a fillet in its corner. */
const LEAST_NECK = 4;

/** The spacer that sets the blocks' gap at glue-up. */
export function throatSpacer(plane: Elevation): JigResult {
  const { design, widths } = plane;
  const places = spacerLayout(plane);
  const none = spacerObstacle(plane, places);
  if (none) return { none };
  const boundary = spacerOutline(plane, places, Math.max(LEAST_NECK, design.jigs.relief + 1));
  const wide = Math.min(Math.max(SHARE_OF_CORE * widths.core, 18), widths.core - 4);
  const middle = tabMiddle(places);
  const grip = tabHole(places);
  const gap = glueGap(plane);
  return {
    plan: {
      name: "throat-spacer",
      title: `Throat spacer for a gap of ${formatLength(gap, design)}`,
      bodies: [
        {
          boundary,
          holes: [{ outline: grip }],
          thickness: wide,
          risers: [],
          lightening: legWindow(plane, places),
          labels: [nameLabel(["GAP", formatBareLength(gap, design)], design, point(middle, places.top + 8))],
          pose: poseAsDrawn(-wide / 2),
        },
      ],
      drawing: {
        title: "throat-spacer",
        entries: [
          cutEntry(boundary),
          cutEntry(grip),
          noteEntry(`gap ${formatBareLength(gap, design)}, ${design.name}`, point(middle - 15, places.top - NECK)),
        ],
      },
      registersAgainst:
        "Its flange lies on the flat tops of both blocks, one flank on the bed, the other on the ramp; its slot clears the cross pin.",
      use: useText(plane, gap),
      printed: `${FLAT_PRINT} Cut from sheet, it takes several layers to make ${formatLength(wide, design)}.`,
    },
  };
}

/** Contact with the iron governs where the blocks stand; the spacer sets them only where the iron does not. */
function useText(plane: Elevation, gap: number): string {
  const set = isPlacedByContact(plane)
    ? "It checks the front block's place; contact with the iron sets it. At the dry fit, iron out and pin in its holes, let it down over the pin, midway between the cheeks. Both flanks touch and the flange lies flat: the throat is as planned. Flange up: narrower. Flanks loose: wider. Find out why before you glue"
    : "It sets the blocks where the iron does not. With the cross pin in its holes, let it down over the pin midway between the cheeks and slide both blocks to its flanks, flange down on their tops";
  return `${set}. As planned, ${blocksText(plane, gap)}.`;
}

/** Where the blocks stand once they lie against the spacer, in words. */
function blocksText({ design, points, cuts }: Elevation, gap: number): string {
  const length = (mm: number) => formatLength(mm, design);
  const less = gap < 0 ? " (less than nothing: the bed's chamfer passes under the ramp's tip)" : "";
  return `the blocks' tips stand ${length(gap)} apart on the blank's sole${less}, the bed's tip ${length(points.bedTip.x + design.body.trim / 2)} from the cheeks' toe end, the front block's end ${length(cuts.setInToe)} and the bed block's ${length(cuts.setInHeel)} inside the cheeks' ends`;
}
