// The billet sawn across its width: first cheek, core, second cheek, each saw line from one reference face.
import { type Elevation, hasThirdCut } from "@lamplane/parameters/elevation";
import type { Span } from "../span.ts";

/** The reference face becomes the left cheek's outside. */
export type StripName = "left cheek" | "core" | "right cheek";

/** One strip. Lengths mm. */
export interface RipStrip {
  readonly piece: StripName;
  /** From the reference face as it stands before it is jointed. */
  readonly at: Span;
  /** What of it is left in the finished plane: no pass and no milling reaches it. */
  readonly keeps: Span;
  readonly sawn: number;
  readonly rough: number;
  readonly finished: number;
}

/** One cut along the billet, in order. */
export interface SawLine {
  readonly frees: StripName;
  /** What the kerf takes, from the reference face as it stands before it is jointed. */
  readonly kerf: Span;
  /** What the fence is set to, from the face jointed last. */
  readonly fence: number;
}

export interface RipLayout {
  readonly strips: readonly [left: RipStrip, core: RipStrip, right: RipStrip];
  /** Two, and a third where more is left beside the second cheek than a kerf takes. */
  readonly sawLines: readonly SawLine[];
  /** Width of billet that this needs, and what the rule of thumb says. */
  readonly needed: number;
  readonly byRule: number;
  /** Left beside the second cheek: all of it, and as a board once sawn off. 0 where there is none. */
  readonly spare: number;
  readonly board: number;
  /** Most that jointing the reference face may take: it is milling allowance of the first cheek. */
  readonly referencePass: number;
}

/**
 * Where to saw a billet `width` mm wide. Every fresh face is jointed by a pass before the next fence is set from it.
 * @see plane geometry: rough cheeks + rough core + 2 kerfs + 4 jointing passes
 */
export function ripLayout({ design, widths }: Elevation, width: number): RipLayout {
  const { kerf, jointingPass: pass, millingAllowance: milling } = design.shop;
  const strip = (
    piece: StripName,
    from: number,
    rough: number,
    finished: number,
    fresh: readonly [number, number],
  ): RipStrip => {
    const sawn = rough + pass * (fresh[0] + fresh[1]);
    const keptFrom = from + pass * fresh[0] + milling;
    return {
      piece,
      at: { from, to: from + sawn },
      keeps: { from: keptFrom, to: keptFrom + finished },
      sawn,
      rough,
      finished,
    };
  };
  const left = strip("left cheek", 0, widths.roughCheek, widths.cheek, [0, 1]);
  const core = strip("core", left.at.to + kerf, widths.roughCore, widths.core, [1, 1]);
  const right = strip("right cheek", core.at.to + kerf, widths.roughCheek, widths.cheek, [1, 0]);
  const spare = Math.max(0, width - widths.billet);
  const { fence } = widths;
  const cuts = [
    { strip: left, fence: fence.leftCheek },
    { strip: core, fence: fence.core },
    ...(hasThirdCut(widths, width, kerf) ? [{ strip: right, fence: fence.rightCheek }] : []),
  ];
  return {
    strips: [left, core, right],
    sawLines: cuts.map(({ strip: { piece, at }, fence }) => ({
      frees: piece,
      kerf: { from: at.to, to: at.to + kerf },
      fence,
    })),
    needed: widths.billet,
    byRule: widths.billetByRule,
    spare,
    board: Math.max(0, spare - kerf),
    referencePass: widths.referencePass,
  };
}
