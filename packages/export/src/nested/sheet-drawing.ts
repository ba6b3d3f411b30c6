// All that lies on a sheet as one flat drawing: the work of each part on its own layers, and its name instead of its notes.
import { type Outline, point, polygon, transformOutline } from "@lamplane/geometry";
import { type Drawing, type DrawingEntry, moveDrawing } from "@lamplane/parameters/drawings";
import { cutOf } from "./flat-items.ts";
import { type NamePlace, namePlace } from "./name-place.ts";
import type { NestedItem, NestedSheet } from "./nested-sheets.ts";
import type { SheetPiece } from "./sheet-pieces.ts";

/** Height of a name, and about what a letter takes of it across. */
const LETTERING = 5; // mm
const ADVANCE = 0.9;

/** Zero is the sheet's lower left corner: the sheet's edge lies on the layer of notes, where nothing is worked. */
export function sheetDrawing({ piece, items }: NestedSheet, title: string): Drawing {
  const entries = items.flatMap((nested): DrawingEntry[] => [
    ...moveDrawing(nested.item.drawing, nested.transform).entries.filter(({ kind }) => kind !== "note"),
    nameNote(nested),
  ]);
  const edge: DrawingEntry = { kind: "outline", work: "NOTE", outline: pieceOutline(piece) };
  return { title, thickness: piece.thickness, entries: [edge, ...entries] };
}

function nameNote(nested: NestedItem): DrawingEntry {
  const { name } = nested.item;
  const { at, room } = placeOfName(nested);
  const height = Math.min(LETTERING, (0.9 * room) / (ADVANCE * name.length));
  const half = (ADVANCE * height * name.length) / 2;
  return { kind: "note", work: "NOTE", at: point(at.x - half, at.y - height / 2), text: name, height };
}

const pieceOutline = ({ width, depth }: SheetPiece): Outline =>
  polygon(point(0, 0), point(width, 0), point(width, depth), point(0, depth));

/** Outlines of an item where it lies. */
export const placedOutlines = ({ item, transform }: NestedItem): Outline[] =>
  cutOf(item.drawing).outlines.map((outline) => transformOutline(outline, transform));

export const placeOfName = (nested: NestedItem): NamePlace => namePlace(placedOutlines(nested));
