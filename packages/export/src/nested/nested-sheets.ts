// Flat parts and jigs on the shop's sheets: which sheet each is cut from, where it lies there, and what has no place.
import {
  boundsOf,
  nestOutlines,
  type Outline,
  outlineArea,
  type Point,
  reverseOutline,
  type Transform2,
  tessellate,
  transformOutline,
} from "@lamplane/geometry";
import { memoizeByPlane } from "@lamplane/parameters/elevation";
import { cornerRelief, type PlateRange } from "@lamplane/parameters/jigs";
import type { Design } from "@lamplane/parameters/table";
import type { RouterLimit } from "../router/limit.ts";
import { hasRouter } from "../router/plane-programs.ts";
import { planProgram } from "../router/program.ts";
import { flatSetUp } from "../router/set-up.ts";
import { cutOf, type FlatItem, flatJigs, flatParts } from "./flat-items.ts";
import { type SheetPiece, sheetPieces } from "./sheet-pieces.ts";

export interface NestedItem {
  readonly item: FlatItem;
  readonly transform: Transform2;
}
export interface NestedSheet {
  readonly piece: SheetPiece;
  readonly items: readonly NestedItem[];
  /** Share of the piece that its parts take up, their openings counted in. */
  readonly used: number;
  /** Length of the piece, from its left end, over all parts and their margin. mm */
  readonly end: number;
}

/** Why an item lies on no sheet. mm */
export type NoPlace = { readonly item: FlatItem } & (
  | { readonly code: "thickness"; readonly value: number; readonly nearest: number }
  | { readonly code: "sheet"; readonly value: number }
  | { readonly code: "plate"; readonly range: PlateRange }
  | { readonly code: "size"; readonly needs: Size; readonly largest: Size }
  | { readonly code: "room"; readonly needs: Size }
  | { readonly code: "router"; readonly limit: RouterLimit }
);
interface Size {
  readonly width: number;
  readonly depth: number;
}

/** What lies on the shop's sheets, of one plane or of a class. */
export interface Nested {
  readonly sheets: readonly NestedSheet[];
  readonly noPlace: readonly NoPlace[];
}

/** How far a part may be from its sheet's thickness, mm. Common practice, no published source: planed to a caliper. */
const SAME_THICKNESS = 0.2;

/** One plane's parts and jigs. */
export const nestPlane = memoizeByPlane((plane): Nested | undefined =>
  nestItems(flatParts(plane), () => flatJigs(plane), plane.design),
);

/**
 * Undefined where the shop has neither sheets nor surfaced boards of a thickness that serves.
 * @param flatJigsOf is asked where there is ply for jigs
 * @param design whose shop it is
 */
export function nestItems(
  flatPieces: readonly FlatItem[],
  flatJigsOf: () => readonly FlatItem[],
  design: Design,
): Nested | undefined {
  const pieces = sheetPieces(design);
  const has = (material: SheetPiece["material"]) => design.sheets.some((sheet) => sheet.material === material);
  const parts = flatPieces.filter((item) => has("wood") || pieces.some((piece) => serves(piece, item)));
  const items = [...parts, ...(has("ply") ? flatJigsOf() : [])];
  if (items.length === 0) return undefined;
  const judged = items.map((item) => judgeItem(item, pieces, design));
  const ready = judged.flatMap((each) => ("room" in each ? [each] : []));
  const refused = judged.flatMap((each) => ("code" in each ? [each] : []));
  const { sheets, left } = fillPieces(ready, pieces, design);
  return {
    sheets,
    noPlace: [...refused, ...left.map((each) => withoutPlace(each, pieces, design))],
  };
}

const serves = ({ material, thickness }: SheetPiece, item: FlatItem): boolean =>
  item.material === material && item.thickness !== undefined && Math.abs(thickness - item.thickness) <= SAME_THICKNESS;

/** An item that can be cut, with the room that its cutter takes beside it. mm */
interface ReadyItem {
  readonly item: FlatItem;
  readonly room: number;
}

function judgeItem(item: FlatItem, pieces: readonly SheetPiece[], design: Design): ReadyItem | NoPlace {
  if (item.thickness === undefined) return { item, code: "plate", range: item.plateRange! };
  const serving = pieces.find((piece) => serves(piece, item));
  if (!serving && item.material === "ply") return { item, code: "sheet", value: item.thickness };
  if (!serving) {
    const all = pieces.filter(({ material }) => material === item.material).map(({ thickness }) => thickness);
    const off = (thickness: number) => Math.abs(thickness - item.thickness!);
    return { item, code: "thickness", value: item.thickness, nearest: all.toSorted((a, b) => off(a) - off(b))[0]! };
  }
  const { router, cutters } = design;
  if (!hasRouter(design)) return { item, room: 2 * cornerRelief(design) };
  const thing = { name: item.name, title: item.name, ...cutOf(item.drawing), thickness: serving.thickness };
  const planned = planProgram(flatSetUp(thing, router.margin), router, cutters);
  if ("limit" in planned) return { item, code: "router", limit: planned.limit };
  const mills = planned.program.toolpaths.map(({ cutter }) => cutter).filter(({ kind }) => kind === "end");
  return { item, room: Math.max(...mills.map(({ diameter, finish }) => diameter + finish)) };
}

/** From a part to the sheet's edge: wood to clamp on, and never less than the cutter's way. mm */
const edgeOf = (room: number, { router }: Design): number => Math.max(router.margin, room);

/** A piece after another, each with as many as it holds of the items that it serves. */
function fillPieces(
  ready: readonly ReadyItem[],
  pieces: readonly SheetPiece[],
  design: Design,
): { sheets: NestedSheet[]; left: readonly ReadyItem[] } {
  const sheets: NestedSheet[] = [];
  let left = ready;
  for (const piece of pieces) {
    const fitting = left.filter(({ item }) => serves(piece, item));
    if (fitting.length === 0) continue;
    const sheet = fillPiece(fitting, piece, design);
    if (sheet.items.length === 0) continue;
    sheets.push(sheet);
    const laid = new Set(sheet.items.map(({ item }) => item));
    left = left.filter(({ item }) => !laid.has(item));
  }
  return { sheets, left };
}

/** Grain keeps a part along the sheet, either end first; ply lets a jig lie by any quarter turn. */
const TURNS = { wood: [0, 180], ply: [0, 90, 180, 270] } as const;

function fillPiece(ready: readonly ReadyItem[], piece: SheetPiece, design: Design): NestedSheet {
  const room = Math.max(...ready.map((each) => each.room));
  const shapes = ready.map(({ item }) => ({ item, outline: outerOutline(item), turns: TURNS[item.material] }));
  const edge = edgeOf(room, design);
  const { width, depth, keepOuts } = piece;
  const gap = 2 * room + design.router.web;
  const { placed } = nestOutlines(shapes, { width, depth, edge, gap, keepOuts });
  const area = placed.reduce((sum, { item }) => sum + outlineArea(outerOutline(item)), 0);
  const ends = placed.map(
    ({ item, transform }) => boundsOf(tessellate(transformOutline(outerOutline(item), transform))).max.x,
  );
  return { piece, items: placed, used: area / (width * depth), end: Math.max(0, ...ends) + edge };
}

const sizeOf = (points: readonly Point[]): Size => {
  const { min, max } = boundsOf(points);
  return { width: max.x - min.x, depth: max.y - min.y };
};

/** Of an item that is left over: too large for every sheet that serves it, or one more sheet would take it. */
function withoutPlace({ item, room }: ReadyItem, pieces: readonly SheetPiece[], design: Design): NoPlace {
  const edge = edgeOf(room, design);
  const { width, depth } = sizeOf(tessellate(outerOutline(item)));
  const needs = { width: width + 2 * edge, depth: depth + 2 * edge };
  const mayTurn = item.material === "ply";
  const holds = (piece: Size) =>
    (piece.width >= needs.width && piece.depth >= needs.depth) ||
    (mayTurn && piece.width >= needs.depth && piece.depth >= needs.width);
  const serving = pieces.filter((piece) => serves(piece, item));
  if (serving.some(holds)) return { item, code: "room", needs };
  const largest = serving.reduce((a, b) => (b.width * b.depth > a.width * a.depth ? b : a));
  return { item, code: "size", needs, largest: { width: largest.width, depth: largest.depth } };
}

/** Counter-clockwise; a drawing's parts are one outline with openings in it. */
function outerOutline({ drawing }: FlatItem): Outline {
  const { outlines } = cutOf(drawing);
  const area = (outline: Outline) => Math.abs(outlineArea(outline));
  const outer = outlines.reduce((a, b) => (area(b) > area(a) ? b : a));
  return outlineArea(outer) > 0 ? outer : reverseOutline(outer);
}
