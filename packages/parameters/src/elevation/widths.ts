// Across the plane and along the stock: core, cheeks, billet, and the two cuts on the core with their kerfs.

import { sinDeg } from "@lamplane/geometry";
import type { Design } from "../table/index.ts";

/** Common practice, no published source: a billet 1 1/2 in wider than the iron. */
export const BILLET_OVER_IRON = 38.1;
/** Room left between the two kerfs where they come nearest, mm: a saw that wanders must not touch the other block. */
const BETWEEN_KERFS = 1;

export interface Widths {
  readonly core: number;
  readonly cheek: number;
  readonly body: number;
  readonly roughCore: number;
  readonly roughCheek: number;
  /** What the fence is set to for each cut along the billet, from the face jointed last: each piece as it leaves the saw. */
  readonly fence: { readonly leftCheek: number; readonly core: number; readonly rightCheek: number };
  /** Most that jointing the reference face may take: it is milling allowance of the first cheek. */
  readonly referencePass: number;
  /** Width of billet needed, and what the rule of thumb says. */
  readonly billet: number;
  readonly billetByRule: number;
  readonly blankLength: number;
  readonly blankHeight: number;
}

/** @see plane geometry: Widths and stock. All mm. */
export function widthsOf({ iron, body, sole, shop }: Design): Widths {
  const core = iron.width + body.sideClearance;
  const roughCore = core + 2 * shop.millingAllowance;
  const roughCheek = body.cheek + 2 * shop.millingAllowance;
  const { jointingPass, millingAllowance } = shop;
  const referencePass = Math.min(jointingPass, millingAllowance);
  return {
    core,
    cheek: body.cheek,
    body: core + 2 * body.cheek,
    roughCore,
    roughCheek,
    fence: {
      leftCheek: roughCheek + jointingPass - referencePass,
      core: roughCore + jointingPass,
      rightCheek: roughCheek,
    },
    referencePass,
    billet: 2 * roughCheek + roughCore + 2 * shop.kerf + 4 * shop.jointingPass,
    billetByRule: iron.width + BILLET_OVER_IRON,
    blankLength: body.length + body.trim,
    blankHeight: body.height + sole.allowance,
  };
}

/** The two cuts on the core, measured along the blank's sole from the core's toe end. mm. */
export interface CoreCuts {
  readonly rampMark: number;
  readonly bedMark: number;
  /** How far each block's end stands inside the cheeks' ends at glue-up, once the blocks are slid together. */
  readonly setInToe: number;
  readonly setInHeel: number;
}

/**
 * Where to mark the core; layers are marked with the wood that truing the bed takes off them. Both kerfs lie between the marks, in the waste; the marks stand so far apart that neither
 * kerf reaches the other block, and the blocks' ends share what they are slid together by.
 * @param rampTipX x of the front block's tip on the blank's sole. @param bedTipX the same of the bed block's.
 */
export function coreCuts(design: Design, rampAngle: number, rampTipX: number, bedTipX: number): CoreCuts {
  const { shop, body, bed, core } = design;
  const left = core.layers === "whole" ? 0 : core.allowanceBed / sinDeg(bed.angle);
  const apart = Math.max(bedTipX - rampTipX, shop.kerf / sinDeg(Math.min(rampAngle, bed.angle)) + BETWEEN_KERFS + left);
  const setIn = (apart - (bedTipX - rampTipX)) / 2;
  const rampMark = rampTipX + body.trim / 2 - setIn;
  return { rampMark, bedMark: rampMark + apart - left, setInToe: setIn, setInHeel: setIn };
}
