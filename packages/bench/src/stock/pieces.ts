// The stock list: every wooden piece as sawn and as finished, and where its wood comes from. Sizes are read, never worked out anew.

import type { Elevation } from "@lamplane/parameters/elevation";
import { figureValue, layerPegLength, layersOf, pegHoles, pinLengths } from "@lamplane/parameters/elevation";
import { sameSpecies } from "../plane-woods.ts";
import { GRAIN } from "../words/stock.ts";
import type { BilletFit } from "./billet.ts";
import { type Stick, type StickSupply, sticksFromBoards } from "./boards.ts";
import type { CoreSawing } from "./core-sawing.ts";
import { type LayerStock, layerStock } from "./layer-strips.ts";
import type { ThroatOffcut } from "./throat-offcut.ts";

/** Length along the grain; width no less than thickness. mm. */
export interface PieceSize {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

export interface StockRow {
  readonly piece: "front block" | "bed block" | "core layer" | "cheek" | "wedge" | "cross pin" | "peg" | "layer peg";
  readonly count: number;
  readonly rough: PieceSize;
  /** Smallest box about the finished piece; a body's part before its top is shaped. */
  readonly finished: PieceSize;
  readonly grain: string;
  readonly from: "billet" | "boards" | "throat offcut" | "billet's leftovers" | "separate";
  readonly species: string;
}

export interface StockList {
  readonly rows: readonly StockRow[];
  /** What the billet's leftovers yield, in the order in which it is taken; a second cross pin last, to spare. */
  readonly leftovers: readonly StickSupply[];
}

/** @param plane as it stands; @param before as it stood before the wood was ripped, and before the core was cut */
export function stockList(
  plane: Elevation,
  before: { readonly billet: Elevation; readonly core: Elevation },
  fit: BilletFit,
  sawing: CoreSawing,
  offcut: ThroatOffcut,
): StockList {
  const layers = layerStock(before.billet);
  const small = [wedgeSizes(plane), pinSizes(plane), ...pegSizes(plane), ...layerPegSizes(plane)];
  const ofBody = small.filter(({ species }) => sameSpecies(species, plane.design.wood.body));
  const fromOffcut = ofBody.find(
    ({ piece }) => (piece === "wedge" ? offcut.wedge : offcut.pin).fits && (piece === "wedge" || piece === "cross pin"),
  );
  const sticks = ofBody.filter((piece) => piece !== fromOffcut).map(stickOf);
  const second = ofBody
    .filter(({ piece }) => piece === "cross pin")
    .map((pin) => ({ ...stickOf(pin), piece: "second cross pin" }));
  const leftovers = sticksFromBoards([...sticks, ...second], layers ? [] : fit.boards, plane.design.shop.kerf);
  const whole = (piece: string) => leftovers.some((taken) => taken.piece === piece && taken.count === taken.wanted);
  const from = (piece: (typeof small)[number]): StockRow["from"] =>
    piece === fromOffcut ? "throat offcut" : whole(piece.piece) ? "billet's leftovers" : "separate";
  return {
    rows: [
      ...(layers ? stripRows(before.billet, layers) : bodyRows(before.core, sawing, fit)),
      ...small.map((piece) => ({ ...piece, from: from(piece), rough: roughSize(plane, piece, from(piece)) })),
    ],
    leftovers,
  };
}

/** A wedge out of the offcut is as wide as the milled core until it is planed to its width. */
const roughSize = ({ widths }: Elevation, { piece, rough }: SmallPiece, from: StockRow["from"]): PieceSize =>
  piece === "wedge" && from === "throat offcut" ? pieceSize(rough.length, widths.core, rough.thickness) : rough;

type SmallPiece = Omit<StockRow, "from">;

const stickOf = ({ piece, count, rough }: SmallPiece): Stick => ({ piece, count, ...rough });

const pieceSize = (length: number, a: number, b: number): PieceSize => ({
  length,
  width: Math.max(a, b),
  thickness: Math.min(a, b),
});

/** A size with an allowance on every face of it. */
const withAllowance = ({ length, width, thickness }: PieceSize, allowance: number): PieceSize =>
  pieceSize(length + 2 * allowance, width + 2 * allowance, thickness + 2 * allowance);

/** Blocks and cheeks. As sawn the blocks are measured on the sole, where the ramp's block is longest. */
function bodyRows(
  { design, widths, cuts, points }: Elevation,
  { cuts: [ramp] }: CoreSawing,
  { rings, needed }: BilletFit,
): StockRow[] {
  const { length, height } = design.body;
  const shared = {
    grain: GRAIN.body({ rings }),
    from: "billet",
    species: design.wood.body,
  } as const;
  const block = (piece: "front block" | "bed block", rough: number, finished: number): StockRow => ({
    ...shared,
    piece,
    count: 1,
    rough: pieceSize(rough, widths.fence.core, needed.height),
    finished: pieceSize(finished, widths.core, height),
  });
  const bedFoot = points.bedChamfer.y > 0 ? points.bedChamfer : points.bedFoot;
  return [
    block("front block", ramp.markAtSole, points.rampFoot.x),
    block("bed block", widths.blankLength - cuts.bedMark, length - bedFoot.x),
    {
      ...shared,
      piece: "cheek",
      count: 2,
      rough: pieceSize(widths.blankLength, widths.fence.leftCheek, needed.height),
      finished: pieceSize(length, widths.cheek, height),
    },
  ];
}

/** Layers and cheeks, each a strip of the boards. */
function stripRows(
  { design, widths }: Elevation,
  { strips, length, width, board, boardRings }: LayerStock,
): StockRow[] {
  return strips.map(({ piece, count, thickness }) => ({
    piece: piece === "cheek" ? "cheek" : "core layer",
    count,
    rough: pieceSize(length, width, board),
    finished:
      piece === "cheek"
        ? pieceSize(design.body.length, design.body.height, thickness)
        : pieceSize(length, widths.blankHeight, thickness),
    grain: GRAIN.strip({ rings: boardRings }),
    from: "boards",
    species: design.wood.body,
  }));
}

function wedgeSizes(plane: Elevation): SmallPiece {
  const { wood, shop } = plane.design;
  const finished = pieceSize(plane.wedgeLength, figureValue(plane, "wedgeWidth"), figureValue(plane, "wedgeButt"));
  return {
    piece: "wedge",
    count: 1,
    rough: withAllowance(finished, shop.millingAllowance),
    finished,
    grain: GRAIN.along,
    species: wood.wedge === "same" ? wood.body : wood.wedge,
  };
}

function pinSizes(plane: Elevation): SmallPiece {
  const { wood, shop } = plane.design;
  const { diameter } = plane.pinSize;
  const finished = pieceSize(2 * pinLengths(plane).end, diameter, diameter);
  return {
    piece: "cross pin",
    count: 1,
    rough: withAllowance(finished, shop.millingAllowance),
    finished,
    grain: GRAIN.along,
    species: wood.pin === "same" ? wood.body : wood.pin,
  };
}

/** A peg for each hole, through both cheeks and the block between them. */
function pegSizes(plane: Elevation): SmallPiece[] {
  const holes = pegHoles(plane);
  if (holes.length === 0) return [];
  const { wood, shop, pegs } = plane.design;
  const finished = pieceSize(plane.widths.body, pegs.diameter, pegs.diameter);
  const rough = withAllowance(finished, shop.millingAllowance);
  return [{ piece: "peg", count: holes.length, rough, finished, grain: GRAIN.along, species: wood.body }];
}

/** Two pegs in each block of a layered core, through all its layers. */
function layerPegSizes(plane: Elevation): SmallPiece[] {
  if (!layersOf(plane)) return [];
  const { wood, shop, core } = plane.design;
  const finished = pieceSize(layerPegLength(plane), core.pegDiameter, core.pegDiameter);
  const rough = withAllowance(finished, shop.millingAllowance);
  return [{ piece: "layer peg", count: 4, rough, finished, grain: GRAIN.along, species: wood.body }];
}
