// Figures that only a plane with a tapered iron has.
import type { Elevation } from "./elevation.ts";
import { degrees, type FigureFormula, mm } from "./figure-row.ts";
import { ironTaper, thicknessAt, topFromEdge } from "./iron-taper.ts";

/** A value that only a tapered iron has. */
const ofTaper = ({ frame }: Elevation, value: number): number | undefined =>
  frame.faceAngle === frame.bedAngle ? undefined : value;

export const TAPER_FIGURES = {
  ironTaper: degrees("atan((t₁ − t₂) / distance)", (e) => ofTaper(e, ironTaper(e.design)), { feltFrom: 0.05 }),
  faceAngle: degrees("β − taper", (e) => ofTaper(e, e.frame.faceAngle)),
  edgeThickness: mm("t₁ + distance to the edge·tan taper", (e) => ofTaper(e, e.frame.thickness)),
  thicknessAtTop: mm("t₁ − distance·tan taper", (e) => ofTaper(e, thicknessAt(e.design, topFromEdge(e.design)))),
} satisfies Record<string, FigureFormula>;
