// Leader lines from the notes to where the trouble is on the elevation, each ending in the note's number in a ring.
import { reconcileChildren, setAttributes, svg } from "../elements.ts";
import type { SheetPoint } from "../protocol/view.ts";
import type { VisibleNote } from "./notes.ts";

export interface Leaders {
  readonly element: SVGSVGElement;
  /** @param pixelsOf place in the window of a named point, none where it is not drawn */
  clear(): void;
  draw(notes: readonly VisibleNote[], pixelsOf: (place: string) => SheetPoint | undefined): void;
}

interface LeaderLine {
  readonly d: string;
  readonly severity: string;
  readonly end: SheetPoint;
  readonly number: string;
}

const DOWN = 15; // px from a note's top to its first line of words
const RING = 8; // px
const BESIDE = 1288; // px: as in the style sheet, notes stand left of the drawing on a wider sheet, under it on a narrower one
const NARROW = 704; // px: as in the style sheet; rings only, lines would run over the words

export function createLeaders(within: HTMLElement): Leaders {
  const lines = svg("g");
  const rings = svg("g");
  const element = svg("svg", { class: "leaders", "aria-hidden": "true" }, lines, rings);
  return {
    element,
    clear() {
      lines.replaceChildren();
      rings.replaceChildren();
    },
    draw(notes, pixelsOf) {
      const frame = frameRect(within);
      setAttributes(element, { width: frame.width, height: frame.height });
      const taken = new Map<string, number>();
      const drawn = notes.flatMap((note, i): LeaderLine[] => {
        const end = pixelsOf(note.place);
        if (!end || note.element.classList.contains("is-resolved")) return [];
        const before = taken.get(note.place) ?? 0;
        taken.set(note.place, before + 1);
        const ring = { x: end.x - frame.left + before * 2 * RING, y: end.y - frame.top };
        return [
          {
            d: frame.width < NARROW ? "" : leaderPath(note, frame, ring),
            severity: note.severity,
            end: ring,
            number: String(i + 1),
          },
        ];
      });
      reconcileChildren(
        lines,
        drawn,
        () => svg("path"),
        (path, { d, severity }) => setAttributes(path, { d, class: `leader leader-${severity}` }),
      );
      reconcileChildren(rings, drawn, createRing, (group, { end, number, severity }) => {
        setAttributes(group, { class: `ring ring-${severity}`, transform: `translate(${end.x} ${end.y})` });
        group.lastElementChild!.textContent = number;
      });
    },
  };
}

/** The box in which lines are placed: within the frame line. */
function frameRect(element: HTMLElement): DOMRect {
  const { left, top } = element.getBoundingClientRect();
  return new DOMRect(left + element.clientLeft, top + element.clientTop, element.clientWidth, element.clientHeight);
}

const createRing = () => svg("g", {}, svg("circle", { r: RING }), svg("text", { y: 4 }));

/** Level out of the note on the side where the drawing is, or up beside the notes where it is over them. */
function leaderPath({ element: note }: VisibleNote, frame: DOMRect, end: SheetPoint): string {
  const box = note.getBoundingClientRect();
  const list = note.closest(".note-scroll")!.getBoundingClientRect();
  const y = box.top + DOWN;
  if (y < list.top || y > list.bottom) return "";
  const [left, right, level] = [box.left - frame.left, box.right - frame.left, y - frame.top];
  const stop = shortenToRing(end, { x: right + 14, y: level });
  if (frame.width > BESIDE) return `M${right} ${level}L${right + 14} ${level}L${stop.x} ${stop.y}`;
  const over = list.top - frame.top - 64;
  const from = { x: left - 7, y: over };
  const last = shortenToRing(end, from);
  return `M${left} ${level}L${from.x} ${level}L${from.x} ${over}L${last.x} ${last.y}`;
}

/** Where a line to a ring's middle meets the ring. */
function shortenToRing(end: SheetPoint, from: SheetPoint): SheetPoint {
  const away = Math.hypot(end.x - from.x, end.y - from.y) || 1;
  return { x: end.x + ((from.x - end.x) / away) * RING, y: end.y + ((from.y - end.y) / away) * RING };
}
