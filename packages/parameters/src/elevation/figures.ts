// Every figure, once: what it is, its unit, its formula and source, and how it is read off an elevation.
import { cotDeg, distance, tanDeg } from "@lamplane/geometry";
import { bedLowerEdge } from "./blocks.ts";
import { type Elevation, mouthGrowth } from "./elevation.ts";
import { degrees, evaluateFigures, type Figure, type FigureRow, mm, ratio, TRADE } from "./figure-row.ts";
import { glueGap, greatestAllowance } from "./glue-gap.ts";
import { edgeHeightAtContact } from "./glue-up.ts";
import { bevelToBack } from "./iron-taper.ts";
import { pinLengths } from "./pin-section.ts";
import { TAPER_FIGURES } from "./taper-figures.ts";

export const FIGURES = {
  bedAngle: degrees("β", "Bed angle.", (e) => e.frame.bedAngle),
  rampAngle: degrees("ρ = 107 − β, or the wear's angle", "Ramp angle at the sole.", (e) => e.ramp.angle, {
    source: TRADE,
  }),
  sawBed: degrees("90 − β", "What a saw that reads from square is set to for the bed.", (e) => 90 - e.frame.bedAngle, {
    spentAt: "cuts",
  }),
  sawRamp: degrees("90 − ρ", "What a saw that reads from square is set to for the ramp.", (e) => 90 - e.ramp.angle, {
    spentAt: "cuts",
  }),
  ...TAPER_FIGURES,
  clearanceAngle: degrees(
    "β − taper − τ",
    "Clearance under the bevel.",
    (e) => e.frame.faceAngle - e.design.iron.bevel,
    { feltFrom: 0.5 },
  ),
  mouthX: mm("length / 3", "From the toe to the cutting edge.", (e) => e.frame.mouthX, { source: TRADE }),
  mouthGrowth: ratio("cot β + cot ρ", "How far the mouth opens for each mm taken off the sole.", mouthGrowth, {
    feltFrom: 0.02,
  }),
  bedTipX: mm("m + t / sin β − a·cot β", "Bed's tip on the blank's sole.", (e) => e.points.bedTip.x, {
    spentAt: "glue-up",
  }),
  rampTipX: mm("m − g + a·cot ρ", "Ramp's tip on the blank's sole.", (e) => e.points.rampTip.x, { spentAt: "glue-up" }),
  glueGap: mm("bedTipX − rampTipX", "Gap between the blocks' tips at glue-up, before the feather chamfer.", glueGap, {
    readingMode: "fine",
    spentAt: "glue-up",
  }),
  greatestAllowance: mm(
    "(t / sin β + g + c·cot β) / (cot β + cot ρ)",
    "Greatest sole allowance with which the blocks do not collide.",
    greatestAllowance,
    { spentAt: "core" },
  ),
  edgeHeightAtContact: mm(
    "a − g / mouthGrowth",
    "Edge over the blank's sole when the front block touches it at glue-up; so much off, and the mouth opens.",
    edgeHeightAtContact,
    { readingMode: "fine", spentAt: "glue-up" },
  ),
  soleToTake: mm("a", "Wood still to take off the sole.", (e) => e.design.sole.allowance, { readingMode: "fine" }),
  mouthOpening: mm("g", "Mouth opening once the sole is trued.", (e) => e.design.mouth.opening, {
    readingMode: "fine",
    feltFrom: 0,
  }),
  bodyHeight: mm("H", "Finished height.", (e) => e.design.body.height, { readingMode: "up", feltFrom: 0.5 }),
  sideClearance: mm(
    "coreWidth − iron width",
    "How much wider the core is than the iron.",
    (e) => e.widths.core - e.design.iron.width,
    { feltFrom: 0 },
  ),
  throatAtTop: mm(
    "bed to ramp along the top",
    "Throat along the top.",
    (e) => distance(e.points.bedTop, e.points.rampTop),
    { feltFrom: 1 },
  ),
  throatNarrowing: mm(
    "largest width before, less the width",
    "How much the throat narrows again on its way up.",
    (e) => e.throat.by,
    { feltFrom: 0.25 },
  ),
  unsupported: mm(
    "t·(cot(τ + taper) − cot β)",
    "Length of bed below the bevel's heel that the iron never touches.",
    (e) => e.frame.thickness * (cotDeg(bevelToBack(e.design)) - cotDeg(e.frame.bedAngle)),
  ),
  pinS: mm(
    "s·sin(β − taper) + v(s)·cos(β − taper) = pinY",
    "Cross pin's axis up the iron from the edge.",
    (e) => e.pin.s,
  ),
  pinV: mm("c₁ + w(s) + e / cos ω", "Cross pin's axis off the iron's face.", (e) => e.pin.v),
  pinX: mm("m + s·cos(β − taper) − v·sin(β − taper)", "Cross pin's axis from the toe.", (e) => e.pin.centre.x),
  pinY: mm(
    "given, or the smallest margin at its largest",
    "Cross pin's axis over the trued sole.",
    (e) => e.pin.centre.y,
  ),
  pinOverBlankSole: mm(
    "pinY + a",
    "Cross pin's axis over the blank's sole.",
    (e) => e.pin.centre.y + e.design.sole.allowance,
    { spentAt: "pin-hole" },
  ),
  pinHoleDiameter: mm("tenon + clearance", "Hole for the tenon in each cheek.", (e) => 2 * e.pinHole.radius, {
    readingMode: "up",
  }),
  wedgeAngle: degrees("ω", "Wedge angle.", (e) => e.design.wedge.angle),
  wedgeTip: mm("w₀", "Wedge's thickness at its tip.", (e) => e.design.wedge.tip, { readingMode: "up", feltFrom: 0.5 }),
  wedgeTipFromEdge: mm("s₀", "Wedge's tip up the iron from the edge.", (e) => e.design.wedge.tipFromEdge, {
    feltFrom: 1,
  }),
  tenonLength: mm("shoulder to end; auto ends 0.5 inside the cheek", "Length of each tenon.", (e) => {
    const { shoulder, end } = pinLengths(e);
    return end - shoulder;
  }),
  wedgeAtPin: mm("w₀ + (s − s₀)·tan ω", "Thickness of the wedge at the cross pin.", (e) => e.pin.wedgeThere, {
    readingMode: "up",
    feltFrom: 0.5,
  }),
  wedgeLength: mm("25 mm out of the top", "Length of the wedge.", (e) => e.wedgeLength, {
    source: TRADE,
    readingMode: "up",
  }),
  wedgeBelowPin: mm("to the wedge's tip", "Wedge below the cross pin's contact.", (e) => e.pinMargins.wedgeBelow),
  wedgeAbovePin: mm("to the wedge's butt", "Wedge above the cross pin's contact.", (e) => e.pinMargins.wedgeAbove),
  wedgeWidth: mm("coreWidth − clearance", "Width of the wedge.", (e) => e.widths.core - e.design.wedge.clearance, {
    readingMode: "down",
  }),
  wedgeButt: mm(
    "w₀ + length·tan ω",
    "Thickness of the wedge at its butt.",
    (e) => e.design.wedge.tip + e.wedgeLength * tanDeg(e.design.wedge.angle),
    { readingMode: "up" },
  ),
  pinToRamp: mm(
    "(pinX − m + g)·sin ρ + pinY·cos ρ − d/2",
    "Room from the cross pin to the ramp, square to it.",
    (e) => e.pinMargins.roomToRamp,
    { feltFrom: 0.5 },
  ),
  pinToRampTurning: mm(
    "the same less √(e² + (d/2)²)",
    "The same while a flatted pin turns.",
    (e) => e.pinToRampTurning,
  ),
  woodOverPinHole: mm("hole to the top outline", "Wood over the pin's hole.", (e) => e.pinMargins.woodOverHole, {
    feltFrom: 0.5,
  }),
  shearOut: mm(
    "hole to the nearest edge of the cheek, at β − taper + ω from square",
    "Wood in the line of the wedge's thrust.",
    (e) => e.pinMargins.shearOut,
    { feltFrom: 0.5 },
  ),
  rampRadius: mm("largest that leaves the room wanted", "Radius of a curved ramp.", (e) => e.ramp.curve?.radius),
  coreWidth: mm("iron + side clearance", "Width of the core.", (e) => e.widths.core, {
    source: TRADE,
    readingMode: "up",
  }),
  bodyWidth: mm("coreWidth + 2 cheeks", "Width of the body.", (e) => e.widths.body, {
    readingMode: "up",
    feltFrom: 0.5,
  }),
  roughCore: mm("coreWidth + 2 milling allowances", "Core as sawn.", (e) => e.widths.roughCore, {
    readingMode: "up",
    spentAt: "core",
  }),
  roughCheek: mm("cheek + 2 milling allowances", "Each cheek as sawn.", (e) => e.widths.roughCheek, {
    readingMode: "up",
    spentAt: "core",
  }),
  billetWidth: mm(
    "rough cheeks + rough core + 2 kerfs + 4 jointing passes",
    "Width of billet needed.",
    (e) => e.widths.billet,
    { readingMode: "up", spentAt: "core" },
  ),
  billetWidthByRule: mm("iron + 38.1", "Width of billet by rule of thumb.", (e) => e.widths.billetByRule, {
    source: TRADE,
    readingMode: "up",
    spentAt: "core",
  }),
  blankLength: mm("length + trim", "Length of the blank.", (e) => e.widths.blankLength, {
    source: TRADE,
    readingMode: "up",
    spentAt: "core",
  }),
  blankHeight: mm("H + a", "Height of the blank.", (e) => e.widths.blankHeight, { readingMode: "up", spentAt: "core" }),
  rampMark: mm(
    "along the blank's sole from the core's toe end",
    "Mark for the ramp's cut on the core; its kerf on the heel's side.",
    (e) => e.cuts.rampMark,
    { readingMode: "up", spentAt: "cuts" },
  ),
  bedMark: mm(
    "rampMark + room for both kerfs",
    "Mark for the bed's cut on the core; its kerf on the toe's side.",
    (e) => e.cuts.bedMark,
    { readingMode: "down", spentAt: "cuts" },
  ),
  setInToe: mm(
    "half of what the blocks are slid together by",
    "Front block's end inside the cheeks' ends at glue-up.",
    (e) => e.cuts.setInToe,
    { spentAt: "glue-up" },
  ),
  setInHeel: mm(
    "half of what the blocks are slid together by",
    "Bed block's end inside the cheeks' ends at glue-up.",
    (e) => e.cuts.setInHeel,
    { spentAt: "glue-up" },
  ),
  recessWidth: mm("head + clearance", "Width of the recess.", (e) => e.recess?.width, {
    source: TRADE,
    readingMode: "up",
  }),
  recessDepth: mm("head's height + 1.6", "Depth of the recess, square to the bed.", (e) => e.recess?.depth, {
    source: TRADE,
    readingMode: "down",
  }),
  recessLow: mm("head's lowest place − travel", "Recess's lower end up the iron from the edge.", (e) => e.recess?.low, {
    source: TRADE,
  }),
  recessFromBedTip: mm(
    "recessLow − t·cot β + (a − c) / sin β",
    "Recess's lower end up the bed from the bed's lower edge, the feather taken off.",
    (e) => e.recess && e.recess.low - bedLowerEdge(e),
    { readingMode: "up", spentAt: "recess" },
  ),
  recessLand: mm(
    "(coreWidth − recess) / 2",
    "Land left on each side of the recess.",
    (e) => e.recess && (e.widths.core - e.recess.width) / 2,
    { feltFrom: 0.5 },
  ),
  recessPad: mm(
    "recessLow − t·cot(τ + taper)",
    "Bed between the bevel's heel and the recess.",
    (e) => e.recess && e.recess.low - e.frame.thickness * cotDeg(bevelToBack(e.design)),
    { feltFrom: 0.5 },
  ),
} satisfies Record<string, FigureRow>;

export type FigureKey = keyof typeof FIGURES;

/** The row of a figure; undefined where the elevation has no figure of that name. */
export const figureRow = (key: string): FigureRow | undefined =>
  Object.hasOwn(FIGURES, key) ? FIGURES[key as FigureKey] : undefined;

/** All figures of an elevation, in the order of the work. */
export const elevationFigures = (e: Elevation): Figure[] => evaluateFigures(FIGURES, e);

/** One figure by its key; undefined where the design has no such thing. */
export const figureValue = (e: Elevation, key: FigureKey): number | undefined =>
  (FIGURES[key].of as FigureRow["of"])(e);
