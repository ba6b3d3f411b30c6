// Whether each jig can be made, and whether the maker's printer holds it; no jig keeps a plane from being built.
import type { Elevation } from "@lamplane/parameters/elevation";
import { guidePlay, jigPlans, omittedJigs, printedSize, printerOverhang } from "@lamplane/parameters/jigs";
import { type CheckRow, GEOMETRY, type Judgement } from "./judgement.ts";
import { decrease } from "./remedy.ts";

/** A printed guide that lets the drill wander by more than the hole's place may be off serves no one. */
export const GUIDE_CHECK: CheckRow = {
  code: "guide-hole-play",
  subject: "guide-play",
  relation: "at most",
  value: ({ design }) => guidePlay(design),
  warn: ({ design }) => design.hand.pinHole,
  unit: "mm",
  parameters: ["jigs.holeClearance", "hand.pinHole"],
  place: "pinCentre",
  advice: "open-guide-holes-by-drill",
  remedies: [decrease("jigs.holeClearance")],
  source: GEOMETRY,
};

const PRINTER = ["shop.printer.width", "shop.printer.depth", "shop.printer.height"];

/** Jigs too large for the printer, and those left out. The plane must be one that nothing else stops. */
export function judgeJigs(plane: Elevation): Judgement[] {
  return [...jigPlans(plane).map((plan) => judgePrintSize(plane, plan)), ...noteOmittedJigs(plane)];
}

function judgePrintSize(plane: Elevation, plan: ReturnType<typeof jigPlans>[number]): Judgement {
  const size = printedSize(plan);
  const over = printerOverhang(size, plane.design);
  const { width, depth, height } = plane.design.shop.printer;
  return {
    code: `${plan.name}-print-size`,
    subject: "printed-size",
    severity: over > 0 ? "warning" : "passed",
    relation: "at most",
    parameters: PRINTER,
    value: over,
    limit: 0,
    unit: "mm",
    advice: plan.drawing ? "cut-from-sheet-or-print-elsewhere" : "print-elsewhere",
    data: {
      jig: plan.name,
      printed: [size.x, size.y, size.z],
      printer: [width, depth, height],
      flat: plan.drawing !== undefined,
    },
    place: "heel",
    remedies: [],
    source: GEOMETRY,
  };
}

const noteOmittedJigs = (plane: Elevation): Judgement[] =>
  omittedJigs(plane).map(({ name, edgeHeight, ...obstacle }) => ({
    ...obstacle,
    code: `${name}-jig`,
    severity: "note",
    relation: "at least",
    data: { jig: name, ...(edgeHeight === undefined ? {} : { edgeHeight }) },
    place: "bedTop",
    remedies: [],
    source: GEOMETRY,
  }));
