// Every figure, once: what it is, its unit, its formula and source, and how it is read off an elevation.
import { cotDeg, distance, tanDeg } from "@lamplane/geometry";
import { COMMON_PRACTICE } from "../table/index.ts";
import { FIGURE_WORDS } from "../words/figures.ts";
import { billetAsItLies, hasThirdCut } from "./billet.ts";
import { bedLowerEdge, fromToeEnd } from "./blocks.ts";
import type { Elevation } from "./elevation.ts";
import {
  degrees,
  evaluateFigures,
  type Figure,
  type FigureFormula,
  type FigureRow,
  mm,
  ratio,
  withWords,
} from "./figure-row.ts";
import { glueGap, greatestAllowance, tipGap } from "./glue-gap.ts";
import { edgeHeightAtContact } from "./glue-up.ts";
import { bevelToBack } from "./iron-taper.ts";
import { LAYER_FIGURES } from "./layer-figures.ts";
import { layersOf } from "./layer-shapes.ts";
import { mouthGrowth } from "./mouth-opening.ts";
import { pinLengths } from "./pin-section.ts";
import { TAPER_FIGURES } from "./taper-figures.ts";

/** A saw's fence along the billet; layers are ripped to one width instead. */
const fence = (formula: string, of: (e: Elevation) => number | undefined) =>
  mm(formula, (e) => (layersOf(e) ? undefined : of(e)), { readingMode: "up", spentAt: "core" });

const ROWS = {
  bedAngle: degrees("β", (e) => e.frame.bedAngle),
  rampAngle: degrees("ρ = 107 − β, or the wear's angle", (e) => e.ramp.angle, {
    source: COMMON_PRACTICE,
  }),
  sawBed: degrees("90 − β", (e) => 90 - e.frame.bedAngle, {
    spentAt: "cuts",
  }),
  sawRamp: degrees("90 − ρ", (e) => 90 - e.ramp.angle, {
    spentAt: "cuts",
  }),
  ...TAPER_FIGURES,
  clearanceAngle: degrees("β − taper − τ", (e) => e.frame.faceAngle - e.design.iron.bevel, {
    feltFrom: 0.5,
  }),
  mouthX: mm("length / 3", (e) => e.frame.mouthX, { source: COMMON_PRACTICE }),
  mouthGrowth: ratio("cot β + cot ρ", mouthGrowth, {
    feltFrom: 0.02,
  }),
  bedTipFromEnd: mm("m + t / sin β − a·cot β + trim / 2", (e) => fromToeEnd(e, e.points.bedTip.x), {
    spentAt: "glue-up",
  }),
  rampTipFromEnd: mm("m − g + a·cot ρ + trim / 2", (e) => fromToeEnd(e, e.points.rampTip.x), { spentAt: "glue-up" }),
  glueGap: mm("bedTipFromEnd − rampTipFromEnd", glueGap, {
    readingMode: "fine",
    spentAt: "glue-up",
  }),
  tipGap: mm("glueGap + c·cot β", tipGap, { readingMode: "fine", spentAt: "glue-up" }),
  greatestAllowance: mm("(t / sin β + g + c·cot β) / (cot β + cot ρ)", greatestAllowance, { spentAt: "core" }),
  edgeHeightAtContact: mm("a − g / mouthGrowth", edgeHeightAtContact, {
    readingMode: "fine",
    spentAt: "glue-up",
  }),
  soleToTake: mm("a", (e) => e.design.sole.allowance, { readingMode: "fine" }),
  mouthOpening: mm("g", (e) => e.design.mouth.opening, {
    readingMode: "fine",
    feltFrom: 0,
  }),
  bodyHeight: mm("H", (e) => e.design.body.height, { readingMode: "up", feltFrom: 0.5 }),
  sideClearance: mm("coreWidth − iron width", (e) => e.widths.core - e.design.iron.width, { feltFrom: 0 }),
  throatAtTop: mm("bed to ramp along the top", (e) => distance(e.points.bedTop, e.points.rampTop), { feltFrom: 1 }),
  throatNarrowing: mm("largest width before, less the width", (e) => e.throat.by, { feltFrom: 0.25 }),
  unsupported: mm(
    "t·(cot(τ + taper) − cot β)",
    (e) => e.frame.thickness * (cotDeg(bevelToBack(e.design)) - cotDeg(e.frame.bedAngle)),
  ),
  pinS: mm("s·sin(β − taper) + v(s)·cos(β − taper) = pinY", (e) => e.pin.s),
  pinV: mm("c₁ + w(s) + e / cos ω", (e) => e.pin.v),
  pinFromEnd: mm("m + s·cos(β − taper) − v·sin(β − taper) + trim / 2", (e) => fromToeEnd(e, e.pin.centre.x)),
  pinY: mm("given, or the smallest margin at its largest", (e) => e.pin.centre.y),
  pinOverBlankSole: mm("pinY + a", (e) => e.pin.centre.y + e.design.sole.allowance, { spentAt: "pin-hole" }),
  pinHoleDiameter: mm("tenon + clearance", (e) => 2 * e.pinHole.radius, { readingMode: "drill" }),
  wedgeAngle: degrees("ω", (e) => e.design.wedge.angle),
  wedgeTip: mm("w₀", (e) => e.design.wedge.tip, { readingMode: "up", feltFrom: 0.5 }),
  wedgeTipFromEdge: mm("s₀", (e) => e.design.wedge.tipFromEdge, {
    feltFrom: 1,
  }),
  pinDiameter: mm("d", (e) => e.pinSize.diameter),
  pinBody: mm("coreWidth − 2 end clearances", (e) => 2 * pinLengths(e).shoulder, { readingMode: "down" }),
  tenonDiameter: mm("hole − clearance", (e) => e.pinSize.tenon, { readingMode: "down" }),
  tenonLength: mm("shoulder to end; auto ends 0.5 inside the cheek", (e) => {
    const { shoulder, end } = pinLengths(e);
    return end - shoulder;
  }),
  wedgeAtPin: mm("w₀ + (s − s₀)·tan ω", (e) => e.pin.wedgeThere, {
    readingMode: "up",
    feltFrom: 0.5,
  }),
  wedgeLength: mm("25 mm out of the top", (e) => e.wedgeLength, {
    source: COMMON_PRACTICE,
    readingMode: "up",
  }),
  wedgeBelowPin: mm("to the wedge's tip", (e) => e.pinMargins.wedgeBelow),
  wedgeAbovePin: mm("to the wedge's butt", (e) => e.pinMargins.wedgeAbove),
  wedgeWidth: mm("coreWidth − clearance", (e) => e.widths.core - e.design.wedge.clearance, {
    readingMode: "down",
  }),
  wedgeButt: mm("w₀ + length·tan ω", (e) => e.design.wedge.tip + e.wedgeLength * tanDeg(e.design.wedge.angle), {
    readingMode: "up",
  }),
  pinToRamp: mm("(pinFromEnd − trim / 2 − m + g)·sin ρ + pinY·cos ρ − d/2", (e) => e.pinMargins.roomToRamp, {
    feltFrom: 0.5,
  }),
  pinToRampTurning: mm("the same less √(e² + (d/2)²)", (e) => e.pinToRampTurning),
  woodOverPinHole: mm("hole to the top outline", (e) => e.pinMargins.woodOverHole, {
    feltFrom: 0.5,
  }),
  shearOut: mm("hole to the nearest edge of the cheek, at β − taper + ω from square", (e) => e.pinMargins.shearOut, {
    feltFrom: 0.5,
  }),
  rampRadius: mm("largest that leaves the room wanted", (e) => e.ramp.curve?.radius),
  coreWidth: mm("iron + side clearance", (e) => e.widths.core, {
    source: COMMON_PRACTICE,
    readingMode: "up",
  }),
  ...LAYER_FIGURES,
  bodyWidth: mm("coreWidth + 2 cheeks", (e) => e.widths.body, {
    readingMode: "up",
    feltFrom: 0.5,
  }),
  fenceLeftCheek: fence("rough cheek + jointing pass − reference pass", ({ widths }) => widths.fence.leftCheek),
  fenceCore: fence("rough core + jointing pass", ({ widths }) => widths.fence.core),
  fenceRightCheek: fence("rough cheek, where the billet is wider than needed", ({ design, widths }) =>
    hasThirdCut(widths, billetAsItLies(design, widths).lies.width, design.shop.kerf)
      ? widths.fence.rightCheek
      : undefined,
  ),
  cheekThickness: mm("cheek", (e) => e.widths.cheek, { readingMode: "up", spentAt: "core" }),
  roughCore: mm("coreWidth + 2 milling allowances", (e) => (layersOf(e) ? undefined : e.widths.roughCore), {
    readingMode: "up",
    spentAt: "core",
  }),
  roughCheek: mm("cheek + 2 milling allowances", (e) => e.widths.roughCheek, {
    readingMode: "up",
    spentAt: "core",
  }),
  billetWidth: mm(
    "rough cheeks + rough core + 2 kerfs + 4 jointing passes",
    (e) => (layersOf(e) ? undefined : e.widths.billet),
    {
      readingMode: "up",
      spentAt: "core",
    },
  ),
  billetWidthByRule: mm("iron + 38.1", (e) => (layersOf(e) ? undefined : e.widths.billetByRule), {
    source: COMMON_PRACTICE,
    spentAt: "core",
  }),
  blankLength: mm("length + trim", (e) => e.widths.blankLength, {
    source: COMMON_PRACTICE,
    readingMode: "up",
    spentAt: "core",
  }),
  blankHeight: mm("H + a", (e) => e.widths.blankHeight, { readingMode: "up", spentAt: "core" }),
  rampMark: mm("along the blank's sole from the core's toe end", (e) => e.cuts.rampMark, {
    readingMode: "up",
    spentAt: "cuts",
  }),
  bedMark: mm("rampMark + room for both kerfs", (e) => e.cuts.bedMark, { readingMode: "down", spentAt: "cuts" }),
  setInToe: mm("half of what the blocks are slid together by", (e) => e.cuts.setInToe, { spentAt: "glue-up" }),
  setInHeel: mm("half of what the blocks are slid together by", (e) => e.cuts.setInHeel, { spentAt: "glue-up" }),
  recessWidth: mm("head + clearance", (e) => e.recess?.width, {
    source: COMMON_PRACTICE,
    readingMode: "up",
  }),
  recessDepth: mm("head's height + 1.6", (e) => e.recess?.depth, {
    source: COMMON_PRACTICE,
    readingMode: "down",
  }),
  recessFromBedEdge: mm(
    "head's lowest place − travel − t·cot β + (a − c) / sin β",
    (e) => e.recess && e.recess.low - bedLowerEdge(e),
    {
      readingMode: "up",
      spentAt: "recess",
    },
  ),
  recessLand: mm("(coreWidth − recess) / 2", (e) => e.recess && (e.widths.core - e.recess.width) / 2, {
    feltFrom: 0.5,
  }),
  recessPad: mm(
    "head's lowest place − travel − t·cot(τ + taper)",
    (e) => e.recess && e.recess.low - e.frame.thickness * cotDeg(bevelToBack(e.design)),
    { feltFrom: 0.5 },
  ),
} satisfies Record<keyof typeof FIGURE_WORDS, FigureFormula>;

/** Every figure of an elevation by its key. */
export const FIGURES = withWords(ROWS, FIGURE_WORDS);

export type FigureKey = keyof typeof FIGURES;

/** The row of a figure; undefined where the elevation has no figure of that name. */
export const figureRow = (key: string): FigureRow | undefined =>
  Object.hasOwn(FIGURES, key) ? FIGURES[key as FigureKey] : undefined;

/** All figures of an elevation, in the order of the work. */
export const elevationFigures = (e: Elevation): Figure[] => evaluateFigures(FIGURES, e);

/** One figure by its key; undefined where the design has no such thing. */
export const figureValue = <Key extends FigureKey>(e: Elevation, key: Key) =>
  (FIGURES[key].of as FigureRow["of"])(e) as ReturnType<(typeof FIGURES)[Key]["of"]>;
