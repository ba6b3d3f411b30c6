// A plot on the sheet: the same picture that a pack would hold, drawn in the sheet's own ink.
import { type Picture, type PictureMark, PLOT_SIZE } from "@lamplane/sheets";
import { html, svg } from "../elements.ts";
import { pathOf } from "../path-data.ts";
import type { MouthFilm } from "../protocol/mouth-film.ts";
import type { Plots } from "../protocol/sheet-data.ts";
import { createMouthFilm, type MouthFilmField } from "./mouth-film.ts";
import { createPlotReader } from "./plot-reading.ts";

export interface PlotField {
  readonly element: HTMLElement;
  show(picture: Picture | undefined): void;
}

export interface PlotFields {
  readonly of: Readonly<Record<keyof Plots, PlotField>>;
  readonly film: MouthFilmField;
  show(plots: Plots, film: MouthFilm | undefined): void;
}

export function createPlotFields(): PlotFields {
  const of = {
    mouth: createPlotField(),
    throat: createPlotField(),
    seasons: createPlotField(),
    shares: createPlotField(),
  };
  const film = createMouthFilm();
  return {
    of,
    film,
    show(plots, ofMouth) {
      for (const [name, field] of Object.entries(of)) field.show(plots[name as keyof Plots]);
      film.show(ofMouth, plots.mouth, of.mouth.element.querySelector("svg"));
    },
  };
}

/** px to the mm: a picture's letters are then as large as the sheet's. */
export const PX_PER_MM = 3.9;
const NARROW = 708; // px: as in the style sheet; wider, plots stand in two columns
const LEAST_WIDTH = 100; // mm: a plot keeps its letters and gives up room where its column is narrow
const WIDTH_STEP = 2; // mm: a sheet a little wider has the same plots

/** Of a plot on a sheet of some width. @param sheetWidth px @returns mm */
export function plotWidth(sheetWidth: number): number {
  const column = sheetWidth / (sheetWidth < NARROW ? 1 : 2) / PX_PER_MM;
  return Math.min(PLOT_SIZE.width, Math.max(LEAST_WIDTH, Math.floor(column / WIDTH_STEP) * WIDTH_STEP));
}

/** mm that a step's drawing has in so many px. */
export const drawingWidthIn = (px: number): number => px / PX_PER_MM;

function createPlotField(): PlotField {
  const board = html("div", { class: "plot", tabindex: 0, role: "group", "aria-label": "plot" });
  const reader = createPlotReader(board);
  const element = html("figure", { class: "field field-plot", hidden: true }, board, reader.element);
  return {
    element,
    show(picture) {
      element.hidden = picture === undefined;
      if (!picture) return;
      const drawing = pictureDrawing(picture);
      board.replaceChildren(drawing);
      reader.show(picture, drawing);
    },
  };
}

/** A picture of the pack in the sheet's own ink. */
export function pictureDrawing({ width, height, marks, title, description }: Picture): SVGElement {
  const drawing = svg("svg", {
    viewBox: `0 0 ${width} ${height}`,
    role: "img",
    "aria-label": `${title}. ${description ?? ""}`,
  });
  drawing.style.maxWidth = `${width * PX_PER_MM}px`;
  drawing.append(svg("g", { transform: `translate(0 ${height})` }, ...marks.map(markElement)));
  return drawing;
}

function markElement(mark: PictureMark): SVGElement {
  if (mark.kind === "line")
    return svg("path", { class: `plot-${mark.line}`, d: pathOf(mark.segments, mark.closed === true) });
  if (mark.kind === "area") {
    const d = mark.boundaries.map((boundary) => pathOf(boundary, true)).join("");
    return svg("path", { class: "plot-area", d, "fill-opacity": mark.shade });
  }
  const { at, size, anchor = "start", turn = 0, bold, text } = mark;
  const place = `translate(${at.x} ${-at.y})${turn === 0 ? "" : ` rotate(${-turn})`}`;
  const element = svg("text", {
    transform: place,
    "font-size": size,
    "text-anchor": anchor,
    "font-weight": bold ? 650 : undefined,
  });
  element.textContent = text;
  return element;
}
