// The stock's door: from the billet to its pieces, with saw lines, marks and what the offcut is good for; all pure.

export type { Span } from "../span.ts";
export type { BilletFit, BlankSize, Leftover } from "./billet.ts";
export { type Stick, type StickSupply, sticksFromBoards } from "./boards.ts";
export type { CoreCut, CoreSawing } from "./core-sawing.ts";
export { clipToLeft, innerFitPolygon, offsetPolygon } from "./inner-fit.ts";
export type { LayerStock, LayerStrip } from "./layer-strips.ts";
export { CLEAR_OF_CUTS, type Mark, type MarkPlan, type PieceMarks } from "./marks.ts";
export type { PieceSize, StockList, StockRow } from "./pieces.ts";
export { findPlacement, type PartByLength, type PartFit } from "./placement.ts";
export { type RipLayout, type RipStrip, ripLayout, type SawLine } from "./rip-layout.ts";
export { asBuiltStockPlan, matchingMarks, type StockPlan, stockPlan } from "./stock-plan.ts";
export { type FromOffcut, GRAIN_RUN_OUT, GRAIN_RUN_OUT_SOURCE, type ThroatOffcut } from "./throat-offcut.ts";
