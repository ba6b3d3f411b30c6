// Where the trouble is on the elevation: each note's number in a ring, and one leader line, from the note that speaks.
import { reconcileChildren, setAttributes, svg } from "../elements.ts";
import type { SheetPoint } from "../protocol/view.ts";
import type { VisibleNote } from "./note-list.ts";

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

const RING = 8; // px
const ENDS = 14; // places along a note from which a leader may start
const CLEAR = 4; // px between a leader and a number

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
            d: i === 0 ? leaderPath(note, within, ring) : "",
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

/** Down from the note to the ring, past every number by the shortest way; none where there is no way, where other notes or anything but the drawing stand under the note. */
function leaderPath({ element: note }: VisibleNote, sheet: HTMLElement, end: SheetPoint): string {
  const frame = frameRect(sheet);
  const box = note.getBoundingClientRect();
  const y = box.bottom - frame.top;
  if (box.width === 0 || note.closest(".is-open") || y > end.y - 2 * RING) return "";
  const numbers = [...sheet.querySelectorAll(".field-elevation .number")].map((e) => e.getBoundingClientRect());
  const starts = Array.from({ length: ENDS }, (_, i) => ({
    x: box.left - frame.left + 8 + (i * Math.min(box.width - 16, 900)) / (ENDS - 1),
    y,
  }));
  const isClear = (start: SheetPoint) =>
    numbers.every((number) => !crossesBox(start, end, shifted(number, -frame.left, -frame.top)));
  const away = ({ x }: SheetPoint) => Math.abs(x - end.x);
  const [from] = starts.filter(isClear).sort((a, b) => away(a) - away(b));
  if (!from) return "";
  const stop = shortenToRing(end, from);
  return `M${from.x} ${from.y}L${stop.x} ${stop.y}`;
}

const shifted = ({ left, top, width, height }: DOMRect, x: number, y: number): DOMRect =>
  new DOMRect(left + x - CLEAR, top + y - CLEAR, width + 2 * CLEAR, height + 2 * CLEAR);

/** Whether a line meets a box: looked at in short stretches. */
function crossesBox(from: SheetPoint, to: SheetPoint, { left, right, top, bottom }: DOMRect): boolean {
  const stretches = 80;
  for (let i = 0; i <= stretches; i++) {
    const [x, y] = [from.x + ((to.x - from.x) * i) / stretches, from.y + ((to.y - from.y) * i) / stretches];
    if (x > left && x < right && y > top && y < bottom) return true;
  }
  return false;
}

/** Where a line to a ring's middle meets the ring. */
function shortenToRing(end: SheetPoint, from: SheetPoint): SheetPoint {
  const away = Math.hypot(end.x - from.x, end.y - from.y) || 1;
  return { x: end.x + ((from.x - end.x) / away) * RING, y: end.y + ((from.y - end.y) / away) * RING };
}
