// Throat spacer: fills the throat at glue-up between bed and ramp, straddles the cross pin, and hangs by a flange from the blank's top.
// Its flanks have no clearance: they touch both blocks, and that sets the gap.

import { point } from "@lamplane/geometry";
import { fromToeEnd } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { tipGap } from "../elevation/glue-gap.ts";
import { isPlacedByContact } from "../elevation/glue-up.ts";
import { formatBareLength, formatLength } from "../units.ts";
import { JIG, SPACER } from "../words/jigs.ts";
import { type JigPlan, type JigResult, poseAsDrawn } from "./jig.ts";
import { cutEntry, nameLabel, noteEntry } from "./lines.ts";
import { cornerRelief } from "./relief.ts";
import { legWindow, NECK, spacerLayout, spacerObstacle, spacerOutline, tabHole, tabMiddle } from "./spacer-outline.ts";

/** Its width, as a share of the core's: broad enough to keep the blocks parallel, out of reach of the glue at the cheeks. */
const SHARE_OF_CORE = 0.6;
/** How far the neck stands off the blocks' upper arrises, mm; more where a cutter leaves a fillet in its corner. */
const LEAST_NECK = 4;
/** Least width of one cut from sheet, as a share of the core's; and what stays free of it at the most, for the glue, mm. */
const LEAST_SHARE = 0.4;
const FREE_OF_CORE = 4;

/** The spacer that sets the blocks' gap at glue-up. */
export function throatSpacer(plane: Elevation): JigResult {
  const { design, widths } = plane;
  const places = spacerLayout(plane);
  const none = spacerObstacle(plane, places);
  if (none) return { none };
  const boundary = spacerOutline(plane, places, Math.max(LEAST_NECK, cornerRelief(design) + 1));
  const most = widths.core - FREE_OF_CORE;
  const wide = Math.min(Math.max(SHARE_OF_CORE * widths.core, 18), most);
  const block = { boundary, thickness: wide, risers: [] };
  const plateRange = { least: Math.min(LEAST_SHARE * widths.core, wide), best: wide, most };
  const form = { name: "throat-spacer", bodies: [block], plateRange } as const;
  const plan = (): JigPlan => {
    const middle = tabMiddle(places);
    const grip = tabHole(places);
    const gap = tipGap(plane);
    return {
      ...form,
      title: SPACER.title({ gap: formatLength(gap, design) }),
      bodies: [
        {
          ...block,
          holes: [{ outline: grip }],
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
      registersAgainst: SPACER.against,
      use: useText(plane, gap),
      printed: JIG.layered({ thick: formatLength(wide, design) }),
    };
  };
  return { form, plan };
}

/** Contact with the iron governs where the blocks stand; the spacer sets them only where the iron does not. */
function useText(plane: Elevation, gap: number): string {
  const { design, points, cuts } = plane;
  const length = (mm: number) => formatLength(mm, design);
  return SPACER.use({
    set: isPlacedByContact(plane) ? SPACER.checks : SPACER.sets,
    gap: length(gap),
    hasFeatherOff: design.bed.featherChamfer > 0,
    bedFoot: length(fromToeEnd(plane, points.bedChamfer.x)),
    front: length(cuts.setInToe),
    bed: length(cuts.setInHeel),
  });
}
