// The stock's door: from the billet to its pieces, with saw lines, marks and what the offcut is good for; all pure.
export type { BilletFit, Board, Box } from "./billet.ts";
export { type Stick, sticksFromBoards, type Taken } from "./boards.ts";
export type { CoreCut, CoreSawing, Span } from "./core-sawing.ts";
export { grown, innerFit, leftOf } from "./inner-fit.ts";
export { CLEAR_OF_CUTS, type Mark, type MarkPlan, type PieceMarks } from "./marks.ts";
export type { PieceSize, StockList, StockRow } from "./pieces.ts";
export { type PartByLength, type Placement, placement } from "./placement.ts";
export type { RipLayout, SawLine, Strip } from "./rip-layout.ts";
export { marksOf, type StockPlan, stockPlan, stockPlanAsBuilt } from "./stock-plan.ts";
export { type FromOffcut, GRAIN_RUN_OUT, GRAIN_RUN_OUT_SOURCE, type ThroatOffcut } from "./throat-offcut.ts";
