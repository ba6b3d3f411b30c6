// Every figure, once: what it is, its unit, its formula and source, and how it is read off an elevation.
import { cotDeg, distance, EPSILON, tanDeg } from "@lamplane/geometry";
import { type Elevation, mouthGrowth } from "./elevation.ts";
import { pinLengths } from "./pin-section.ts";

export interface FigureRow {
  readonly unit: string;
  readonly formula: string;
  readonly help: string;
  readonly source: string;
  /** Undefined where the design has no such thing (no recess). */
  readonly of: (e: Elevation) => number | undefined;
}

/** A figure of one design. */
export interface Figure extends Omit<FigureRow, "of"> {
  readonly key: string;
  readonly value: number;
}

const GEOMETRY = "plane geometry";
const TRADE = "common practice, no published source";
type Evaluate = FigureRow["of"];
const mm = (formula: string, help: string, of: Evaluate, source = GEOMETRY): FigureRow => ({
  unit: "mm",
  formula,
  help,
  source,
  of,
});
const degrees = (formula: string, help: string, of: Evaluate, source = GEOMETRY): FigureRow => ({
  unit: "°",
  formula,
  help,
  source,
  of,
});
const ratio = (formula: string, help: string, of: Evaluate, source = GEOMETRY): FigureRow => ({
  unit: "",
  formula,
  help,
  source,
  of,
});

/** glueGap = bedTipX − rampTipX; below 0 the blocks' tips collide. */
export const glueGap = ({ points }: Elevation): number => points.bedTip.x - points.rampTip.x;

/** How far the feather chamfer sets the bed's tip back on the blank's sole, whole until the sole is trued: c·cot β. mm. */
export const chamferGain = ({ design, frame }: Pick<Elevation, "design" | "frame">): number =>
  design.bed.featherChamfer * cotDeg(frame.bedAngle);

/**
 * Least gap between the blocks as cut, at glue-up; below 0 they collide. The bed's chamfered face stands square and the
 * slopes lean apart on their way up, so that the corners on the blank's sole are nearest. mm.
 */
export const tipGap = ({ points }: Pick<Elevation, "points">): number => points.bedChamfer.x - points.rampTip.x;

/** The corners close in by mouthGrowth for each mm of allowance. */
const greatestAllowance = (e: Elevation): number => e.design.sole.allowance + tipGap(e) / mouthGrowth(e);

export const FIGURES = {
  bedAngle: degrees("β", "Bed angle.", (e) => e.frame.bedAngle),
  rampAngle: degrees("ρ = 107 − β, or the wear's angle", "Ramp angle at the sole.", (e) => e.ramp.angle, TRADE),
  sawBed: degrees("90 − β", "What a saw that reads from square is set to for the bed.", (e) => 90 - e.frame.bedAngle),
  sawRamp: degrees("90 − ρ", "What a saw that reads from square is set to for the ramp.", (e) => 90 - e.ramp.angle),
  clearanceAngle: degrees("β − τ", "Clearance under the bevel.", (e) => e.frame.bedAngle - e.design.iron.bevel),
  mouthX: mm("length / 3", "From the toe to the cutting edge.", (e) => e.frame.mouthX, TRADE),
  mouthGrowth: ratio("cot β + cot ρ", "How far the mouth opens for each mm taken off the sole.", mouthGrowth),
  bedTipX: mm("m + t / sin β − a·cot β", "Bed's tip on the blank's sole.", (e) => e.points.bedTip.x),
  rampTipX: mm("m − g + a·cot ρ", "Ramp's tip on the blank's sole.", (e) => e.points.rampTip.x),
  glueGap: mm("bedTipX − rampTipX", "Gap between the blocks' tips at glue-up, before the feather chamfer.", glueGap),
  greatestAllowance: mm(
    "(t / sin β + g + c·cot β) / (cot β + cot ρ)",
    "Greatest sole allowance with which the blocks do not collide.",
    greatestAllowance,
  ),
  edgeHeightAtContact: mm(
    "a − g / mouthGrowth",
    "Edge over the blank's sole when the front block touches it at glue-up; so much off, and the mouth opens.",
    (e) => e.design.sole.allowance - e.design.mouth.opening / mouthGrowth(e),
  ),
  soleToTake: mm("a", "Wood still to take off the sole.", (e) => e.design.sole.allowance),
  mouthOpening: mm("g", "Mouth opening once the sole is trued.", (e) => e.design.mouth.opening),
  bodyHeight: mm("H", "Finished height.", (e) => e.design.body.height),
  sideClearance: mm(
    "coreWidth − iron width",
    "How much wider the core is than the iron.",
    (e) => e.widths.core - e.design.iron.width,
  ),
  throatAtTop: mm("bed to ramp along the top", "Throat along the top.", (e) =>
    distance(e.points.bedTop, e.points.rampTop),
  ),
  throatNarrowing: mm(
    "largest width before, less the width",
    "How much the throat narrows again on its way up.",
    (e) => e.throat.by,
  ),
  unsupported: mm(
    "t·(cot τ − cot β)",
    "Length of bed below the bevel's heel that the iron never touches.",
    (e) => e.design.iron.thickness * (cotDeg(e.design.iron.bevel) - cotDeg(e.frame.bedAngle)),
  ),
  pinS: mm("s·sin β + v(s)·cos β = pinY", "Cross pin's axis up the iron from the edge.", (e) => e.pin.s),
  pinV: mm("c₁ + w(s) + e / cos ω", "Cross pin's axis off the iron's face.", (e) => e.pin.v),
  pinX: mm("m + s·cos β − v·sin β", "Cross pin's axis from the toe.", (e) => e.pin.centre.x),
  pinY: mm(
    "given, or the smallest margin at its largest",
    "Cross pin's axis over the trued sole.",
    (e) => e.pin.centre.y,
  ),
  pinOverBlankSole: mm(
    "pinY + a",
    "Cross pin's axis over the blank's sole.",
    (e) => e.pin.centre.y + e.design.sole.allowance,
  ),
  pinHoleDiameter: mm("tenon + clearance", "Hole for the tenon in each cheek.", (e) => 2 * e.pinHole.radius),
  wedgeAngle: degrees("ω", "Wedge angle.", (e) => e.design.wedge.angle),
  wedgeTip: mm("w₀", "Wedge's thickness at its tip.", (e) => e.design.wedge.tip),
  wedgeTipFromEdge: mm("s₀", "Wedge's tip up the iron from the edge.", (e) => e.design.wedge.tipFromEdge),
  tenonLength: mm("shoulder to end; auto ends 0.5 inside the cheek", "Length of each tenon.", (e) => {
    const { shoulder, end } = pinLengths(e);
    return end - shoulder;
  }),
  wedgeAtPin: mm("w₀ + (s − s₀)·tan ω", "Thickness of the wedge at the cross pin.", (e) => e.pin.wedgeThere),
  wedgeLength: mm("25 mm out of the top", "Length of the wedge.", (e) => e.wedgeLength, TRADE),
  wedgeBelowPin: mm("to the wedge's tip", "Wedge below the cross pin's contact.", (e) => e.pinMargins.wedgeBelow),
  wedgeAbovePin: mm("to the wedge's butt", "Wedge above the cross pin's contact.", (e) => e.pinMargins.wedgeAbove),
  wedgeWidth: mm("coreWidth − clearance", "Width of the wedge.", (e) => e.widths.core - e.design.wedge.clearance),
  wedgeButt: mm(
    "w₀ + length·tan ω",
    "Thickness of the wedge at its butt.",
    (e) => e.design.wedge.tip + e.wedgeLength * tanDeg(e.design.wedge.angle),
  ),
  pinToRamp: mm(
    "(pinX − m + g)·sin ρ + pinY·cos ρ − d/2",
    "Room from the cross pin to the ramp, square to it.",
    (e) => e.pinMargins.roomToRamp,
  ),
  pinToRampTurning: mm(
    "the same less √(e² + (d/2)²)",
    "The same while a flatted pin turns.",
    (e) => e.pinToRampTurning,
  ),
  woodOverPinHole: mm("hole to the top outline", "Wood over the pin's hole.", (e) => e.pinMargins.woodOverHole),
  shearOut: mm(
    "hole to the nearest edge of the cheek, at β + ω from square",
    "Wood in the line of the wedge's thrust.",
    (e) => e.pinMargins.shearOut,
  ),
  rampRadius: mm("largest that leaves the room wanted", "Radius of a curved ramp.", (e) => e.ramp.curve?.radius),
  coreWidth: mm("iron + side clearance", "Width of the core.", (e) => e.widths.core, TRADE),
  bodyWidth: mm("coreWidth + 2 cheeks", "Width of the body.", (e) => e.widths.body),
  roughCore: mm("coreWidth + 2 milling allowances", "Core as sawn.", (e) => e.widths.roughCore),
  roughCheek: mm("cheek + 2 milling allowances", "Each cheek as sawn.", (e) => e.widths.roughCheek),
  billetWidth: mm(
    "rough cheeks + rough core + 2 kerfs + 4 jointing passes",
    "Width of billet needed.",
    (e) => e.widths.billet,
  ),
  billetWidthByRule: mm(
    "iron + 38.1",
    "Width of billet by rule of thumb: iron and 1 1/2 in.",
    (e) => e.widths.billetByRule,
    TRADE,
  ),
  blankLength: mm("length + trim", "Length of the blank.", (e) => e.widths.blankLength, TRADE),
  blankHeight: mm("H + a", "Height of the blank.", (e) => e.widths.blankHeight),
  rampMark: mm(
    "along the blank's sole from the core's toe end",
    "Mark for the ramp's cut on the core; its kerf on the heel's side.",
    (e) => e.cuts.rampMark,
  ),
  bedMark: mm(
    "rampMark + room for both kerfs",
    "Mark for the bed's cut on the core; its kerf on the toe's side.",
    (e) => e.cuts.bedMark,
  ),
  setInToe: mm(
    "half of what the blocks are slid together by",
    "Front block's end inside the cheeks' ends at glue-up.",
    (e) => e.cuts.setInToe,
  ),
  setInHeel: mm(
    "half of what the blocks are slid together by",
    "Bed block's end inside the cheeks' ends at glue-up.",
    (e) => e.cuts.setInHeel,
  ),
  recessWidth: mm("head + clearance", "Width of the recess.", (e) => e.recess?.width, TRADE),
  recessDepth: mm("head's height + 1.6", "Depth of the recess, square to the bed.", (e) => e.recess?.depth, TRADE),
  recessLow: mm(
    "head's lowest place − travel",
    "Recess's lower end up the iron from the edge.",
    (e) => e.recess?.low,
    TRADE,
  ),
  recessFromBedTip: mm(
    "recessLow − t·cot β",
    "Recess's lower end up the bed from its tip at the trued sole.",
    (e) => e.recess && e.recess.low - e.design.iron.thickness * cotDeg(e.frame.bedAngle),
  ),
  recessLand: mm(
    "(coreWidth − recess) / 2",
    "Land left on each side of the recess.",
    (e) => e.recess && (e.widths.core - e.recess.width) / 2,
  ),
  recessPad: mm(
    "recessLow − t·cot τ",
    "Bed between the bevel's heel and the recess.",
    (e) => e.recess && e.recess.low - e.design.iron.thickness * cotDeg(e.design.iron.bevel),
  ),
} satisfies Record<string, FigureRow>;

export type FigureKey = keyof typeof FIGURES;

/** All figures of an elevation, in the order of the work. */
export const elevationFigures = (e: Elevation): Figure[] => evaluateFigures(FIGURES, e);

/** The figures that rows like these tell of an elevation, in their order; what is undefined is left out. */
export const evaluateFigures = (rows: Readonly<Record<string, FigureRow>>, e: Elevation): Figure[] =>
  Object.entries(rows).flatMap(([key, { of, ...row }]) => {
    const value = of(e);
    return value === undefined ? [] : [{ key, value: Math.abs(value) < EPSILON ** 2 ? 0 : value, ...row }];
  });

/** One figure by its key; undefined where the design has no such thing. */
export const figureValue = (e: Elevation, key: FigureKey): number | undefined => (FIGURES[key].of as Evaluate)(e);
