// Leader lines from the notes to where the trouble is on the elevation: they end in a dot, over everything else.
import { keep, svg, write } from "../page/elements.ts";
import type { Spot } from "../protocol.ts";
import type { ShownNote } from "./notes.ts";

export interface Leaders {
  readonly element: SVGSVGElement;
  /** @param pixelsOf place on the page of a named point, none where it is not drawn */
  draw(notes: readonly ShownNote[], pixelsOf: (place: string) => Spot | undefined): void;
}

interface Line {
  readonly d: string;
  readonly severity: string;
}

export function createLeaders(within: HTMLElement): Leaders {
  const element = svg("svg", { class: "leaders", "aria-hidden": "true" });
  return {
    element,
    draw(notes, pixelsOf) {
      const frame = within.getBoundingClientRect();
      write(element, { width: frame.width, height: frame.height });
      const lines = notes.flatMap(({ element: note, place, severity }): Line[] => {
        const end = pixelsOf(place);
        const box = note.getBoundingClientRect();
        const list = note.closest(".note-scroll")!.getBoundingClientRect();
        const y = box.top + 14;
        if (!end || note.classList.contains("is-mended") || y < list.top || y > list.bottom) return [];
        return [
          {
            d: wayTo({ x: box.left - frame.left, y: box.top - frame.top }, box, {
              x: end.x - frame.left,
              y: end.y - frame.top,
            }),
            severity,
          },
        ];
      });
      keep(
        element,
        lines,
        () => svg("path"),
        (path, { d, severity }) => write(path, { d, class: `leader leader-${severity}` }),
      );
    },
  };
}

/** From the note's side that faces the drawing, a short level piece, then straight to the place. */
function wayTo(corner: Spot, box: DOMRect, end: Spot): string {
  const dot = `M${end.x - 3.5} ${end.y}a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0 -7 0`;
  const right = corner.x + box.width;
  if (end.x >= right) {
    const y = corner.y + 14;
    return `M${right} ${y}L${right + 16} ${y}L${end.x} ${end.y}${dot}`;
  }
  const x = Math.min(Math.max(end.x, corner.x + 12), right - 12);
  return `M${x} ${corner.y}L${x} ${corner.y - 8}L${end.x} ${end.y}${dot}`;
}
