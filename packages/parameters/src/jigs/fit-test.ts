// Fit test: holes that grow by a tenth of a millimetre all round, for the maker's own drill shank; the one it fits is jigs.holeClearance.

import { circleOutline, type Point, point } from "@lamplane/geometry";
import type { Elevation } from "../elevation/elevation.ts";
import { drillFor, formatBareLength, formatDrill, formatLength } from "../units.ts";
import { FIT_TEST, JIG } from "../words/jigs.ts";
import type { JigPlan, JigResult } from "./jig.ts";
import { boxOutline, nameLabel, plainLabel } from "./lines.ts";

/** Clearances all round that are tried, mm. */
export const TRIED = [0, 0.1, 0.2, 0.3, 0.4, 0.5] as const;
/** Its length, mm: to be measured, it shows whether the printer keeps its scale. */
export const FIT_TEST_LENGTH = 100;
const PITCH = 16;
const THICK = 8;
/** Largest shank that is tried, mm. */
const LARGEST = 10;
/** Room for a line of letters, mm. */
const LETTERS = 13;
/** In front of the plane, mm: it is used nowhere on it. */
const ASIDE = 40;

/** Diameter of the shank the test is for: the drill that bores the pin's hole, or 10 mm where that is larger. */
export const fitTestShank = ({ design, pinHole }: Elevation): number => {
  const hole = 2 * pinHole.radius;
  return Math.min(drillFor(hole, design.units)?.diameter ?? hole, LARGEST);
};

export function fitTest(plane: Elevation): JigResult {
  const { design } = plane;
  const shank = fitTestShank(plane);
  const middleY = LETTERS + shank / 2 + 0.5;
  const high = middleY + shank / 2 + 0.5 + LETTERS;
  const block = { boundary: boxOutline(0, 0, FIT_TEST_LENGTH, high), thickness: THICK, risers: [] };
  const form = { name: "fit-test", bodies: [block] } as const;
  const plan = (): JigPlan => {
    const first = (FIT_TEST_LENGTH - (TRIED.length - 1) * PITCH) / 2;
    const middles = TRIED.map((_, i): Point => point(first + i * PITCH, middleY));
    return {
      ...form,
      title: FIT_TEST.title({ shank: formatDrill(shank, design) }),
      bodies: [
        {
          ...block,
          holes: TRIED.map((clearance, i) => ({
            outline: circleOutline({ centre: middles[i]!, radius: shank / 2 + clearance }),
          })),
          lightening: [],
          labels: [
            ...TRIED.map((clearance, i) =>
              plainLabel(
                clearance === 0 ? "0" : String(clearance).slice(1),
                point(middles[i]!.x, LETTERS / 2),
                PITCH / 4,
              ),
            ),
            nameLabel(["FIT", formatBareLength(shank, design)], design, point(FIT_TEST_LENGTH / 2, high - LETTERS / 2)),
          ],
          pose: {
            x: [1, 0, 0],
            y: [0, 0, -1],
            z: [0, 1, 0],
            origin: [0, -design.sole.allowance, plane.widths.body / 2 + ASIDE + high],
          },
        },
      ],
      registersAgainst: FIT_TEST.against({ shank: formatDrill(shank, design) }),
      use: FIT_TEST.use({
        shank: formatDrill(shank, design),
        most: formatLength(design.hand.pinHole / 2, design),
        long: formatLength(FIT_TEST_LENGTH, design),
      }),
      printed: JIG.flatPrint,
    };
  };
  return { form, plan };
}
