// Choosing the wood, measuring the iron, ripping and milling: before anything is cut to an angle.

import type { RipLayout } from "@lamplane/bench";
import { cotDeg } from "@lamplane/geometry";
import { bevelToBack, topFromEdge } from "@lamplane/parameters/elevation";
import { CORE, IRON, STOCK } from "../../words/wood.ts";
import { ripPicture, stockPicture } from "../draw/billet.ts";
import { ironPicture } from "../draw/iron.ts";
import type { StepNumber } from "../step.ts";
import { readAgain, type StepContext } from "../step-context.ts";
import { type ContentInput, keepSentences, type StepContent } from "./content.ts";
import { boardContent, layerContent } from "./layers.ts";

/** An inch and a half over the iron's width. */
const BY_RULE = 38.1;

export function stockContent({ t, plan }: ContentInput): StepContent {
  if (plan.layers) return boardContent(t, plan.layers);
  const { billet, rip } = plan;
  const { needed, measured, lay, rings } = billet;
  const has = (["length", "width", "height"] as const).filter((side) => measured[side] > 0);
  return {
    title: STOCK.title,
    task: STOCK.task,
    why: STOCK.why,
    numbers: [
      ...readAgain(
        t.lengthRow(STOCK.length, needed.length, "up"),
        t.lengthRow(STOCK.width, needed.width, "up"),
        t.lengthRow(STOCK.height, needed.height, "up"),
      ),
      ...t.figureRow("billetWidthByRule", STOCK.byRule({ over: t.mm(BY_RULE) })),
      { label: STOCK.wood, value: t.design.wood.body },
      ...readAgain({ label: STOCK.rings, value: t.deg(rings) }, ...t.figureRow("moistureAsCut", STOCK.moisture)),
      ...has.map((side) => t.lengthRow(STOCK.atHand({ side }), measured[side])),
    ],
    instructions: keepSentences(
      STOCK.rest,
      STOCK.turn({ rings: t.deg(rings) }),
      STOCK.grain,
      lay === "on its side" && STOCK.onSide({ rings: t.deg(rings) }),
      billet.fits === true && lay === "as measured" && STOCK.fits,
      STOCK.setAside,
    ),
    checks: [
      STOCK.clear,
      STOCK.least({ length: t.mm(needed.length), width: t.mm(rip.needed), height: t.mm(needed.height) }),
      STOCK.marked,
    ],
    cautions: ["dust"],
    draw: (room) => stockPicture(t, plan, room),
  };
}

export function ironContent({ t }: ContentInput): StepContent {
  const { iron, capIron } = t.plane.design;
  return {
    why: IRON.why,
    numbers: [
      ...thicknessRows(t),
      t.lengthRow(IRON.width, iron.width),
      { label: IRON.bevel, value: t.deg(iron.bevel) },
      ...t.figureRow("clearanceAngle", IRON.clearance),
      ...readAgain(
        ...(capIron.thickness > 0
          ? [t.lengthRow(IRON.capIron, capIron.thickness), t.lengthRow(IRON.hump, capIron.hump)]
          : []),
        ...(t.plane.recess
          ? [
              t.lengthRow(IRON.headDiameter, capIron.screwHead.diameter),
              t.lengthRow(IRON.headHeight, capIron.screwHead.height, "up"),
              t.lengthRow(IRON.headFromEdge, capIron.screwHead.fromEdge),
            ]
          : []),
      ),
    ],
    instructions: keepSentences(
      IRON.flatBack,
      ...thicknessTexts(t),
      IRON.measureWidth,
      capIron.thickness > 0 && IRON.measureCap,
    ),
    checks: [IRON.entered({ count: isTapered(t) ? "All three" : "Both" })],
    cautions: ["sharpIron"],
    draw: (room) => ironPicture(t, room),
  };
}

const isTapered = ({ plane: { frame } }: StepContext): boolean => frame.faceAngle !== frame.bedAngle;
const fromEdge = (t: StepContext, s: number): string => (s === 0 ? IRON.edge : IRON.fromEdge({ length: t.mm(s) }));

/** One thickness of a parallel iron; of a tapered one both, with where they are measured and what follows. */
function thicknessRows(t: StepContext): StepNumber[] {
  const { design } = t.plane;
  const { thickness, thicknessFromEdge } = design.iron;
  if (!isTapered(t)) return [t.lengthRow(IRON.thickness, thickness)];
  const at = (s: number) => IRON.thicknessAt({ where: fromEdge(t, s) });
  return [
    t.lengthRow(at(thicknessFromEdge), thickness),
    ...t.figureRow("thicknessAtTop", at(topFromEdge(design))),
    ...t.figureRow("ironTaper", IRON.taper),
    ...(thicknessFromEdge === 0 ? [] : t.figureRow("edgeThickness", IRON.atEdge)),
    ...t.figureRow("faceAngle", IRON.face),
  ];
}

function thicknessTexts(t: StepContext): string[] {
  const { design, frame } = t.plane;
  if (!isTapered(t)) return [IRON.measureThickness];
  const { thicknessFromEdge } = design.iron;
  const heel = frame.thickness * cotDeg(bevelToBack(design));
  return keepSentences(
    IRON.measureTaper({
      thickEnd: frame.faceAngle < frame.bedAngle ? "edge" : "top",
      low: fromEdge(t, thicknessFromEdge),
      high: fromEdge(t, topFromEdge(design)),
    }),
    thicknessFromEdge < heel && IRON.aboveBevel({ heel: t.mm(heel) }),
  );
}

export function coreContent({ t, plan }: ContentInput): StepContent {
  if (plan.layers) return layerContent(t, plan, plan.layers);
  const { rip, marks, core } = plan;
  const { blankLength } = t.plane.widths;
  return {
    numbers: [
      ...t.figureRow("billetWidth", CORE.billetWidth),
      ...rip.sawLines.map(({ frees, fence }, i) => t.lengthRow(CORE.fence({ cut: i + 1, frees }), fence, "up")),
      ...t.figureRow("coreWidth", CORE.coreMilled),
      ...t.figureRow("cheekThickness", CORE.cheekMilled),
      ...t.figureRow("blankLength", CORE.length),
      ...t.figureRow("blankHeight", CORE.height),
    ],
    instructions: keepSentences(
      CORE.square({ pass: t.mm(rip.referencePass), height: t.mm(core.height), length: t.mm(blankLength) }),
      marks.marks.length > 0 &&
        CORE.marks({
          marks: marks.marks.map(({ strokes, at, over }) => ({
            strokes: strokes === 1 ? 1 : 2,
            places: at.map((x) => t.mm(x)),
            over,
          })),
        }),
      ...marks.lacking.map((block) => CORE.noMarks({ block })),
      ripText(t, rip),
      CORE.mill,
      CORE.caliper,
    ),
    checks: [CORE.sameWidth, CORE.flat, CORE.marksThere],
    cautions: ["ripping", "jointing"],
    draw: (room) => ripPicture(t, plan, room),
  };
}

/** The cuts along the billet in order, each fresh face jointed before the next, and what is left after the last. */
function ripText(t: StepContext, { sawLines, spare, board }: RipLayout): string {
  const cuts = sawLines.map(({ frees, fence }, i) => CORE.cut({ cut: i + 1, frees, fence: t.mm(fence) }));
  return [cuts.join(` ${CORE.jointRest} `), restText(t, sawLines.length, spare, board)].join(" ");
}

function restText(t: StepContext, cuts: number, spare: number, board: number): string {
  if (cuts === 3) return CORE.restIsSpare({ board: t.mm(board) });
  return spare > 0 ? CORE.restIsThicker({ by: t.mm(spare) }) : CORE.restIsCheek;
}
