// Figures that only a plane with a tapered iron has.
import type { Elevation } from "./elevation.ts";
import { degrees, type FigureRow, mm } from "./figure-row.ts";
import { ironTaper, thicknessAt, topFromEdge } from "./iron-taper.ts";

/** A value that only a tapered iron has. */
const ofTaper = ({ frame }: Elevation, value: number): number | undefined =>
  frame.faceAngle === frame.bedAngle ? undefined : value;

export const TAPER_FIGURES = {
  ironTaper: degrees(
    "atan((t₁ − t₂) / distance)",
    "Taper of the iron, back to face; below 0 where it is thinner at the edge than at the top.",
    (e) => ofTaper(e, ironTaper(e.design)),
    { feltFrom: 0.05 },
  ),
  faceAngle: degrees(
    "β − taper",
    "Angle of the iron's face from the sole: the cutting angle, and what wedge and pin stand by.",
    (e) => ofTaper(e, e.frame.faceAngle),
  ),
  edgeThickness: mm("t₁ + distance to the edge·tan taper", "Thickness of the iron at its cutting edge.", (e) =>
    ofTaper(e, e.frame.thickness),
  ),
  thicknessAtTop: mm("t₁ − distance·tan taper", "Thickness of the iron near its top.", (e) =>
    ofTaper(e, thicknessAt(e.design, topFromEdge(e.design))),
  ),
} satisfies Record<string, FigureRow>;
