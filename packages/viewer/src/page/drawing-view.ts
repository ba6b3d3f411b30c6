// Everything that stands on the sheet, drawn from what the worker responds. Each redraw is timed.
import type { FormattedFinding } from "@lamplane/bench/checks";
import type { WorkerResponse } from "../protocol/messages.ts";
import type { FigureWords, SheetPlane, SheetWords, StageName } from "../protocol/sheet-data.ts";
import type { LatencyTimer } from "./latency-timer.ts";
import type { SheetParts } from "./sheet-parts.ts";

export class DrawingView {
  readonly #parts: SheetParts;
  readonly #timer: LatencyTimer;
  #figures: Readonly<Record<string, FigureWords>> = {};
  #plane: SheetPlane | undefined;
  /** Whether the hand is on a number: then scales and notes keep their places. */
  isDragging = false;

  constructor(parts: SheetParts, timer: LatencyTimer) {
    this.#parts = parts;
    this.#timer = timer;
    parts.notes.element.querySelector(".note-scroll")?.addEventListener("scroll", () => this.#drawLeaders());
  }

  get figures(): Readonly<Record<string, FigureWords>> {
    return this.#figures;
  }

  /** The plane that is drawn; undefined before the first. */
  get plane(): SheetPlane | undefined {
    return this.#plane;
  }

  setFigureWords(figures: Readonly<Record<string, FigureWords>>): void {
    this.#figures = figures;
  }

  drawPlane(plane: SheetPlane, requestId: number): void {
    this.#plane = plane;
    this.#drawViews();
    this.#parts.measure.show(plane);
    void this.#parts.sheet.offsetHeight; // laid out now, so that the measured time holds all of it
    this.#timer.finish("elevation", requestId);
  }

  /** What stands beside the drawing, as soon as it is known. */
  showWords(words: SheetWords, stage: StageName, requestId: number): void {
    const { notes, schedule, steps, title, fields } = this.#parts;
    const plane = this.#plane!;
    notes.show(words, this.isDragging);
    schedule.show(plane);
    steps.show(words, plane, stage, this.#figures);
    title.show(plane, fields.elevation.scale()?.perMm);
    this.#drawLeaders();
    document.title = `${plane.design.name} · lamplane`;
    this.#timer.finish("words", requestId);
  }

  drawSolid({ parts, about, requestId }: Extract<WorkerResponse, { kind: "solid" }>): void {
    this.#parts.body.show(parts, about);
    this.#parts.body.drawNow();
    this.#timer.finish("solid", requestId);
  }

  addCures(findings: readonly FormattedFinding[]): void {
    if (this.#plane) this.#parts.notes.addCures(findings, this.#plane.design);
    this.#drawLeaders();
  }

  redraw(): void {
    this.#drawViews();
    if (this.#plane) this.#parts.measure.show(this.#plane);
    this.#drawLeaders();
  }

  /** Everything is fitted to the printed page before it is taken, and to the screen again after it. */
  fitTo(printing: boolean): void {
    const { fields, body, sheet } = this.#parts;
    sheet.parentElement!.classList.toggle("is-printing", printing);
    for (const field of Object.values(fields)) field.measure();
    this.redraw();
    body.refit();
  }

  #drawViews() {
    const { fields } = this.#parts;
    if (!this.#plane) return;
    for (const view of this.#plane.views) fields[view.name].draw(view, this.#plane, this.isDragging);
  }

  #drawLeaders() {
    const { leaders, notes, fields } = this.#parts;
    const places = this.#plane?.points;
    if (!places || !fields.elevation.scale()) return;
    if (notes.visible().length === 0) return leaders.clear();
    const frame = fields.elevation.overlay.ownerSVGElement!.getBoundingClientRect();
    leaders.draw(notes.visible(), (place) => {
      const spot = places[place];
      if (!spot) return undefined;
      const { x, y } = fields.elevation.pixelsOf(spot);
      return { x: frame.left + x, y: frame.top + y };
    });
  }
}
