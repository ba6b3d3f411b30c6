// Whether each jig can be made, and whether the maker's printer holds it; no jig keeps a plane from being built.

import type { Elevation } from "@lamplane/parameters/elevation";
import {
  guidePlay,
  JIG_NAMES,
  type JigForm,
  type JigName,
  jigForms,
  omittedJigs,
  printedSize,
  printerOverhang,
} from "@lamplane/parameters/jigs";
import { PLANE_GEOMETRY } from "@lamplane/parameters/table";
import type { CheckRow, Judgement } from "./judgement.ts";
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
  source: PLANE_GEOMETRY,
};

const PRINTER = ["shop.printer.width", "shop.printer.depth", "shop.printer.height"];

/** Codes of what is judged of a jig: its size on the printer, and that it is left out. */
export const JIG_CODES = {
  printSize: (jig: JigName) => `${jig}-print-size`,
  omitted: (jig: JigName) => `${jig}-jig`,
} as const;

/** What the judgements of the jigs are, without a plane. */
export const JIG_NOTES = JIG_NAMES.flatMap(
  (jig) =>
    [
      { code: JIG_CODES.printSize(jig), jig, kind: "printSize", parameters: PRINTER, source: PLANE_GEOMETRY },
      { code: JIG_CODES.omitted(jig), jig, kind: "omitted", parameters: [], source: PLANE_GEOMETRY },
    ] as const,
);

/** Jigs too large for the printer, and those left out. The plane must be one that nothing else stops. */
export function judgeJigs(plane: Elevation): Judgement[] {
  return [...jigForms(plane).map((form) => judgePrintSize(plane, form)), ...noteOmittedJigs(plane)];
}

/** Codes of the jigs too large for the printer. The plane must be one that nothing else stops. */
export const oversizeCodes = (plane: Elevation): string[] =>
  jigForms(plane)
    .filter((form) => printerOverhang(printedSize(form), plane.design) > 0)
    .map(({ name }) => JIG_CODES.printSize(name));

function judgePrintSize(plane: Elevation, form: JigForm): Judgement {
  const size = printedSize(form);
  const over = printerOverhang(size, plane.design);
  const { width, depth, height } = plane.design.shop.printer;
  return {
    code: JIG_CODES.printSize(form.name),
    subject: "printed-size",
    severity: over > 0 ? "warning" : "passed",
    relation: "at most",
    parameters: PRINTER,
    value: over,
    limit: 0,
    unit: "mm",
    advice: form.plateRange ? "cut-from-sheet-or-print-elsewhere" : "print-elsewhere",
    data: {
      jig: form.name,
      printed: [size.x, size.y, size.z],
      printer: [width, depth, height],
      flat: form.plateRange !== undefined,
    },
    place: "heel",
    remedies: [],
    source: PLANE_GEOMETRY,
  };
}

const noteOmittedJigs = (plane: Elevation): Judgement[] =>
  omittedJigs(plane).map(({ name, edgeHeight, ...obstacle }) => ({
    ...obstacle,
    code: JIG_CODES.omitted(name),
    severity: "note",
    relation: "at least",
    data: { jig: name, ...(edgeHeight === undefined ? {} : { edgeHeight }) },
    place: "bedTop",
    remedies: [],
    source: PLANE_GEOMETRY,
  }));
