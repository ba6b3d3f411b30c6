// One plane's core, in one piece or in layers, and cheeks out of the boards at hand: the way on which the grain runs on best, then the cheapest of its kind.
import { type Elevation, layersOf, layerThickness } from "@lamplane/parameters/elevation";
import { sameSpecies } from "../plane-woods.ts";
import { BOARDS } from "../words/boards.ts";
import { type Board, type Slab, sizeOf, volumeOf } from "./board.ts";
import { type CutParts, cutParts } from "./cutting.ts";
import type { Cut, Cutting, Lay, PlacedPart, Saw, SawnPart } from "./sawing.ts";
import { cutFromSlabs } from "./several-slabs.ts";

/** In the order in which they are tried: how well the grain runs on from cheek to core to cheek. */
export const WAYS = ["one-billet", "end-of-the-board", "resawn", "several-boards"] as const;
export type Way = (typeof WAYS)[number];

/** What a plane asks of the wood for its body. */
export interface BodyWood {
  readonly parts: readonly SawnPart[];
  readonly saw: Saw;
  readonly species: string;
}

/** What is cut out of one slab. */
export interface SlabCutting extends Cutting {
  readonly slab: Slab;
}

export interface BodyLayout {
  readonly way: Way;
  readonly cuttings: readonly SlabCutting[];
  /** Of the boards that nothing was cut from before. */
  readonly price: number;
}

/** Left cheek, core and right cheek as they are sawn; the layers of a core that is glued up, as they stand in it. */
export function bodyWood(plane: Elevation): BodyWood {
  const { design, widths } = plane;
  const { kerf, jointingPass: pass, millingAllowance: milling } = design.shop;
  const part = (name: string, thickness: number): SawnPart => ({
    name,
    length: widths.blankLength,
    height: widths.blankHeight + 2 * milling,
    thickness,
  });
  const layers = layersOf(plane);
  const core = layers
    ? // A layer is planed from the board's own faces: no more than a pass off each, and none off a board that is surfaced.
      layers.map((layer, i) => part(BOARDS.layer({ number: i + 1 }), layerThickness(layer) + 2 * pass)).toReversed()
    : [part("core", widths.roughCore)];
  return {
    parts: [part("left cheek", widths.roughCheek), ...core, part("right cheek", widths.roughCheek)],
    saw: { kerf, pass, milling: layers ? pass : milling },
    species: design.wood.body,
  };
}

/**
 * The layout by the first way that does; of one way the one that costs least, then the one that leaves the larger slabs whole.
 * @param opened boards that something is cut from already: they cost nothing more
 * @param cut of a search that lays out many planes: remembers what it has tried
 * @returns undefined where the body does not come out of these slabs by any cuts
 */
export function layOutBody(
  wood: BodyWood,
  boards: readonly Board[],
  slabs: readonly Slab[],
  opened: ReadonlySet<number> = new Set(),
  cut: CutParts = cutParts,
): BodyLayout | undefined {
  const shortest = Math.min(...wood.parts.map((part) => part.length));
  const fitting = slabs
    .filter(({ board, box }) => {
      const { species } = boards[board]!;
      const isLongEnough = sizeOf(box.x) >= shortest - 1e-9;
      return isLongEnough && (species === undefined || sameSpecies(species, wood.species));
    })
    .toSorted((a, b) => priceOf(a, boards, opened) - priceOf(b, boards, opened) || volumeOf(a.box) - volumeOf(b.box));
  const layout = (way: Way, cuttings: readonly SlabCutting[]): BodyLayout => ({
    way,
    cuttings,
    price: priceOfAll(
      cuttings.map(({ slab }) => slab),
      boards,
      opened,
    ),
  });
  const firstOf = (way: Way, cutSlab: (slab: Slab) => Cutting | undefined): BodyLayout | undefined => {
    for (const slab of fitting) {
      const cutting = cutSlab(slab);
      if (cutting) return layout(way, [{ ...cutting, slab }]);
    }
    return undefined;
  };
  const cutAll = (slab: Slab, lays: readonly Lay[]) => cut(wood.parts, slab, boards[slab.board]!, wood.saw, lays);
  const fromSeveral = (): BodyLayout | undefined => {
    const price = (board: number) => priceOfAll([{ board }], boards, opened);
    const cuttings = cutFromSlabs({ ...wood, boards, priceOf: price, cut }, fitting);
    const count = new Set(cuttings?.map(({ slab }) => slab.board)).size;
    return cuttings && layout(count === 1 ? "end-of-the-board" : "several-boards", cuttings);
  };
  return (
    firstOf("one-billet", (slab) => cutBillet(wood, slab, boards[slab.board]!, cut)) ??
    firstOf("end-of-the-board", (slab) => cutAll(slab, ["ripped"]) ?? cutAll(slab, ["resawn"])) ??
    firstOf("resawn", (slab) => cutAll(slab, ["ripped", "resawn"])) ??
    fromSeveral()
  );
}

const priceOf = ({ board }: Slab, boards: readonly Board[], opened: ReadonlySet<number>): number =>
  opened.has(board) ? 0 : boards[board]!.price;

const priceOfAll = (
  slabs: readonly Pick<Slab, "board">[],
  boards: readonly Board[],
  opened: ReadonlySet<number>,
): number =>
  [...new Set(slabs.map(({ board }) => board))].reduce(
    (sum, board) => sum + (opened.has(board) ? 0 : boards[board]!.price),
    0,
  );

/** Cheek, core and cheek beside each other in one piece, as a billet is ripped: the grain runs on from one to the next. */
function cutBillet({ parts, saw }: BodyWood, slab: Slab, board: Board, cut: CutParts): Cutting | undefined {
  const sawn = parts.map(({ thickness }) => thickness + 2 * saw.pass);
  const whole = sawn.reduce((sum, size) => sum + size, 0) + (parts.length - 1) * saw.kerf;
  const billet: SawnPart = { ...parts[0]!, name: "billet", thickness: whole - 2 * saw.pass };
  const found = cut([billet], slab, board, saw, ["ripped", "resawn"]);
  if (!found) return undefined;
  const [{ lay, box }] = found.placed as [PlacedPart];
  const axis = lay === "ripped" ? "y" : "z";
  const placed: PlacedPart[] = [];
  const cuts: Cut[] = [];
  let piece = box;
  // The board's own faces lie within the outer passes: what is missing there is taken off the outer strips.
  const outside = whole - (box[axis].to - box[axis].from);
  const before = box[axis].from <= 0 ? Math.min(outside, saw.pass + (board.surfaced ? saw.milling : 0)) : 0;
  let from = box[axis].from - before;
  sawn.forEach((size, part) => {
    const to = part === parts.length - 1 ? box[axis].to : from + size;
    placed.push({ part, lay, box: { ...box, [axis]: { from: Math.max(from, box[axis].from), to } } });
    if (part < parts.length - 1) {
      cuts.push({ axis, kerf: { from: to, to: to + saw.kerf }, piece });
      piece = { ...piece, [axis]: { from: to + saw.kerf, to: box[axis].to } };
    }
    from = to + saw.kerf;
  });
  return { placed, cuts: [...found.cuts, ...cuts], rest: found.rest };
}
