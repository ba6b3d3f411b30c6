// Door: a plane's body, or a class's, out of the boards at hand.

export type { Span } from "../span.ts";
export { type Board, type BoardAxis, type BoardBox, type Knot, type Slab, volumeOf, wholeBoard } from "./board.ts";
export { type BoardCuts, type BoardPlan, boardPlan, cutsByBoard, ringsToSole } from "./board-plan.ts";
export { boardsAtHand } from "./boards-at-hand.ts";
export { boardsText, classBoardsText } from "./boards-text.ts";
export { type ClassLayout, layOutClass, slabsLeft } from "./class-boards.ts";
export { cutParts } from "./cutting.ts";
export {
  type BodyLayout,
  type BodyWood,
  bodyWood,
  layOutBody,
  type SlabCutting,
  WAYS,
  type Way,
} from "./plane-boards.ts";
export type { Cut, Cutting, Lay, PlacedPart, Saw, SawnPart } from "./sawing.ts";
export { type BoardRemedy, boardRemedies, type Shortage, type Side, shortages } from "./shortage.ts";
